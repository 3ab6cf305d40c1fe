// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "ui/documents/paper_size.h"

#include <QRectF>
#include <QString>

#include <functional>

class QPainter;

namespace rw::ui {

/// Paints one page into the rectangle, which is the printable part of it in the painter's own units.
using PaintPage = std::function<void(QPainter&, const QRectF&)>;

/// One page, fonts embedded, written by writeWholeFile.
[[nodiscard]] Result<void> writePdfPage(const QString& path, const QString& title, PaperSize size,
                                        const PaintPage& paint);

} // namespace rw::ui
