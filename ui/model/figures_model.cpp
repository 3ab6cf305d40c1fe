// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/model/figures_model.h"

#include <QFont>

namespace rw::ui {

void FiguresModel::setFigures(const QStringList& headers, int words, std::vector<FigureRow> rows) {
    beginResetModel();
    m_headers = headers;
    m_words = words;
    m_rows = std::move(rows);
    endResetModel();
}

int FiguresModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int FiguresModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_headers.size());
}

QVariant FiguresModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const FigureRow& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return row.cells.value(index.column());
    case Qt::TextAlignmentRole:
        return alignment(index.column());
    case Qt::FontRole: {
        QFont font; // only what is set here is taken over by the view
        font.setBold(row.isSum);
        return row.isSum ? QVariant(font) : QVariant();
    }
    default:
        return {};
    }
}

QVariant FiguresModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) {
        return {};
    }
    switch (role) {
    case Qt::DisplayRole:
        return m_headers.value(section);
    case Qt::TextAlignmentRole:
        return alignment(section);
    default:
        return {};
    }
}

QVariant FiguresModel::alignment(int column) const {
    const Qt::Alignment side = column < m_words ? Qt::AlignLeft : Qt::AlignRight;
    return QVariant::fromValue(static_cast<int>(side | Qt::AlignVCenter));
}

} // namespace rw::ui
