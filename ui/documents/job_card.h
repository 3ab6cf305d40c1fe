// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/desk/bench.h"
#include "ui/documents/paper_size.h"
#include "ui/drawing/palette.h"

#include <QLocale>
#include <QRectF>
#include <QString>
#include <QTimeZone>

class QPainter;

namespace rw::ui {

struct JobCardStyle {
    Palette palette = Palette::print();
    QLocale locale;
    QTimeZone zone = QTimeZone::utc();
    bool cautions = true; ///< the small print at the foot; the screen may leave it to the guide
};

/// Paints the card so that it fills `area` and never leaves it, however long the words are: tall areas stack the
/// drawing under the numbers, wide ones put it beside them. All sizes follow the area. Paints no background.
void paintJobCard(QPainter& painter, const QRectF& area, const desk::JobCard& card, const JobCardStyle& style = {});

/// One page, as writePdfPage writes it.
[[nodiscard]] Result<void> writeJobCardPdf(const QString& path, const desk::JobCard& card,
                                           const JobCardStyle& style = {}, PaperSize size = PaperSize::A4);

} // namespace rw::ui
