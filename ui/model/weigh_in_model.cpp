// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/model/weigh_in_model.h"

#include "ui/text/format.h"
#include "ui/text/weigh_words.h"
#include "ui/text/words.h"

#include <algorithm>

namespace rw::ui {

void WeighInModel::setLines(const std::vector<desk::WeighIn>& lines) {
    beginResetModel();
    m_lines.assign(lines.rbegin(), lines.rend());
    endResetModel();
}

int WeighInModel::rowOf(LotId lot) const {
    const auto line =
        std::ranges::find(m_lines, lot, [](const desk::WeighIn& weighed) { return weighed.weighing.lot; });
    return line == m_lines.end() ? -1 : static_cast<int>(line - m_lines.begin());
}

int WeighInModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int WeighInModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : State + 1; }

QString WeighInModel::text(const desk::WeighIn& line, int column) {
    switch (column) {
    case Tag:
        return fromUtf8(line.lot.tag);
    case String:
        return line.owner.empty() ? fromUtf8(line.article.name)
                                  : tr("%1, %2's").arg(fromUtf8(line.article.name), fromUtf8(line.owner));
    case Scale:
        return massText(line.weighing.gross.weight);
    case Weighed:
        return sureLengthText(line.weighing.weighedMm);
    case Book:
        return sureLengthText(line.weighing.bookMm);
    case Change:
        return weighedChangeText(line);
    default:
        return weighStateText(line);
    }
}

QVariant WeighInModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const desk::WeighIn& line = at(index.row());
    const bool isNumber = index.column() >= Scale && index.column() <= Change;
    switch (role) {
    case Qt::DisplayRole:
        return text(line, index.column());
    case Qt::ToolTipRole: // what a narrow column cuts off
        return index.column() == State ? weighStoryText(line) : text(line, index.column());
    case Qt::AccessibleTextRole:
        return index.column() == Tag ? weighStoryText(line) : text(line, index.column());
    case Qt::TextAlignmentRole:
        return QVariant::fromValue((isNumber ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    default:
        return {};
    }
}

QVariant WeighInModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical || role != Qt::DisplayRole) {
        return {};
    }
    switch (section) {
    case Tag:
        return tr("tag");
    case String:
        return tr("string");
    case Scale:
        return tr("scale");
    case Weighed:
        return tr("by weight");
    case Book:
        return tr("by the book");
    case Change:
        return tr("difference");
    case State:
        return tr("found");
    default:
        return QString();
    }
}

} // namespace rw::ui
