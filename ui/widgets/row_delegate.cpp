// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/row_delegate.h"

#include "ui/model/list_model.h"
#include "ui/widgets/look.h"

#include <QAbstractItemView>
#include <QPainter>

namespace rw::ui {

namespace {
constexpr int kPad = 12;
constexpr int kLead = 3; ///< between the two lines
constexpr int kBar = 5;
constexpr QStringView kBetweenFacts = u" · ";

QRect innerOf(const QRect& row) { return row.adjusted(kPad + kBar, 0, -kPad, 0); }

/// The quieter line; in two, parted between facts, where the list wraps and one has no room for them.
QStringList detailLines(const QStyleOptionViewItem& option, const QModelIndex& index, int room) {
    const QString words = index.data(DetailRole).toString();
    const QFontMetrics metrics(option.font);
    const bool wraps = option.features.testFlag(QStyleOptionViewItem::WrapText);
    qsizetype part = words.size();
    while (wraps && part > 0 && metrics.horizontalAdvance(words.left(part)) > room) {
        part = words.left(part).lastIndexOf(kBetweenFacts);
    }
    if (part <= 0 || part == words.size()) {
        return {words};
    }
    return {words.left(part), words.mid(part + kBetweenFacts.size())};
}
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

    const QRect inner = innerOf(option.rect);
    const QStringList detail = detailLines(option, index, inner.width());
    QFont first = option.font;
    first.setBold(true);
    const QFontMetrics firstMetrics(first);
    const QFontMetrics metrics(option.font);
    const int height = firstMetrics.height() + static_cast<int>(detail.size()) * (kLead + metrics.height());
    int top = inner.top() + (inner.height() - height) / 2;

    const QString aside = index.data(AsideRole).toString();
    const int asideWidth = aside.isEmpty() ? 0 : metrics.horizontalAdvance(aside) + kPad;
    painter->setFont(option.font);
    painter->setPen(palette.ink);
    painter->drawText(QRect(inner.left(), top, inner.width(), firstMetrics.height()), Qt::AlignRight | Qt::AlignVCenter,
                      aside);

    const int room = inner.width() - asideWidth;
    painter->setFont(first);
    painter->drawText(QRect(inner.left(), top, room, firstMetrics.height()), Qt::AlignLeft | Qt::AlignVCenter,
                      // a racket's mark stands last, and tells it from its twin
                      firstMetrics.elidedText(index.data().toString(), Qt::ElideMiddle, room));
    painter->setFont(option.font);
    painter->setPen(palette.softInk);
    top += firstMetrics.height() + kLead;
    for (const QString& line : detail) {
        painter->drawText(QRect(inner.left(), top, inner.width(), metrics.height()), Qt::AlignLeft | Qt::AlignVCenter,
                          metrics.elidedText(line, Qt::ElideRight, inner.width()));
        top += metrics.height() + kLead;
    }
    painter->restore();
}

QSize RowDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const auto* list = qobject_cast<const QAbstractItemView*>(option.widget);
    const QRect row = list != nullptr ? list->viewport()->rect() : option.rect;
    const auto lines = static_cast<int>(detailLines(option, index, innerOf(row).width()).size());
    const int height = QFontMetrics(option.font).height();
    return {200, height + lines * (kLead + height) + 14};
}

} // namespace rw::ui
