// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/pdf_page.h"

#include "ui/documents/whole_file.h"

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>

namespace rw::ui {

Result<void> writePdfPage(const QString& path, const QString& title, PaperSize size, const PaintPage& paint) {
    // The writer of PDFs says nothing of a disk that is full: it writes to memory, and the file is written whole.
    QBuffer page;
    page.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&page);
        writer.setResolution(600);
        writer.setTitle(title);
        writer.setCreator(QStringLiteral("Reelwright"));
        writer.setPageLayout(pageLayout(size));
        QPainter painter;
        painter.begin(&writer); // into memory: nothing can be in its way
        paint(painter, QRectF(0, 0, writer.width(), writer.height()));
        painter.end();
    }
    return writeWholeFile(path, page.data());
}

} // namespace rw::ui
