// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/history_presenter.h"

namespace rw::ui {

namespace {
using Entries = std::vector<desk::HistoryEntry>;

Result<Entries> historyOf(desk::Transaction& ledger, CustomerId customer) {
    return desk::historyOfCustomer(ledger, customer);
}
Result<Entries> historyOf(desk::Transaction& ledger, RacketId racket) { return desk::historyOfRacket(ledger, racket); }
Result<Entries> historyOf(desk::Transaction& ledger, FrameModelId frame) { return desk::historyOfFrame(ledger, frame); }
Result<Entries> historyOf(desk::Transaction& ledger, JobId job) {
    const auto stored = ledger.jobs().get(job);
    if (!stored) {
        return refuse(Code::NotFound, {{"what", "job"}, {"text", std::to_string(job.value())}});
    }
    return desk::historyOfRacket(ledger, stored->racket);
}
} // namespace

HistoryPresenter::HistoryPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : StationPresenter(runner, shift, "counter", parent) {}

void HistoryPresenter::show(const HistoryOf& of) {
    m_of = of;
    m_entries.clear();
    m_loaded = false;
    m_refusal.reset();
    Q_EMIT entriesChanged();
    refresh();
}

void HistoryPresenter::refresh() {
    if (!m_of) {
        return;
    }
    m_asked.cancel();
    m_asked = read(
        [whose = m_of->whose](desk::Transaction& ledger) {
            return std::visit([&](auto id) { return historyOf(ledger, id); }, whose);
        },
        [this](Result<Entries> entries) {
            m_refusal = entries ? std::nullopt : std::optional(entries.error());
            m_entries = entries ? std::move(*entries) : Entries();
            m_loaded = true;
            Q_EMIT entriesChanged();
        });
}

} // namespace rw::ui
