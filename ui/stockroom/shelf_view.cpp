// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stockroom/shelf_view.h"

#include "ui/drawing/packet_drawing.h"
#include "ui/drawing/reel_drawing.h"
#include "ui/text/ahead_words.h"
#include "ui/text/format.h"
#include "ui/text/stock_words.h"
#include "ui/text/stockroom_words.h"
#include "ui/widgets/look.h"

#include <QHeaderView>
#include <QPainter>

#include <algorithm>

namespace rw::ui {

namespace {
constexpr int kLowestBoard = 104; ///< height of one board with what stands on it
constexpr int kHighestBoard = 150;
constexpr int kBoardEdge = 5; ///< the board itself
constexpr int kLabelWidth = 436; ///< what to do and both days on one line
constexpr int kLotWidth = 118;
} // namespace

void ShelfDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const auto* shelf = static_cast<const ShelfModel*>(index.model());
    const Palette palette = programPalette();
    const bool current = option.state.testFlag(QStyle::State_Selected);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->fillRect(option.rect, current ? palette.shade : palette.paper);
    if (current) {
        // Where the keyboard is: a frame, which is seen without colour too.
        painter->setPen(QPen(palette.accent, 3));
        painter->setBrush(Qt::NoBrush);
        painter->drawRect(QRectF(option.rect).adjusted(3, 3, -3, -3 - kBoardEdge));
    }
    const QRect board(option.rect.left(), option.rect.bottom() - kBoardEdge, option.rect.width(), kBoardEdge);
    painter->fillRect(board, palette.rule);
    const auto& string = shelf->stringAt(index.row());
    if (index.column() == 0) {
        paintLabel(painter, option, string);
    } else if (const auto* lot = shelf->lotAt(index)) {
        paintLot(painter, option, string, *lot);
    }
    painter->restore();
}

void ShelfDelegate::paintLabel(QPainter* painter, const QStyleOptionViewItem& option,
                               const desk::ShelfString& string) const {
    const Palette palette = programPalette();
    QRect room = option.rect.adjusted(16, 9, -10, -kBoardEdge - 4);
    const auto line = [&](const QString& words, const QFont& font, const QColor& color) {
        painter->setFont(font);
        painter->setPen(color);
        const QFontMetrics metrics(font);
        painter->drawText(room, Qt::AlignLeft | Qt::AlignTop, metrics.elidedText(words, Qt::ElideRight, room.width()));
        room.setTop(room.top() + metrics.height() + 3);
    };
    QFont title = largeFont(*option.widget, 1.2);
    title.setBold(true);
    if (string.owner.empty()) {
        // The thickness behind the name, so that there is a line for what will become of the string.
        const QRect whole = room;
        const QString gauge = gaugeText(string.article);
        room.setRight(room.right() - QFontMetrics(option.font).horizontalAdvance(gauge) - 8);
        line(articleTitle(string.article), title, palette.ink);
        painter->setFont(option.font);
        painter->setPen(palette.softInk);
        const int up = QFontMetrics(title).ascent() - QFontMetrics(option.font).ascent();
        painter->drawText(whole.adjusted(0, up, 0, 0), Qt::AlignRight | Qt::AlignTop, gauge);
        room.setRight(whole.right());
    } else {
        line(fromUtf8(string.owner), title, palette.ink);
        line(keptBoardText(articleTitle(string.article)), option.font, palette.softInk);
    }
    line(holdingText(string.holding), option.font, palette.ink);
    if (string.runningShort()) {
        QFont bold = option.font;
        bold.setBold(true);
        line(QStringLiteral("▼ ") + runningShortText(string), bold, palette.accent);
    } else {
        line(QStringLiteral("%1 · %2").arg(jobsFreeText(string), usableText(string)), option.font, palette.ink);
    }
    if (string.ahead) {
        line(boardAheadText(*string.ahead), option.font, palette.ink);
    }
}

