// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/history_delegate.h"

#include "ui/model/history_model.h"
#include "ui/text/job_words.h"
#include "ui/widgets/look.h"

#include <QPainter>

namespace rw::ui {

namespace {
constexpr int kTime = 40;   ///< where the line of time runs
constexpr int kPair = 70;   ///< where the pair begins
constexpr int kWords = 300; ///< where the words begin
constexpr int kPad = 12;
} // namespace

void HistoryDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const auto* history = static_cast<const HistoryModel*>(index.model());
    const int row = index.row();
    const Job& job = history->at(row).job;
    const Palette palette = programPalette();
    const bool current = option.state.testFlag(QStyle::State_Selected);
    const QRect& room = option.rect;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->fillRect(room, current ? palette.shade : palette.paper);
    if (current) {
        painter->fillRect(QRect(room.topLeft(), QSize(5, room.height())), palette.accent);
    }

    // The line of time, and the mark on it: filled where it was strung, open where it is not yet.
    const double x = room.left() + kTime + 0.5;
    const double y = room.center().y();
    painter->setPen(QPen(palette.softInk, 1));
    painter->drawLine(QPointF(x, row == 0 ? y : room.top()),
                      QPointF(x, row + 1 == history->rowCount() ? y : room.bottom() + 1));
    painter->setPen(QPen(palette.ink, 2));
    painter->setBrush(job.strung ? palette.ink : palette.paper);
    painter->drawEllipse(QPointF(x, y), 6, 6);

    const QFontMetrics metrics(option.font);
    painter->setPen(palette.ink);
    painter->setFont(largeFont(*option.widget, 2.0));
    painter->drawText(QRect(room.left() + kPair, room.top(), kWords - kPair - 10, room.height()),
                      Qt::AlignLeft | Qt::AlignVCenter, history->pair(row));

    QStringList lines{history->what(row), history->facts(row)};
    if (const QString note = history->note(row); !note.isEmpty()) {
        lines << QStringLiteral("“%1”").arg(note.simplified());
    }
    const int height = metrics.height() * static_cast<int>(lines.size()) + 3 * static_cast<int>(lines.size() - 1);
    int top = room.top() + (room.height() - height) / 2;
    const int left = room.left() + kWords;
    const QString aside =
        QStringList{history->number(row), history->date(row), stateWithShape(job.state)}.join(QLatin1Char('\n'));
    const int asideWidth = 190;
    painter->setFont(option.font);
    painter->drawText(QRect(room.right() - asideWidth - kPad, room.top(), asideWidth, room.height()),
                      Qt::AlignRight | Qt::AlignVCenter, aside);
    const int width = room.right() - asideWidth - 2 * kPad - left;
    for (qsizetype i = 0; i < lines.size(); ++i) {
        QFont font = option.font;
        font.setBold(i == 0);
        font.setItalic(i == 2);
        painter->setFont(font);
        painter->setPen(i == 0 ? palette.ink : palette.softInk);
        painter->drawText(QRect(left, top, width, metrics.height()), Qt::AlignLeft | Qt::AlignVCenter,
                          QFontMetrics(font).elidedText(lines[i], Qt::ElideRight, width));
        top += metrics.height() + 3;
    }
    painter->setPen(palette.rule);
    painter->drawLine(QPoint(left, room.bottom()), room.bottomRight());
    painter->restore();
}

QSize HistoryDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    return {400, QFontMetrics(option.font).height() * 3 + 26};
}

} // namespace rw::ui
