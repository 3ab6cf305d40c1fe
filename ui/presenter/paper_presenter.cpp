// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/paper_presenter.h"

#include "core/base/world_error.h"
#include "ui/documents/stock_take_paper.h"
#include "ui/text/paper_words.h"
#include "ui/text/sentences.h"
#include "ui/text/weigh_words.h"

#include <utility>

namespace rw::ui {

PaperPresenter::PaperPresenter(DeskRunner& runner, Shift& shift, SlipPrinter& printer, QObject* parent)
    : StationPresenter(runner, shift, "counter", parent)
    , m_printer(printer) {}

void PaperPresenter::print(std::vector<Slip> slips, JobId job) {
    read([job, machine = shift().machine()](desk::Transaction& ledger) { return desk::jobPaper(ledger, job, machine); },
         [this, slips = std::move(slips)](const Result<desk::JobPaper>& paper) {
             if (!paper) {
                 Q_EMIT refused(paper.error());
                 return;
             }
             QStringList words;
             bool done = true;
             for (const Slip slip : slips) {
                 if (done) {
                     words << put(slip, *paper, done);
                 }
             }
             Q_EMIT printed(words.join(QLatin1Char('\n')));
         });
}

void PaperPresenter::print(const desk::StockTakeSheet& sheet) {
    const QString title = stockTakeTitle();
    const QString file = QStringLiteral("stock-take-%1.pdf").arg(sheet.take ? sheet.take->id.value() : 0);
    bool done = false;
    Q_EMIT printed(tell(
        title,
        [&] {
            return m_printer.printPage(title, file, [&](QPainter& painter, const QRectF& area) {
                paintStockTake(painter, area, sheet, style());
            });
        },
        done));
}

QString PaperPresenter::put(Slip slip, const desk::JobPaper& paper, bool& done) {
    if (const auto printable = canBePrinted(slip, paper.card.job); !printable) {
        done = false;
        return sentenceFor(printable.error());
    }
    return tell(
        slipTitle(slip, paper.card.job.number), [&] { return m_printer.print(slip, paper, style()); }, done);
}

JobCardStyle PaperPresenter::style() const {
    JobCardStyle style;
    style.locale = shift().locale();
    style.zone = shift().zone();
    return style;
}

QString PaperPresenter::tell(const QString& title, const std::function<Result<PrintedSlip>()>& print, bool& done) {
    try {
        const auto printed = print();
        done = printed.has_value();
        if (!printed) {
            return sentenceFor(printed.error());
        }
        return printed->isFile ? printedToFileText(title, printed->where, printed->missingPrinter)
                               : printedText(title, printed->where);
    } catch (const WorldError&) {
        done = false;
        return sentenceFor(std::current_exception());
    }
}

} // namespace rw::ui
