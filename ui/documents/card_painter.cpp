// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/card_painter.h"

#include "ui/drawing/head_drawing.h"
#include "ui/drawing/paper_text.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

namespace rw::ui {

namespace {
struct Card {
    Q_DECLARE_TR_FUNCTIONS(Card)
};

constexpr double kTallWidth = 186;
constexpr double kWideHeight = 150;
constexpr double kWideColumn = 150; // of numbers, beside the drawing
constexpr double kGap = 6;
constexpr double kHeading = 23;
constexpr double kPull = 26;      // capitals of about 19 mm on A4: read across the room
constexpr double kQuietPull = 15; // of the two, the one that is not strung now
constexpr double kCut = 11;
constexpr double kSmall = 4.4;
constexpr double kCaution = 2.9;
} // namespace

CardPainter::CardPainter(QPainter& painter, const CardWords& words, const length::CutPlan& plan, const Palette& palette)
    : PaperPen(painter, palette)
    , m_words(words)
    , m_plan(plan) {}

QSizeF CardPainter::sheetFor(const QSizeF& area) {
    if (area.width() > 1.15 * area.height()) {
        return {kWideHeight * area.width() / area.height(), kWideHeight};
    }
    return {kTallWidth, kTallWidth * area.height() / area.width()};
}

void CardPainter::paint(const QSizeF& sheet) {
    const bool wide = sheet.width() > sheet.height();
    double footTop = sheet.height() - footHeight(sheet.width());
    double top = heading({0, 0, sheet.width(), kHeading});
    top = notices({0, top, sheet.width(), footTop - top});
    top = steps({0, top, sheet.width(), footTop - top});
    const double left = wide ? std::min(kWideColumn, sheet.width() * 0.62) : sheet.width();
    double y = pulls({0, top, left, footTop - top});
    y = cuts({0, 0, left, footTop}, y);
    y = shortSide({0, 0, left, footTop}, y);
    if (y <= footTop) {
        foot({0, footTop, sheet.width(), sheet.height() - footTop});
    } else {
        footTop = sheet.height(); // what is to be strung comes before the small print
    }
    if (wide) {
        words({0, y + 2, left, footTop - y - 3});
        drawing({left + kGap, top + 2, sheet.width() - left - kGap, footTop - top - 4});
        return;
    }
    const double wordsWidth = 64;
    words({sheet.width() - wordsWidth, y + 3, wordsWidth, footTop - y - 5});
    drawing({0, y + 2, sheet.width() - wordsWidth - kGap, footTop - y - 4});
}

double CardPainter::heading(const QRectF& column) {
    const double promiseWidth = m_words.promise.isEmpty() ? 0 : 58;
    const double numberWidth = fitted({column.left(), column.top(), 46, 15}, m_words.number, 14, palette().ink);
    line({column.left(), column.top() + 14.5, 46, 6}, m_words.state, kSmall, palette().softInk);
    const double left = column.left() + std::max(numberWidth, 34.0) + 8;
    const double width = column.right() - promiseWidth - left - (promiseWidth > 0 ? kGap : 0);
    line({left, column.top() + 0.5, width, 10}, m_words.customer, 7.6, palette().ink, true);
    // The mark stands last and tells twins apart: a long name gives way before it.
    const QString racket = PaperText{6.2}.elided(m_words.racket, width, Qt::ElideMiddle);
    line({left, column.top() + 10.5, width, 9}, racket, 6.2, palette().ink);
    if (promiseWidth > 0) {
        const QRectF box(column.right() - promiseWidth, column.top(), promiseWidth, 10);
        fitted(box.adjusted(0, 0.5, 0, 0), m_words.promise, 6.4, palette().ink, true, kRight);
        line(box.translated(0, 9), Card::tr("promised"), kSmall, palette().softInk, false, kRight);
    }
    rule(column.left(), column.right(), column.bottom() - 0.5);
    return column.bottom();
}

double CardPainter::notices(const QRectF& column) {
    constexpr double kNotice = 4.8;
    double y = column.top();
    for (const CardWords::Notice& notice : m_words.notices) {
        const PaperText style{kNotice, notice.warns};
        const QRectF mark(column.left(), y + 1.5, 5, 4.6);
        notice.warns ? warningMark(mark) : tick(mark, 0.8);
        for (const QString& shown : style.wrapped(notice.words, column.width() - 7, 2)) {
            line({column.left() + 7, y + 0.8, column.width() - 7, style.lineStep()}, shown, kNotice,
                 notice.warns ? palette().accent : palette().ink, notice.warns);
            y += style.lineStep();
        }
    }
    if (m_words.notices.empty()) {
        return y;
    }
    rule(column.left(), column.right(), y + 1.6);
    return y + 2.1;
}

double CardPainter::steps(const QRectF& column) {
    if (m_words.steps.empty() && m_words.hands.isEmpty()) {
        return column.top();
    }
    constexpr double kRow = 8;
    double x = column.left();
    for (const CardWords::Step& step : m_words.steps) {
        const QString words = Card::tr("%1 %2").arg(step.shape, step.word);
        x += line({x, column.top(), column.right() - x, kRow}, words, 4.8,
                  step.current ? palette().ink : palette().softInk, step.current) +
             5;
    }
    const double left = x > column.left() ? x + 4 : x;
    const Qt::Alignment side = m_words.steps.empty() ? Qt::AlignLeft : Qt::AlignRight;
    line({left, column.top(), std::max(0.0, column.right() - left), kRow}, m_words.hands, kSmall, palette().softInk,
         false, side | Qt::AlignVCenter);
    rule(column.left(), column.right(), column.top() + kRow);
    return column.top() + kRow + 0.5;
}

void CardPainter::pull(const CardWords::Pull& pull, const QRectF& box, bool dialed) {
    const QColor& color = pull.quiet ? palette().softInk : palette().ink;
    const double high = pull.quiet ? kQuietPull : kPull;
    const double name = line({box.left(), box.top() + 2, box.width(), 7}, pull.name, 6, palette().softInk);
    if (!pull.was.isEmpty()) {
        const double left = box.left() + name + 4;
        const double width = line({left, box.top() + 2, box.right() - left, 7}, pull.was, 6, palette().accent, true);
        painter().setPen(QPen(palette().accent, 0.7));
        painter().drawLine(QPointF(left - 1, box.top() + 5.7), QPointF(left + width + 1, box.top() + 5.7));
    }
    const double unit = high * 0.42;
    const double unitWidth = PaperText{unit, false}.width(pull.unit) + 2;
    const double number = fitted({box.left(), box.top() + 8.5, box.width() - unitWidth, 24}, pull.number, high, color);
    line({box.left() + number + 2, box.top() + (pull.quiet ? 15.5 : 18.5), unitWidth + 2, 12}, pull.unit, unit, color);
    if (dialed) {
        fitted({box.left(), box.top() + 34, box.width(), 8}, Card::tr("dial %1").arg(pull.dial), 6.6, color);
        fitted({box.left(), box.top() + 41.5, box.width(), 5}, pull.detail, 3.3, palette().softInk, false);
    }
}

double CardPainter::pulls(const QRectF& column) {
    const double half = (column.width() - kGap) / 2;
    const bool dialed = !m_words.machine.isEmpty();
    double x = column.left();
    for (const CardWords::Pull& each : m_words.pulls) {
        pull(each, {x, column.top(), half, column.height()}, dialed);
        x += half + kGap;
    }
    // A dial in the unit that was asked, on a step, has nothing to explain.
    const bool explained = std::ranges::any_of(m_words.pulls, [](const auto& each) { return !each.detail.isEmpty(); });
    double y = column.top() + (!dialed ? 34 : explained ? 47 : 42);
    QString where = m_words.machine;
    if (!m_words.marked.isEmpty()) {
        where = where.isEmpty() ? m_words.marked : Card::tr("%1 · %2").arg(where, m_words.marked);
    }
    if (!where.isEmpty()) {
        line({column.left(), y, column.width(), 5.4}, where, kSmall, palette().softInk);
        y += 6.5;
    }
    rule(column.left(), column.right(), y + 0.5);
    return y + 1;
}

double CardPainter::cuts(const QRectF& column, double top) {
    for (const CardWords::Cut& each : m_words.cuts) {
        top = cut(each, column, top);
    }
    rule(column.left(), column.right(), top + 0.5);
    return top + 1;
}

double CardPainter::cut(const CardWords::Cut& cut, const QRectF& column, double top) {
    checkBox({column.left() + 0.5, top + 4.6, 6, 6}, cut.done);
    const double number = fitted({column.left() + 9.5, top + 1, 44, 13.5}, cut.length, kCut, palette().ink);
    const double left = column.left() + 9.5 + std::max(number, 36.0) + 5;
    const double width = column.right() - left;
    const double piece = line({left, top + 1.2, width, 7}, cut.piece, 5.2, palette().ink, true);
    const PaperText small{kSmall};
    double y = top + 8.4;
    if (small.width(cut.string) <= width - piece - 3) {
        line({left + piece + 3, top + 1.2, width - piece - 3, 7}, cut.string, kSmall, palette().ink);
    } else {
        line({left, y, width, small.lineStep()}, cut.string, kSmall, palette().ink);
        y += small.lineStep();
    }
    const double indent = cut.careful ? 6 : 0;
    if (cut.careful) {
        warningMark({left, y + 0.7, 4.6, 4.2});
    }
    const PaperText source{kSmall, cut.careful};
    // What has to be done before cutting is never cut short itself.
    for (const QString& shown : source.wrapped(cut.source, width - indent, cut.careful ? 3 : 2)) {
        line({left + indent, y, width - indent, source.lineStep()}, shown, kSmall,
             cut.careful ? palette().accent : palette().ink, cut.careful);
        y += source.lineStep();
    }
    if (!cut.lost.isEmpty()) {
        line({left, y, width, 5}, cut.lost, 3.8, palette().softInk);
        y += 5;
    }
    return std::max(y, top + 14) + 1;
}

double CardPainter::shortSide(const QRectF& column, double top) {
    if (m_words.shortSide.isEmpty()) {
        return top;
    }
    line({column.left(), top + 1.5, 36, 6}, Card::tr("short side"), 5, palette().softInk);
    const double side = fitted({column.left(), top + 6.5, 42, 11}, m_words.shortSide, 9.5, palette().accent);
    const double left = column.left() + std::max(side, 36.0) + 5;
    const double width = column.right() - left;
    fitted({left, top + 1.2, width, 7}, m_words.shortSideLength, 5.2, palette().ink);
    const double mark = line({left, top + 8.2, width, 6.5}, m_words.shortSideMark, 5.2, palette().ink, true);
    double x = left + mark + 4;
    if (m_words.shortSideWarns && column.right() - x > 12) {
        warningMark({x, top + 9.2, 4.6, 4.2});
        x += 6;
    }
    line({x, top + 8.2, std::max(0.0, column.right() - x), 6.5}, m_words.shortSideFrom, kSmall,
         m_words.shortSideWarns ? palette().accent : palette().softInk);
    rule(column.left(), column.right(), top + 18);
    return top + 18.5;
}

void CardPainter::words(const QRectF& column) {
    struct Paragraph {
        QString text;
        double height;
        bool bold;
        qsizetype most;
    };
    // A note may be as long as somebody likes; it leaves room for the route all the same.
    constexpr qsizetype kNoteLines = 7;
    constexpr double kSmallest = 0.62;
    std::vector<Paragraph> paragraphs = {{m_words.strung, 5, true, 3},
                                         {m_words.note, 5, true, kNoteLines},
                                         {m_words.inspection, kSmall, false, 4},
                                         {m_words.routeName, kSmall, true, 3}};
    for (const QString& arm : m_words.route) {
        paragraphs.push_back({arm, kSmall, false, 9});
    }
    paragraphs.push_back({m_words.needs, kSmall, false, 2}); // the first to go where there is no room
    // As large as fits, down to what can still be read at arm's length.
    for (const double size : {1.0, 0.9, 0.8, 0.7, kSmallest}) {
        std::vector<std::pair<QRectF, std::pair<QString, const Paragraph*>>> lines;
        double y = column.top();
        for (const Paragraph& paragraph : paragraphs) {
            const PaperText style{paragraph.height * size, paragraph.bold};
            for (const QString& shown : style.wrapped(paragraph.text, column.width(), paragraph.most)) {
                lines.push_back({QRectF(column.left(), y, column.width(), style.lineStep()), {shown, &paragraph}});
                y += style.lineStep();
            }
            y += paragraph.text.isEmpty() ? 0 : style.height * 0.35;
        }
        if (y > column.bottom() && size > kSmallest) {
            continue;
        }
        for (const auto& [box, text] : lines) {
            if (box.bottom() <= column.bottom()) {
                line(box, text.first, text.second->height * size, palette().ink, text.second->bold);
            }
        }
        return;
    }
}

double CardPainter::footHeight(double width) const {
    if (m_words.cautions.isEmpty()) {
        return 0;
    }
    const PaperText style{kCaution};
    const auto lines = style.wrapped(m_words.cautions.join(QLatin1Char(' ')), width, 6).size();
    return static_cast<double>(lines) * style.lineStep() + 2;
}

void CardPainter::foot(const QRectF& area) {
    if (m_words.cautions.isEmpty()) {
        return;
    }
    rule(area.left(), area.right(), area.top());
    const PaperText style{kCaution};
    double y = area.top() + 1.6;
    for (const QString& shown : style.wrapped(m_words.cautions.join(QLatin1Char(' ')), area.width(), 6)) {
        line({area.left(), y, area.width(), style.lineStep()}, shown, kCaution, palette().softInk);
        y += style.lineStep();
    }
}

void CardPainter::drawing(const QRectF& area) {
    if (area.height() < 20 || area.width() < 20) {
        return;
    }
    drawHead(painter(), area, m_plan, {HeadDetail::Card, palette()});
}

} // namespace rw::ui
