// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/job_card.h"

#include "ui/documents/card_painter.h"
#include "ui/documents/card_words.h"
#include "ui/documents/whole_file.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>

namespace rw::ui {

namespace {
struct Card {
    Q_DECLARE_TR_FUNCTIONS(Card)
};
} // namespace

void paintJobCard(QPainter& painter, const QRectF& area, const desk::JobCard& card, const JobCardStyle& style) {
    if (area.isEmpty()) {
        return;
    }
    const CardWords words = cardWords(card, style);
    const QSizeF sheet = CardPainter::sheetFor(area.size());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(area, Qt::IntersectClip);
    painter.translate(area.topLeft());
    painter.scale(area.width() / sheet.width(), area.height() / sheet.height());
    CardPainter(painter, words, card.plan, style.palette).paint(sheet);
    painter.restore();
}

Result<void> writeJobCardPdf(const QString& path, const desk::JobCard& card, const JobCardStyle& style,
                             CardPaper paper) {
    // The writer of PDFs says nothing of a disk that is full: it writes to memory, and the file is written whole.
    QBuffer page;
    page.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&page);
        writer.setResolution(600);
        writer.setTitle(Card::tr("Job %1").arg(QString::number(card.job.number)));
        writer.setCreator(QStringLiteral("Reelwright"));
        const bool a4 = paper == CardPaper::A4;
        const double margin = a4 ? 12 : 8;
        writer.setPageLayout(QPageLayout(QPageSize(a4 ? QPageSize::A4 : QPageSize::A5),
                                         a4 ? QPageLayout::Portrait : QPageLayout::Landscape,
                                         QMarginsF(margin, margin, margin, margin), QPageLayout::Millimeter));
        QPainter painter;
        painter.begin(&writer); // into memory: nothing can be in its way
        paintJobCard(painter, QRectF(0, 0, writer.width(), writer.height()), card, style);
        painter.end();
    }
    return writeWholeFile(path, page.data());
}

} // namespace rw::ui
