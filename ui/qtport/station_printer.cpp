// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/qtport/station_printer.h"

#include <QDir>
#include <QPainter>
#include <QPrinter>
#include <QPrinterInfo>
#include <QStandardPaths>

#include <utility>

namespace rw::ui {

namespace {
QString key(Slip slip, const char* what) { return slipCode(slip) + QLatin1Char('/') + QLatin1String(what); }

QString ownFolder() {
    const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return (documents.isEmpty() ? QDir::homePath() : documents) + QStringLiteral("/Reelwright");
}

Result<void> printOn(const QString& printerName, const QString& title, PaperSize size, const PaintPage& paint) {
    QPrinter printer(QPrinterInfo::printerInfo(printerName), QPrinter::HighResolution);
    printer.setDocName(title);
    printer.setPageLayout(pageLayout(size));
    QPainter painter;
    if (!painter.begin(&printer)) {
        return refuse(Code::FileUnwritable,
                      {{"file", printerName.toStdString()}, {"reason", "the printer takes nothing"}});
    }
    // A printer may keep wider margins than were asked for; the page fits into what is left.
    paint(painter, QRectF(QPointF(0, 0), printer.pageRect(QPrinter::DevicePixel).size()));
    painter.end();
    return {};
}
} // namespace

StationPrinter::StationPrinter()
    : m_settings(std::make_unique<QSettings>(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("reelwright"),
                                             QStringLiteral("papers")))
    , m_folder(ownFolder()) {}

StationPrinter::StationPrinter(const QString& settingsFile, QString folder)
    : m_settings(std::make_unique<QSettings>(settingsFile, QSettings::IniFormat))
    , m_folder(std::move(folder)) {}

QStringList StationPrinter::printers() const { return QPrinterInfo::availablePrinterNames(); }

SlipChoice StationPrinter::choice(Slip slip) const {
    return {m_settings->value(key(slip, "printer")).toString(),
            paperSizeFromCode(m_settings->value(key(slip, "paper")).toString(), usualPaper(slip))};
}

void StationPrinter::choose(Slip slip, const SlipChoice& choice) {
    m_settings->setValue(key(slip, "printer"), choice.printer);
    m_settings->setValue(key(slip, "paper"), paperSizeCode(choice.paper));
    m_settings->sync();
}

Result<PrintedSlip> StationPrinter::print(Slip slip, const desk::JobPaper& paper, const JobCardStyle& style) {
    const SlipChoice chosen = choice(slip);
    const QString file = QStringLiteral("%1-%2.pdf").arg(slipCode(slip), QString::number(paper.card.job.number));
    return put(slip, chosen, slipTitle(slip, paper.card.job.number), file, [&](QPainter& painter, const QRectF& area) {
        paintSlip(painter, area, chosen.paper, slip, paper, style);
    });
}

Result<PrintedSlip> StationPrinter::printPage(const QString& title, const QString& file, const PaintPage& paint) {
    return put(Slip::JobCard, {choice(Slip::JobCard).printer, PaperSize::A4}, title, file, paint);
}

Result<PrintedSlip> StationPrinter::put(Slip slip, const SlipChoice& chosen, const QString& title, const QString& file,
                                        const PaintPage& paint) const {
    if (printers().contains(chosen.printer)) {
        const auto printed = printOn(chosen.printer, title, chosen.paper, paint);
        return printed ? Result<PrintedSlip>(PrintedSlip{.slip = slip, .where = chosen.printer})
                       : tl::unexpected<Refusal>(printed.error());
    }
    if (!QDir().mkpath(m_folder)) {
        return refuse(Code::FileUnwritable,
                      {{"file", m_folder.toStdString()}, {"reason", "the folder cannot be made"}});
    }
    const QString path = m_folder + QLatin1Char('/') + file;
    if (const auto written = writePdfPage(path, title, chosen.paper, paint); !written) {
        return tl::unexpected<Refusal>(written.error());
    }
    return PrintedSlip{.slip = slip, .where = path, .isFile = true, .missingPrinter = chosen.printer};
}

} // namespace rw::ui
