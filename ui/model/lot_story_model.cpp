// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/model/lot_story_model.h"

#include "ui/text/format.h"
#include "ui/text/lot_words.h"
#include "ui/text/stockroom_words.h"
#include "ui/text/weigh_words.h"

#include <QStringList>

#include <algorithm>

namespace rw::ui {

namespace {
/// The line, from 1, of the movement that `wanted` is true of; 0: there is none.
template<class Wanted>
int lineWhere(const std::vector<Movement>& movements, Wanted wanted) {
    const auto found = std::ranges::find_if(movements, wanted);
    return found == movements.end() ? 0 : 1 + static_cast<int>(found - movements.begin());
}
} // namespace

void LotStoryModel::setLife(const std::optional<desk::LotLife>& life, const QTimeZone& zone, const NameOf& nameOf) {
    beginResetModel();
    m_rows.clear();
    Length left = Length::fromMillimetres(0);
    for (std::size_t i = 0; life && i < life->movements.size(); ++i) {
        const std::vector<Movement>& movements = life->movements;
        const Movement& movement = movements[i];
        left += movement.change;
        const int corrects = lineWhere(
            movements, [&](const Movement& other) { return movement.corrects && other.id == movement.corrects; });
        const int correctedBy = lineWhere(
            movements, [&](const Movement& other) { return other.corrects && other.corrects == movement.id; });
        const auto onScale = movement.id ? life->onScale.find(*movement.id) : life->onScale.end();
        const QString kind = movementKindText(movement, life->jobNumbers[i]);
        m_rows.push_back({QString::number(i + 1), momentText(movement.by.at, zone),
                          onScale == life->onScale.end() ? kind : tr("%1: %2").arg(kind, massText(onScale->second)),
                          lengthChangeText(movement.change), heldText(left), nameOf(movement.by.staff),
                          movementWhyText(movement, corrects, correctedBy)});
    }
    endResetModel();
}

int LotStoryModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int LotStoryModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : Why + 1; }

QVariant LotStoryModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const bool isNumber = index.column() == Number || index.column() == Change || index.column() == Left;
    switch (role) {
    case Qt::DisplayRole:
    case Qt::ToolTipRole: // what a narrow column cuts off
        return m_rows[static_cast<std::size_t>(index.row())][index.column()];
    case Qt::TextAlignmentRole:
        return QVariant::fromValue((isNumber ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    default:
        return {};
    }
}

QVariant LotStoryModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical || role != Qt::DisplayRole) {
        return {};
    }
    switch (section) {
    case When:
        return tr("when");
    case What:
        return tr("what");
    case Change:
        return tr("change");
    case Left:
        return tr("left then");
    case Who:
        return tr("who");
    case Why:
        return tr("why");
    default:
        return QString();
    }
}

} // namespace rw::ui
