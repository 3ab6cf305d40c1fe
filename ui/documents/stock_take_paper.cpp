// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/stock_take_paper.h"

#include "ui/documents/paper_pen.h"
#include "ui/text/format.h"
#include "ui/text/weigh_words.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>
#include <array>

namespace rw::ui {

namespace {
struct StockTakePaper {
    Q_DECLARE_TR_FUNCTIONS(StockTakePaper)
};

// Millimetres of an A4 sheet.
constexpr double kTitle = 6;
constexpr double kText = 3.2;
constexpr double kHighestRow = 5.4;
constexpr double kLowestRow = 3.4;
constexpr double kFoot = 34;
constexpr double kFindingLines = 3;

using Row = std::array<QString, 7>;
/// Where each column begins, as a share of the width, and which side its words keep to.
constexpr std::array<double, 8> kEdges = {0, 0.10, 0.34, 0.44, 0.60, 0.76, 0.88, 1};
constexpr std::array<bool, 7> kNumbers = {false, false, true, true, true, true, false};

Row rowOf(const desk::WeighIn& line, const QLocale& locale) {
    const QString owner = line.owner.empty() ? QString() : QStringLiteral(", ") + fromUtf8(line.owner);
    return {fromUtf8(line.lot.tag),
            fromUtf8(line.article.name) + owner,
            massText(line.weighing.gross.weight, locale),
            sureLengthText(line.weighing.weighedMm, locale),
            sureLengthText(line.weighing.bookMm, locale),
            weighedChangeText(line, locale),
            weighStateText(line)};
}

Row header() {
    return {StockTakePaper::tr("tag"),       StockTakePaper::tr("string"),      StockTakePaper::tr("scale"),
            StockTakePaper::tr("by weight"), StockTakePaper::tr("by the book"), StockTakePaper::tr("difference"),
            StockTakePaper::tr("found")};
}

/// One sheet, scaled to millimetres.
class Sheet : private PaperPen {
public:
    Sheet(QPainter& painter, const JobCardStyle& style, const QSizeF& size)
        : PaperPen(painter, style.palette)
        , m_style(style)
        , m_size(size) {}

    void paint(const desk::StockTakeSheet& sheet) {
        double y = head(sheet);
        y = findings(sheet, y);
        table(sheet, y + 3);
        foot(sheet);
    }

private:
    [[nodiscard]] QRectF across(double top, double height) const { return {0, top, m_size.width(), height}; }

    double head(const desk::StockTakeSheet& sheet) {
        fitted(across(0, kTitle * 1.4), stockTakeTitle(), kTitle, palette().ink);
        double y = kTitle * 1.6;
        if (sheet.take) {
            const QString when = stockTakeWhenText(*sheet.take, fromUtf8(sheet.startedBy), fromUtf8(sheet.endedBy),
                                                   m_style.zone, m_style.locale);
            y = paragraph(across(y, m_size.height()), when, kText, palette().ink, 1);
        }
        return paragraph(across(y, m_size.height()), stockTakeText(sheet), kText, palette().softInk, 3);
    }

    double findings(const desk::StockTakeSheet& sheet, double y) {
        const double end = m_size.height() / 2;
        for (const desk::WeighIn& line : sheet.lines) {
            if (line.finding.isFinding && y < end) {
                const QString booked =
                    line.weighing.booked ? QLatin1Char(' ') + StockTakePaper::tr("Booked.") : QString();
                y = paragraph(QRectF(0, y + 1.5, m_size.width(), end - y),
                              weighStoryText(line, m_style.locale) + booked, kText, palette().ink,
                              static_cast<qsizetype>(kFindingLines));
            }
        }
        return y;
    }

    void row(const Row& words, double y, double height, bool bold, const QColor& color) {
        for (std::size_t i = 0; i < words.size(); ++i) {
            const double left = kEdges[i] * m_size.width();
            const double right = kEdges[i + 1] * m_size.width() - (kNumbers[i] ? 3 : 1);
            line({left, y, right - left, height}, words[i], std::min(kText, height * 0.7), color, bold,
                 kNumbers[i] ? kRight : kLeft);
        }
    }

    void table(const desk::StockTakeSheet& sheet, double y) {
        std::vector<const desk::WeighIn*> lines;
        for (const desk::WeighIn& line : sheet.lines) {
            lines.push_back(&line);
        }
        // What was found comes first, so that what is counted only was right.
        std::ranges::stable_partition(lines, [](const desk::WeighIn* line) { return line->finding.isFinding; });
        const double room = m_size.height() - kFoot - y - kHighestRow;
        const double height =
            std::clamp(room / std::max<double>(1, static_cast<double>(lines.size())), kLowestRow, kHighestRow);
        const auto fit = static_cast<std::size_t>(room / height);
        const std::size_t shown = lines.size() <= fit ? lines.size() : fit - 1;
        row(header(), y, kHighestRow, false, palette().softInk);
        y += kHighestRow;
        rule(0, m_size.width(), y);
        for (std::size_t i = 0; i < shown; ++i, y += height) {
            row(rowOf(*lines[i], m_style.locale), y, height, lines[i]->finding.isFinding, palette().ink);
        }
        if (shown < lines.size()) {
            line(across(y, height), StockTakePaper::tr("and %1 more").arg(lines.size() - shown), kText,
                 palette().softInk);
        }
    }

    void foot(const desk::StockTakeSheet&) {
        double y = m_size.height() - kFoot + 4;
        rule(0, m_size.width(), y);
        y = paragraph(across(y + 2, kFoot), weighLimitsText(), kText, palette().softInk, 2);
        const double under = m_size.height() - 7;
        const double middle = m_size.width() * 0.6;
        rule(0, middle - 8, under);
        rule(middle, m_size.width(), under);
        line({0, under + 1, middle, kText * 1.4}, StockTakePaper::tr("signed"), kText, palette().softInk);
        line({middle, under + 1, m_size.width() - middle, kText * 1.4}, StockTakePaper::tr("date"), kText,
             palette().softInk);
    }

    const JobCardStyle& m_style;
    QSizeF m_size;
};
} // namespace

void paintStockTake(QPainter& painter, const QRectF& area, const desk::StockTakeSheet& sheet,
                    const JobCardStyle& style) {
    if (area.isEmpty()) {
        return;
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(area, Qt::IntersectClip);
    const double unit = area.width() / printableMillimetres(PaperSize::A4).width();
    painter.translate(area.topLeft());
    painter.scale(unit, unit);
    Sheet(painter, style, area.size() / unit).paint(sheet);
    painter.restore();
}

} // namespace rw::ui
