// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/stock_take_paper.h"

#include "tests/ui/canvas.h"
#include "tests/ui/no_warnings.h"
#include "tests/ui/sample_weighings.h"

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

constexpr int kDots = 4; ///< a millimetre

TEST(StockTakePaper, KeepsToItsPageHoweverMuchWasWeighed) {
    const NoWarnings quiet;
    const QSizeF page = printableMillimetres(PaperSize::A4) * kDots;
    const QRect area(30, 30, static_cast<int>(page.width()), static_cast<int>(page.height()));
    for (const int lines : {0, 1, 20, 400}) {
        desk::StockTakeSheet sheet = samples::stockTake(lines);
        if (lines > 0) {
            sheet.lines.front().article.name = std::string(300, 'W');
        }
        Canvas canvas(area.width() + 60, area.height() + 60, Palette::print());
        canvas.draw([&](QPainter& painter) { paintStockTake(painter, area, sheet); });
        const int inside = canvas.inked(area);
        EXPECT_EQ(canvas.inked(canvas.all()), inside) << lines;
        EXPECT_GT(inside, 1'000) << lines;
    }
}

TEST(StockTakePaper, HasALineToSignOnUnderEverything) {
    const NoWarnings quiet;
    const QSizeF page = printableMillimetres(PaperSize::A4) * kDots;
    const QRect area(0, 0, static_cast<int>(page.width()), static_cast<int>(page.height()));
    const QRect line(0, area.height() - 8 * kDots, area.width(), 3 * kDots);
    const QRect above(0, area.height() - 16 * kDots, area.width(), 7 * kDots);
    Canvas canvas(area.width(), area.height(), Palette::print());
    canvas.draw([&](QPainter& painter) { paintStockTake(painter, area, samples::stockTake(400)); });
    EXPECT_GT(canvas.inked(line), area.width() / 2);
    EXPECT_EQ(canvas.inked(above), 0) << "room for a name";
}

} // namespace
} // namespace rw::ui
