// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/history_presenter.h"

namespace rw::ui {

HistoryPresenter::HistoryPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : StationPresenter(runner, shift, "counter", parent) {}

void HistoryPresenter::show(const HistoryOf& of) {
    m_of = of;
    m_entries.clear();
    m_loaded = false;
    Q_EMIT entriesChanged();
    refresh();
}

void HistoryPresenter::refresh() {
    if (!m_of) {
        return;
    }
    m_asked.cancel();
    m_asked = read(
        [whose = m_of->whose](desk::Transaction& ledger) -> Result<std::vector<desk::HistoryEntry>> {
            if (const auto* customer = std::get_if<CustomerId>(&whose)) {
                return desk::historyOfCustomer(ledger, *customer);
            }
            if (const auto* racket = std::get_if<RacketId>(&whose)) {
                return desk::historyOfRacket(ledger, *racket);
            }
            return desk::historyOfFrame(ledger, std::get<FrameModelId>(whose));
        },
        [this](Result<std::vector<desk::HistoryEntry>> entries) {
            m_entries = entries ? std::move(*entries) : std::vector<desk::HistoryEntry>();
            m_loaded = true;
            Q_EMIT entriesChanged();
        });
}

} // namespace rw::ui
