// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/slip.h"

#include "ui/documents/slip_painter.h"
#include "ui/documents/slip_words.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

namespace rw::ui {

namespace {
struct Slips {
    Q_DECLARE_TR_FUNCTIONS(Slips)
};

/// Between the cut line and what is written inside it, in millimetres.
constexpr double kInset = 4;

/// Lays something of its own size on the area: as it is with a line to cut along where the paper is larger, else
/// shrunk.
template<class Words>
void place(QPainter& painter, const QRectF& area, PaperSize size, const QSizeF& slip, const Words& words,
           const Palette& palette) {
    const QSizeF page = printableMillimetres(size);
    const double unit = area.width() / page.width();
    painter.translate(area.topLeft());
    painter.scale(unit, unit);
    SlipPainter pen(painter, palette);
    const QSizeF framed = slip + QSizeF(2 * kInset, 2 * kInset);
    if (page.width() >= framed.width() && page.height() >= framed.height()) {
        pen.cutLine(framed);
        painter.translate(kInset, kInset);
    } else {
        const double shrink = std::min({1.0, page.width() / slip.width(), page.height() / slip.height()});
        painter.scale(shrink, shrink);
    }
    pen.paint(words);
}
} // namespace

QString slipWord(Slip slip) {
    switch (slip) {
    case Slip::Tag:
        return Slips::tr("tag");
    case Slip::Ticket:
        return Slips::tr("ticket");
    case Slip::JobCard:
        return Slips::tr("job card");
    case Slip::FrameLabel:
        return Slips::tr("frame label");
    case Slip::Ready:
        break;
    }
    return Slips::tr("ready slip");
}

QString slipCode(Slip slip) {
    switch (slip) {
    case Slip::Tag:
        return QStringLiteral("tag");
    case Slip::Ticket:
        return QStringLiteral("ticket");
    case Slip::JobCard:
        return QStringLiteral("card");
    case Slip::FrameLabel:
        return QStringLiteral("label");
    case Slip::Ready:
        break;
    }
    return QStringLiteral("ready");
}

PaperSize usualPaper(Slip slip) {
    switch (slip) {
    case Slip::Tag:
    case Slip::Ready:
        return PaperSize::A7Landscape;
    case Slip::Ticket:
        return PaperSize::A6;
    case Slip::FrameLabel:
        return PaperSize::RollShort;
    case Slip::JobCard:
        break;
    }
    return PaperSize::A4;
}

QString slipTitle(Slip slip, std::int64_t number) {
    const QString tag = QString::number(number);
    switch (slip) {
    case Slip::Tag:
        return Slips::tr("Tag %1").arg(tag);
    case Slip::Ticket:
        return Slips::tr("Ticket %1").arg(tag);
    case Slip::JobCard:
        return Slips::tr("Job card %1").arg(tag);
    case Slip::FrameLabel:
        return Slips::tr("Frame label %1").arg(tag);
    case Slip::Ready:
        break;
    }
    return Slips::tr("Ready slip %1").arg(tag);
}

Result<void> canBePrinted(Slip slip, const Job& job) {
    if ((slip == Slip::FrameLabel || slip == Slip::Ready) && !job.strung) {
        return refuse(Code::WrongState, {{"job", job.number},
                                         {"state", std::string(jobStateText(job.state))},
                                         {"wanted", std::string(jobStateText(JobState::Strung))}});
    }
    return {};
}

void paintSlip(QPainter& painter, const QRectF& area, PaperSize size, Slip slip, const desk::JobPaper& paper,
               const JobCardStyle& style) {
    if (slip == Slip::JobCard) {
        paintJobCard(painter, area, paper.card, style);
        return;
    }
    if (area.isEmpty()) {
        return;
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(area, Qt::IntersectClip);
    switch (slip) {
    case Slip::Tag:
        place(painter, area, size, SlipPainter::kTag, tagWords(paper, style), style.palette);
        break;
    case Slip::Ticket:
        place(painter, area, size, SlipPainter::kTicket, ticketWords(paper, style), style.palette);
        break;
    case Slip::FrameLabel:
        place(painter, area, size, SlipPainter::kFrameLabel, labelWords(paper, style), style.palette);
        break;
    case Slip::Ready:
        place(painter, area, size, SlipPainter::kReady, readyWords(paper, style), style.palette);
        break;
    case Slip::JobCard:
        break; // above
    }
    painter.restore();
}

Result<void> writeSlipPdf(const QString& path, Slip slip, const desk::JobPaper& paper, PaperSize size,
                          const JobCardStyle& style) {
    if (const auto printable = canBePrinted(slip, paper.card.job); !printable) {
        return printable;
    }
    return writePdfPage(path, slipTitle(slip, paper.card.job.number), size, [&](QPainter& painter, const QRectF& area) {
        paintSlip(painter, area, size, slip, paper, style);
    });
}

} // namespace rw::ui
