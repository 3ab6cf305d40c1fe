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
    number(words.number, words.tag);
    line({0, 26.5, width, 8}, words.customer, 6.6, palette().ink, true);
    line({0, 34, width, 6.5}, PaperText{5.2}.elided(words.racket, width, Qt::ElideMiddle), 5.2, palette().ink);
    fitted({0, 41, 44, 10}, words.pulls, 8.4, palette().ink);
    double y = 41.5;
    const double each = words.strings.size() > 1 ? 4.6 : 9;
    for (const QString& string : words.strings) {
        name({47, y, width - 47, each}, string, words.strings.size() > 1 ? kSmall : kLine);
        y += each;
    }
    rule(0, width, 52.5);
    if (!words.promise.isEmpty()) {
        line({0, 54, width * 0.4, 5}, Slips::tr("promised"), kSmall, palette().softInk);
        fitted({0, 57, width, 9}, words.promise, 7, palette().ink);
    }
}

void SlipPainter::number(const QString& number, std::int64_t tag) {
    // The number is what people look for on the rack; the code only a scanner reads.
    const double side = 25;
    const double width = kTag.width() - side - 1;
    fitted({0, 0, width, side}, number, side, palette().ink, true, Qt::AlignCenter);
    code({width + 1, 0, side, side}, TagCode(tag));
    rule(0, kTag.width(), side + 0.5);
}

void SlipPainter::name(const QRectF& box, const QString& text, double height) {
    const double width = PaperText{height}.width(text);
    // A little less than would just fit: letters of another size are not wider by exactly as much.
    const double share = width > box.width() ? std::max(0.97 * box.width() / width, 0.67) : 1;
    line(box, text, height * share, palette().ink);
}

void SlipPainter::paint(const LabelWords& words) {
    const double side = kFrameLabel.height();
    code({0, 0, side, side}, TagCode(words.tag));
    const double left = side + 1;
    const double width = kFrameLabel.width() - left;
    fitted({left, 0, width * 0.4, 5}, words.number, 5, palette().ink);
    fitted({left + width * 0.43, 0, width * 0.57, 5}, words.date, 2.6, palette().ink, false, kRight);
    fitted({left, 5, width, 7}, words.pulls, 6.4, palette().ink);
    double y = 12.2;
    for (const QString& string : words.strings) {
        name({left, y, width, 3}, string, 2.5);
        y += 3;
    }
    line({left, 18.2, width, 2.8}, words.shop, 2.2, palette().softInk);
}

void SlipPainter::paint(const ReadyWords& words) {
    const double width = kReady.width();
    number(words.number, words.tag);
    line({0, 26.5, width - 32, 8}, words.customer, 6.6, palette().ink, true);
    fitted({width - 30, 26.5, 30, 8}, Slips::tr("✓ ready"), 5.6, palette().ink, true, kRight);
    line({0, 34, width, 6.5}, PaperText{5.2}.elided(words.racket, width, Qt::ElideMiddle), 5.2, palette().ink);
    paragraph({0, 41, width, 11}, words.strung, kSmall, palette().ink, 2);
    rule(0, width, 52.5);
    paragraph({0, 54, width * 0.6, 12}, words.gives, kLine, palette().ink, 2, true);
    fitted({width * 0.62, 54.5, width * 0.38, 9}, words.owed, 7, palette().ink, true, kRight);
}

void SlipPainter::paint(const TicketWords& words) {
    const QSizeF sheet = kTicket;
    const double width = sheet.width();
    code({width - 15, 0, 15, 15}, TagCode(words.tag));
    fitted({width - 44, 0, 28, 13}, words.number, 12, palette().ink, true, kRight);
    fitted({0, 0, width - 46, 8}, words.shop, 6, palette().ink);
    line({0, 8, width - 46, 5}, words.taken, kSmall, palette().softInk);
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
