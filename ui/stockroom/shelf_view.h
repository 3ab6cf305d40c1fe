// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/model/shelf_model.h"

#include <QStyledItemDelegate>
#include <QTableView>

namespace rw::ui {

/// Draws one place on the shelf: the label of a board, or a reel with its tag below it.
class ShelfDelegate final : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    void paintLabel(QPainter* painter, const QStyleOptionViewItem& option, const desk::ShelfString& string) const;
    void paintLot(QPainter* painter, const QStyleOptionViewItem& option, const desk::ShelfString& string,
                  const desk::ShelfLot& lot) const;
};

/// The shelf, a board for each string. The arrow keys go from reel to reel and from board to board.
class ShelfView final : public QTableView {
    Q_OBJECT

public:
    explicit ShelfView(ShelfModel* shelf, QWidget* parent = nullptr);

    void setCurrentLot(LotId lot);

protected:
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void shareHeight(); ///< as many boards as fit are seen, each with room for its reels

    ShelfModel* m_shelf;
};

} // namespace rw::ui
