// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/row_delegate.h"

#include "ui/model/list_model.h"
#include "ui/widgets/look.h"

#include <QPainter>
#include <QWidget>

namespace rw::ui {

namespace {
constexpr int kPad = 12;
constexpr int kLead = 3; ///< between the two lines
constexpr int kBar = 5;
} // namespace

void RowDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const Palette palette = programPalette();
    const bool current = option.state.testFlag(QStyle::State_Selected);
    painter->save();
    painter->fillRect(option.rect, current ? palette.shade : palette.paper);
    if (current) {
        painter->fillRect(QRect(option.rect.topLeft(), QSize(kBar, option.rect.height())), palette.accent);
    }
    painter->setPen(palette.rule);
    painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());

    const QRect inner = option.rect.adjusted(kPad + kBar, 0, -kPad, 0);
    QFont first = option.font;
    first.setBold(true);
    const QFontMetrics firstMetrics(first);
    const QFontMetrics metrics(option.font);
    const int height = firstMetrics.height() + kLead + metrics.height();
    const int top = inner.top() + (inner.height() - height) / 2;

    const QString aside = index.data(AsideRole).toString();
    const int asideWidth = aside.isEmpty() ? 0 : metrics.horizontalAdvance(aside) + kPad;
    painter->setFont(option.font);
    painter->setPen(palette.ink);
    painter->drawText(QRect(inner.left(), top, inner.width(), firstMetrics.height()), Qt::AlignRight | Qt::AlignVCenter,
                      aside);

    const int room = inner.width() - asideWidth;
    painter->setFont(first);
    painter->drawText(QRect(inner.left(), top, room, firstMetrics.height()), Qt::AlignLeft | Qt::AlignVCenter,
                      firstMetrics.elidedText(index.data().toString(), Qt::ElideRight, room));
    painter->setFont(option.font);
    painter->setPen(palette.softInk);
    painter->drawText(QRect(inner.left(), top + firstMetrics.height() + kLead, inner.width(), metrics.height()),
                      Qt::AlignLeft | Qt::AlignVCenter,
                      metrics.elidedText(index.data(DetailRole).toString(), Qt::ElideRight, inner.width()));
    painter->restore();
}

QSize RowDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    const QFontMetrics metrics(option.font);
    return {200, metrics.height() * 2 + kLead + 14};
}

} // namespace rw::ui
