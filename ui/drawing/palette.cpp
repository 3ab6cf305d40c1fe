// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/palette.h"

#include <algorithm>
#include <cmath>

namespace rw::ui {

Palette Palette::light() {
    return {.paper = QColor(0xfb, 0xfa, 0xf6),
            .shade = QColor(0xf0, 0xee, 0xe7),
            .ink = QColor(0x2a, 0x2d, 0x31),
            .softInk = QColor(0x5d, 0x61, 0x66),
            .rule = QColor(0xcc, 0xc8, 0xbd),
            .accent = QColor(0xa9, 0x43, 0x14),
            .onAccent = QColor(0xff, 0xff, 0xff)};
}

Palette Palette::dark() {
    return {.paper = QColor(0x22, 0x24, 0x27),
            .shade = QColor(0x2d, 0x30, 0x34),
            .ink = QColor(0xea, 0xe7, 0xe0),
            .softInk = QColor(0xae, 0xb0, 0xb2),
            .rule = QColor(0x50, 0x54, 0x59),
            .accent = QColor(0xf0, 0x97, 0x62),
            .onAccent = QColor(0x22, 0x24, 0x27)};
}

Palette Palette::print() {
    Palette palette = light();
    palette.paper = QColor(0xff, 0xff, 0xff);
    palette.shade = QColor(0xf4, 0xf2, 0xed);
    return palette;
}

namespace {
double luminance(const QColor& color) {
    const auto linear = [](double channel) {
        return channel <= 0.03928 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
    };
    const QColor rgb = color.toRgb();
    return 0.2126 * linear(rgb.redF()) + 0.7152 * linear(rgb.greenF()) + 0.0722 * linear(rgb.blueF());
}
} // namespace

double contrastRatio(const QColor& one, const QColor& other) {
    const double first = luminance(one);
    const double second = luminance(other);
    return (std::max(first, second) + 0.05) / (std::min(first, second) + 0.05);
}

} // namespace rw::ui
