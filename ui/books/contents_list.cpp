// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/contents_list.h"

#include "ui/widgets/look.h"

#include <QPainter>

#include <algorithm>

namespace rw::ui {

namespace {
constexpr int kBar = 5;
constexpr int kPad = 14;
constexpr int kRoomAround = 20; ///< above and below a name together

class ContentsDelegate final : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        const Palette palette = programPalette();
        const bool open = option.state.testFlag(QStyle::State_Selected);
        const bool here = open && option.widget != nullptr && option.widget->hasFocus();
        painter->save();
        painter->fillRect(option.rect, open ? palette.shade : palette.paper);
        if (open) {
            painter->fillRect(QRect(option.rect.topLeft(), QSize(kBar, option.rect.height())), palette.accent);
        }
        if (here) {
            // Where the keyboard is: a frame, which is seen without colour too.
            painter->setPen(QPen(palette.accent, 3));
            painter->drawRect(option.rect.adjusted(1, 1, -2, -2));
        }
        QFont font = option.font;
        font.setBold(open);
        painter->setFont(font);
        painter->setPen(palette.ink);
        const QRect room = option.rect.adjusted(kBar + kPad, 0, -kPad, 0);
        painter->drawText(room, Qt::AlignLeft | Qt::AlignVCenter,
                          QFontMetrics(font).elidedText(index.data().toString(), Qt::ElideRight, room.width()));
        painter->restore();
    }
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        QFont font = option.font;
        font.setBold(true);
        const QFontMetrics metrics(font);
        return {metrics.horizontalAdvance(index.data().toString()) + kBar + 2 * kPad, metrics.height() + kRoomAround};
    }
};
} // namespace

ContentsList::ContentsList(QWidget* parent)
    : QListWidget(parent) {
    setItemDelegate(new ContentsDelegate(this));
    setAccessibleName(tr("Contents of the books"));
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
}

QSize ContentsList::sizeHint() const { return {std::max(150, sizeHintForColumn(0)), 200}; }

} // namespace rw::ui
