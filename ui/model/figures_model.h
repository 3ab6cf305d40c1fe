// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QStringList>

#include <vector>

namespace rw::ui {

struct FigureRow {
    QStringList cells;
    bool isSum = false; ///< what the rows above come to
};

/// A page of figures: words in the first columns, numbers at the right in the others, and their sums.
class FiguresModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    using QAbstractTableModel::QAbstractTableModel;

    /// `words`: how many columns at the left are words.
    void setFigures(const QStringList& headers, int words, std::vector<FigureRow> rows);
    [[nodiscard]] bool isSum(int row) const { return m_rows[static_cast<std::size_t>(row)].isSum; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    [[nodiscard]] QVariant alignment(int column) const;

    QStringList m_headers;
    int m_words = 1;
    std::vector<FigureRow> m_rows;
};

} // namespace rw::ui
