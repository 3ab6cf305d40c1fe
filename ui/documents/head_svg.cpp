// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/head_svg.h"

#include "ui/documents/whole_file.h"
#include "ui/drawing/head_drawing.h"
#include "ui/text/plan_words.h"

#include <QBuffer>
#include <QPainter>
#include <QSvgGenerator>

namespace rw::ui {

namespace {
// A page at the usual 96 dots to the inch; a viewer scales it as it likes.
constexpr int kWidth = 900;
constexpr int kHeight = 1000;
constexpr int kDotsPerInch = 96;
} // namespace

QByteArray headSvg(const length::CutPlan& plan) {
    QBuffer page;
    page.open(QIODevice::WriteOnly);
    QSvgGenerator writer;
    writer.setOutputDevice(&page);
    writer.setResolution(kDotsPerInch);
    writer.setSize(QSize(kWidth, kHeight));
    writer.setViewBox(QRect(0, 0, kWidth, kHeight));
    writer.setTitle(routeName(plan).toHtmlEscaped());
    writer.setDescription(headDescription(plan).toHtmlEscaped());
    QPainter painter(&writer);
    const HeadDrawing how{.detail = HeadDetail::Page, .palette = Palette::print()};
    const QRectF area(0, 0, kWidth, kHeight);
    painter.fillRect(area, how.palette.paper);
    drawHead(painter, area, plan, how);
    painter.end();
    return page.data();
}

Result<void> writeHeadSvg(const QString& path, const length::CutPlan& plan) {
    return writeWholeFile(path, headSvg(plan));
}

} // namespace rw::ui
