// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stockroom.h"

#include <QAbstractTableModel>
#include <QString>

#include <optional>
#include <utility>
#include <vector>

namespace rw::ui {

/// The shelf: a board for each string, its label first and then its lots from left to right. What is kept for customers
/// stands below, a board for each string of an owner.
class ShelfModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    using QAbstractTableModel::QAbstractTableModel;

    void setShelf(std::vector<desk::ShelfString> shelf);
    [[nodiscard]] const desk::ShelfString& stringAt(int row) const { return m_shelf[static_cast<std::size_t>(row)]; }
    [[nodiscard]] const desk::ShelfLot* lotAt(const QModelIndex& index) const; ///< nullptr on a label or a gap
    [[nodiscard]] QModelIndex indexOf(LotId lot) const;                        ///< invalid when it is not there
    [[nodiscard]] QModelIndex indexOf(StringArticleId string) const;           ///< its label

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    std::vector<desk::ShelfString> m_shelf;
    int m_columns = 1;
};

/// "L Larkspun 130, natural".
[[nodiscard]] QString articleTitle(const StringArticle& article);
/// The same, with whose it is before it where it is kept for a customer.
[[nodiscard]] QString boardTitle(const desk::ShelfString& string);

} // namespace rw::ui
