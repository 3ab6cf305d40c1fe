// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/palette.h"

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

// WCAG 2.1, success criterion 1.4.3: text stands out by at least 4.5 to 1.
constexpr double kReadable = 4.5;

TEST(Palette, TextIsReadableOnEveryPaper) {
    for (const Palette& palette : {Palette::light(), Palette::dark(), Palette::print()}) {
        for (const QColor& text : {palette.ink, palette.softInk, palette.accent}) {
            EXPECT_GE(contrastRatio(text, palette.paper), kReadable) << text.name().toStdString();
            EXPECT_GE(contrastRatio(text, palette.shade), kReadable) << text.name().toStdString();
        }
        EXPECT_GE(contrastRatio(palette.onAccent, palette.accent), kReadable);
    }
}

TEST(Palette, ContrastIsThatOfTheStandard) {
    // WCAG 2.1, definition of contrast ratio: black on white is 21, a colour on itself 1.
    EXPECT_NEAR(contrastRatio(Qt::black, Qt::white), 21, 1e-9);
    EXPECT_NEAR(contrastRatio(Qt::white, Qt::black), 21, 1e-9);
    EXPECT_NEAR(contrastRatio(Qt::red, Qt::red), 1, 1e-9);
    // #767676 is the lightest grey that passes on white (4.54).
    EXPECT_NEAR(contrastRatio(QColor(0x76, 0x76, 0x76), Qt::white), 4.54, 0.01);
}

} // namespace
} // namespace rw::ui
