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

Result<void> printOn(const QString& printerName, Slip slip, const desk::JobPaper& paper, PaperSize size,
                     const JobCardStyle& style) {
    QPrinter printer(QPrinterInfo::printerInfo(printerName), QPrinter::HighResolution);
    printer.setDocName(slipTitle(slip, paper.card.job.number));
    printer.setPageLayout(pageLayout(size));
    QPainter painter;
    if (!painter.begin(&printer)) {
        return refuse(Code::FileUnwritable,
                      {{"file", printerName.toStdString()}, {"reason", "the printer takes nothing"}});
    }
    // A printer may keep wider margins than were asked for; the slip fits into what is left.
    paintSlip(painter, QRectF(QPointF(0, 0), printer.pageRect(QPrinter::DevicePixel).size()), size, slip, paper, style);
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
    const bool isThere = printers().contains(chosen.printer);
    if (isThere) {
        const auto printed = printOn(chosen.printer, slip, paper, chosen.paper, style);
        return printed ? Result<PrintedSlip>(PrintedSlip{.slip = slip, .where = chosen.printer})
                       : tl::unexpected<Refusal>(printed.error());
    }
    if (!QDir().mkpath(m_folder)) {
        return refuse(Code::FileUnwritable,
                      {{"file", m_folder.toStdString()}, {"reason", "the folder cannot be made"}});
    }
    const QString path =
        QStringLiteral("%1/%2-%3.pdf").arg(m_folder, slipCode(slip), QString::number(paper.card.job.number));
    if (const auto written = writeSlipPdf(path, slip, paper, chosen.paper, style); !written) {
        return tl::unexpected<Refusal>(written.error());
    }
    return PrintedSlip{.slip = slip, .where = path, .isFile = true, .missingPrinter = chosen.printer};
}

} // namespace rw::ui
