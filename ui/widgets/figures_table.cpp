// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/figures_table.h"

#include "ui/model/figures_model.h"
#include "ui/widgets/look.h"

#include <QHeaderView>
#include <QItemSelectionModel>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>

namespace rw::ui {

namespace {
constexpr int kPad = 12;
constexpr int kBar = 5;         ///< at the edge of the row under the keyboard
constexpr int kSlack = 4;       ///< for what a font rounds away
constexpr int kRoomAround = 12; ///< above and below the words of a row together

class FigureDelegate final : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        QStyleOptionViewItem cell = option;
        initStyleOption(&cell, index);
        const Palette palette = programPalette();
        const auto* figures = static_cast<const FiguresModel*>(index.model());
        const bool current = cell.state.testFlag(QStyle::State_Selected);
        painter->save();
        painter->fillRect(cell.rect, current ? palette.shade : palette.paper);
        painter->setPen(palette.rule);
        painter->drawLine(cell.rect.bottomLeft(), cell.rect.bottomRight());
        if (current && index.column() == 0) {
            painter->fillRect(QRect(cell.rect.topLeft(), QSize(kBar, cell.rect.height())), palette.accent);
        }
        if (figures->isSum(index.row())) {
            painter->setPen(QPen(palette.ink, 2));
            painter->drawLine(cell.rect.topLeft() + QPoint(0, 1), cell.rect.topRight() + QPoint(0, 1));
        }
        painter->setFont(cell.font);
        painter->setPen(palette.ink);
        const QRect room = cell.rect.adjusted(kPad, 0, -kPad, 0);
        painter->drawText(room, static_cast<int>(cell.displayAlignment),
                          cell.fontMetrics.elidedText(cell.text, Qt::ElideRight, room.width()));
        painter->restore();
    }
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        QStyleOptionViewItem cell = option;
        initStyleOption(&cell, index);
        return {cell.fontMetrics.horizontalAdvance(cell.text) + 2 * kPad + kSlack,
                cell.fontMetrics.height() + kRoomAround};
    }
};
} // namespace

FiguresTable::FiguresTable(FiguresModel* figures, int wide, const QString& accessibleName, QWidget* parent)
    : QTableView(parent)
    , m_wide(wide) {
    setModel(figures);
    setItemDelegate(new FigureDelegate(this));
    setAccessibleName(accessibleName);
    readByLines(*this);
    connect(figures, &QAbstractItemModel::modelAboutToBeReset, this,
            [this] { m_row = std::max(0, currentIndex().row()); });
    connect(figures, &QAbstractItemModel::modelReset, this, &FiguresTable::keepRow);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    horizontalHeader()->setSectionsClickable(false);
    horizontalHeader()->setStyleSheet(
        QStringLiteral("QHeaderView { background: transparent; }"
                       "QHeaderView::section { background: transparent; border: 0; border-bottom: 1px solid %1;"
                       " padding: 5px %2px; color: %3; }")
            .arg(programPalette().rule.name())
            .arg(kPad)
            .arg(programPalette().softInk.name()));
}

void FiguresTable::keepRow() {
    if (hasFocus() && model()->rowCount() > 0) {
        setCurrentIndex(model()->index(std::min(m_row, model()->rowCount() - 1), 0));
    }
}

void FiguresTable::focusInEvent(QFocusEvent* event) {
    QTableView::focusInEvent(event);
    // The view has given itself a current row by now; nobody sees one that is not selected.
    if (!selectionModel()->hasSelection()) {
        keepRow();
    }
}

void FiguresTable::resizeToFigures() {
    auto* header = horizontalHeader();
    for (int column = 0; column < model()->columnCount(); ++column) {
        header->setSectionResizeMode(column, column == m_wide ? QHeaderView::Stretch : QHeaderView::ResizeToContents);
    }
    verticalHeader()->setDefaultSectionSize(std::max(1, sizeHintForRow(0)));
}

} // namespace rw::ui
