// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractListModel>

#include <utility>
#include <vector>

namespace rw::ui {

/// What a row says besides its first line (Qt::DisplayRole).
enum RowRole {
    DetailRole = Qt::UserRole + 1, ///< a second, quieter line
    AsideRole,                     ///< short, at the far end of the row: a time, a state
};

/// Rows of one kind of value, replaced as a whole. Derived models say what a row shows.
template<class Row>
class ListModel : public QAbstractListModel {
public:
    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override {
        return index.isValid() ? show(at(index.row()), role) : QVariant();
    }
    void setRows(std::vector<Row> rows) {
        beginResetModel();
        m_rows = std::move(rows);
        endResetModel();
    }
    [[nodiscard]] const std::vector<Row>& rows() const { return m_rows; }
    [[nodiscard]] const Row& at(int row) const { return m_rows[static_cast<std::size_t>(row)]; }

protected:
    [[nodiscard]] virtual QVariant show(const Row& row, int role) const = 0;

private:
    std::vector<Row> m_rows;
};

} // namespace rw::ui