void ShelfDelegate::paintLot(QPainter* painter, const QStyleOptionViewItem& option, const desk::ShelfString& string,
                             const desk::ShelfLot& there) const {
    const Palette palette = programPalette();
    const QRect room = option.rect.adjusted(8, 8, -8, -kBoardEdge - 4);
    const QFontMetrics metrics(option.font);
    const int words = metrics.height() * 2;
    const QRectF reel(room.left(), room.top(), room.width(), room.height() - words - 2);
    const std::optional<Length> perJob = string.perJob.isPositive() ? std::optional(string.perJob) : std::nullopt;
    const Length nominal = std::max(there.lot.nominal, std::max(there.lot.length, Length::fromMillimetres(1)));
    if (there.packets > 0) {
        drawPackets(*painter, reel, there.packets, there.packets - static_cast<int>(there.freePackets()), palette);
    } else if (there.lot.kind == LotKind::Reel) {
        drawReel(*painter, reel, {nominal, there.lot.length, there.promised, perJob}, palette);
    } else {
        drawCoil(*painter, reel, there.promised.isPositive(), palette);
    }
    QFont bold = option.font;
    bold.setBold(true);
    painter->setFont(bold);
    painter->setPen(palette.ink);
    const QRect below(room.left(), room.bottom() - words, room.width(), words);
    // A pile has no one tag: how many packets there are says more.
    const QString first = there.packets > 0 ? packetsText(there.packets) : fromUtf8(there.lot.tag);
    const QString second = there.packets > 0 ? eachOfText(there.lot.length) : heldThereText(there);
    painter->drawText(below, Qt::AlignHCenter | Qt::AlignTop, first);
    painter->setFont(option.font);
    painter->drawText(below, Qt::AlignHCenter | Qt::AlignBottom, second);
}

ShelfView::ShelfView(ShelfModel* shelf, QWidget* parent)
    : QTableView(parent)
    , m_shelf(shelf) {
    setModel(shelf);
    setItemDelegate(new ShelfDelegate(this));
    setAccessibleName(tr("The shelf"));
    setShowGrid(false);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    horizontalHeader()->hide();
    horizontalHeader()->setMinimumSectionSize(10);
    verticalHeader()->hide();
    verticalHeader()->setMinimumSectionSize(kLowestBoard);
    connect(shelf, &QAbstractItemModel::modelReset, this, [this] {
        for (int column = 0; column < m_shelf->columnCount(); ++column) {
            setColumnWidth(column, column == 0 ? kLabelWidth : kLotWidth);
        }
        shareHeight();
    });
}

void ShelfView::setCurrentLot(LotId lot) {
    const QModelIndex index = m_shelf->indexOf(lot);
    if (index.isValid()) {
        setCurrentIndex(index);
    }
}

void ShelfView::shareHeight() {
    const int boards = std::max(1, m_shelf->rowCount());
    verticalHeader()->setDefaultSectionSize(std::clamp(viewport()->height() / boards, kLowestBoard, kHighestBoard));
    scrollTo(currentIndex()); // where somebody looks stays in view
}

void ShelfView::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    shareHeight();
}

void ShelfView::paintEvent(QPaintEvent* event) {
    QTableView::paintEvent(event);
    // The boards go on where no reel stands.
    QPainter painter(viewport());
    const int from = columnViewportPosition(m_shelf->columnCount() - 1) + columnWidth(m_shelf->columnCount() - 1);
    for (int row = 0; row < m_shelf->rowCount(); ++row) {
        const int bottom = rowViewportPosition(row) + rowHeight(row) - 1;
        painter.fillRect(QRect(from, bottom - kBoardEdge, viewport()->width() - from, kBoardEdge),
                         programPalette().rule);
    }
}

QModelIndex ShelfView::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) {
    const QModelIndex current = currentIndex();
    // Boards hold different numbers of reels: up and down land on the last reel of a shorter one, not on a gap.
    if ((action == MoveUp || action == MoveDown) && current.isValid()) {
        const int row = current.row() + (action == MoveDown ? 1 : -1);
        if (row >= 0 && row < m_shelf->rowCount()) {
            const int most = static_cast<int>(m_shelf->stringAt(row).lots.size());
            return m_shelf->index(row, std::min(current.column(), most));
        }
        return current;
    }
    return QTableView::moveCursor(action, modifiers);
}

} // namespace rw::ui
