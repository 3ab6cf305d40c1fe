// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/paper_presenter.h"

#include "core/base/world_error.h"
#include "ui/text/paper_words.h"
#include "ui/text/sentences.h"

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

QString PaperPresenter::put(Slip slip, const desk::JobPaper& paper, bool& done) {
    JobCardStyle style;
    style.locale = shift().locale();
    style.zone = shift().zone();
    if (const auto printable = canBePrinted(slip, paper.card.job); !printable) {
        done = false;
        return sentenceFor(printable.error());
    }
    const QString title = slipTitle(slip, paper.card.job.number);
    try {
        const auto printed = m_printer.print(slip, paper, style);
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
