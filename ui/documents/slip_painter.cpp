// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/slip_painter.h"

#include "ui/drawing/paper_text.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

namespace rw::ui {

namespace {
struct Slips {
    Q_DECLARE_TR_FUNCTIONS(Slips)
};
constexpr double kSmall = 3.6;
constexpr double kLine = 4.6; ///< of a bill
} // namespace

SlipPainter::SlipPainter(QPainter& painter, const Palette& palette)
    : PaperPen(painter, palette) {}

void SlipPainter::paint(const TagWords& words) {
    const double width = kTag.width();
    // The number is what people look for on the rack: as large as the tag is wide.
    fitted({0, 0, width, 25}, words.number, 25, palette().ink, true, Qt::AlignCenter);
    rule(0, width, 25.5);
    line({0, 26.5, width, 8}, words.customer, 6.6, palette().ink, true);
    line({0, 34, width, 6.5}, PaperText{5.2}.elided(words.racket, width, Qt::ElideMiddle), 5.2, palette().ink);
    fitted({0, 41, 46, 10}, words.pulls, 8.4, palette().ink);
    double y = 41.5;
    const double each = words.strings.size() > 1 ? 4.6 : 9;
    for (const QString& string : words.strings) {
        line({49, y, width - 49, each}, string, words.strings.size() > 1 ? kSmall : kLine, palette().ink);
        y += each;
    }
    rule(0, width, 52.5);
    if (!words.promise.isEmpty()) {
        line({0, 54, width * 0.4, 5}, Slips::tr("promised"), kSmall, palette().softInk);
        fitted({0, 57, width, 9}, words.promise, 7, palette().ink);
    }
}

void SlipPainter::paint(const TicketWords& words) {
    const QSizeF sheet = kTicket;
    const double width = sheet.width();
    line({0, 0, width * 0.62, 8}, words.shop, 6, palette().ink, true);
    line({0, 8, width * 0.62, 5}, words.taken, kSmall, palette().softInk);
    fitted({width * 0.64, 0, width * 0.36, 13}, words.number, 12, palette().ink, true, kRight);
    rule(0, width, 15);
    line({0, 16.5, width, 7}, words.customer, 5.6, palette().ink, true);
    line({0, 23.5, width, 6}, PaperText{kLine}.elided(words.racket, width, Qt::ElideMiddle), kLine, palette().ink);
    double y = 30;
    for (const QString& string : words.strings) {
        line({0, y, width, 5.6}, string, 4, palette().ink);
        y += 5.6;
    }
    line({0, y, width, 5.6}, words.pulls, 4, palette().ink);
    y += 6.5;
    y = paragraph({0, y, width, 16}, words.note, kSmall, palette().softInk, 3) + 1;
    rule(0, width, y);
    y = bill(words, y + 1, sheet.height() - 37);
    line({0, y, width * 0.5, 8}, Slips::tr("in all"), kLine, palette().ink, true);
    fitted({width * 0.4, y, width * 0.6, 8}, words.total, 7, palette().ink, true, kRight);
    y += 8;
    line({0, y, width, 5}, words.paid, 4, palette().ink, true);
    line({width * 0.4, y, width * 0.6, 5}, words.tax, kSmall, palette().softInk, false, kRight);
    const double foot = sheet.height() - 21;
    rule(0, width, foot);
    if (!words.promise.isEmpty()) {
        line({0, foot + 1, width, 5}, Slips::tr("ready by"), kSmall, palette().softInk);
        fitted({0, foot + 5.5, width, 8.5}, words.promise, 6.6, palette().ink);
    }
    line({0, foot + 15, width, 5}, Slips::tr("Please bring this ticket when you collect the racket."), kSmall,
         palette().softInk);
}

double SlipPainter::bill(const TicketWords& words, double top, double bottom) {
    const double width = kTicket.width();
    const auto lines = static_cast<double>(std::max<std::size_t>(words.bill.size(), 1));
    // A long bill is written smaller rather than cut off.
    const double step = std::min(6.0, (bottom - top) / lines);
    double y = top;
    for (const auto& [what, amount] : words.bill) {
        line({0, y, width * 0.7, step}, what, step * 0.74, palette().ink);
        line({width * 0.7, y, width * 0.3, step}, amount, step * 0.74, palette().ink, false, kRight);
        y += step;
    }
    rule(width * 0.7, width, y + 0.3);
    return y + 1;
}

void SlipPainter::cutLine(const QSizeF& around) {
    painter().setBrush(Qt::NoBrush);
    painter().setPen(QPen(palette().rule, 0.3, Qt::DashLine));
    painter().drawRect(QRectF({0, 0}, around));
}

} // namespace rw::ui
