// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/model/closed_lot_model.h"

#include "ui/text/format.h"
#include "ui/text/stockroom_words.h"
#include "ui/text/words.h"

#include <algorithm>

namespace rw::ui {

int ClosedLotModel::rowOf(LotId lot) const {
    const auto found = std::ranges::find(rows(), lot, [](const desk::ClosedLot& closed) { return *closed.lot.id; });
    return found == rows().end() ? -1 : static_cast<int>(found - rows().begin());
}

QVariant ClosedLotModel::show(const desk::ClosedLot& closed, int role) const {
    switch (role) {
    case Qt::DisplayRole:
        return tr("%1 · %2, %3 when new")
            .arg(fromUtf8(closed.lot.tag), lotKindWord(closed.lot.kind), heldText(closed.lot.nominal));
    case DetailRole:
        return closedLotText(closed);
    case AsideRole:
        return dateText(*closed.lot.closed, m_zone);
    default:
        return {};
    }
}

} // namespace rw::ui
