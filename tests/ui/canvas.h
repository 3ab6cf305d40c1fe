// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/drawing/palette.h"

#include <QColor>
#include <QImage>
#include <QPainter>

namespace rw::ui {

/// A sheet to draw on and to look at afterwards.
class Canvas {
public:
    Canvas(int width, int height, const Palette& palette = Palette::light())
        : m_palette(palette)
        , m_image(width, height, QImage::Format_ARGB32_Premultiplied) {
        m_image.fill(palette.paper);
    }

    template<class Draw>
    const QImage& draw(Draw draw) {
        QPainter painter(&m_image);
        draw(painter);
        return m_image;
    }

    [[nodiscard]] const QImage& image() const { return m_image; }

    /// How many dots inside `where` are not blank paper.
    [[nodiscard]] int inked(QRect where) const {
        return count(where, [&](const QColor& dot) { return dot != m_palette.paper; });
    }
    /// How many dots are much warmer than grey: the accent colour and what is mixed with it.
    [[nodiscard]] int warm(QRect where) const {
        return count(where, [](const QColor& dot) { return dot.red() > dot.blue() + 60; });
    }
    [[nodiscard]] QRect all() const { return m_image.rect(); }

private:
    template<class Test>
    [[nodiscard]] int count(QRect where, Test test) const {
        int found = 0;
        for (int y = where.top(); y <= where.bottom(); ++y) {
            for (int x = where.left(); x <= where.right(); ++x) {
                found += test(m_image.pixelColor(x, y)) ? 1 : 0;
            }
        }
        return found;
    }
    Palette m_palette;
    QImage m_image;
};

} // namespace rw::ui
