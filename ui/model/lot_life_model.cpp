// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/model/lot_life_model.h"

#include "ui/text/format.h"
#include "ui/text/lot_words.h"

namespace rw::ui {

QVariant LotLifeModel::show(const LifeRow& row, int role) const {
    switch (role) {
    case Qt::DisplayRole:
        return movementText(row.movement, row.jobNumber);
    case DetailRole:
        return row.who;
    case AsideRole:
        return momentText(row.movement.by.at, m_zone);
    default:
        return {};
    }
}

} // namespace rw::ui
