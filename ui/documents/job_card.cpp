// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/job_card.h"

#include "ui/documents/card_painter.h"
#include "ui/documents/card_words.h"
#include "ui/documents/pdf_page.h"

#include <QCoreApplication>
#include <QPainter>

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
                             PaperSize size) {
    return writePdfPage(path, Card::tr("Job %1").arg(QString::number(card.job.number)), size,
                        [&](QPainter& painter, const QRectF& area) { paintJobCard(painter, area, card, style); });
}

} // namespace rw::ui
