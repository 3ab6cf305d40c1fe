// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stock_take.h"

#include <QAbstractTableModel>

#include <vector>

namespace rw::ui {

/// The lines of a stock-take, the one that was weighed last first.
class WeighInModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Tag, String, Scale, Weighed, Book, Change, State };

    using QAbstractTableModel::QAbstractTableModel;

    void setLines(const std::vector<desk::WeighIn>& lines);
    [[nodiscard]] const desk::WeighIn& at(int row) const { return m_lines[static_cast<std::size_t>(row)]; }
    [[nodiscard]] int rowOf(LotId lot) const; ///< -1 when it was not weighed

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    [[nodiscard]] static QString text(const desk::WeighIn& line, int column);
    std::vector<desk::WeighIn> m_lines;
};

} // namespace rw::ui
