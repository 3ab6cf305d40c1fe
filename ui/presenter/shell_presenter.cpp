// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/shell_presenter.h"

namespace rw::ui {

ShellPresenter::ShellPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : StationPresenter(runner, shift, "counter", parent) {}

void ShellPresenter::refresh() {
    read([now = shift().now()](desk::Transaction& ledger) { return desk::shopFacts(ledger, now); },
         [this](Result<desk::ShopFacts> facts) {
             if (facts) {
                 shift().setShop(std::move(*facts));
                 Q_EMIT shopKnown();
             }
         });
}

void ShellPresenter::lookAtMachines() {
    read(
        [](desk::Transaction& ledger) -> Result<std::vector<desk::JobCard>> {
            std::vector<desk::JobCard> cards;
            for (const auto& line : ledger.jobs().inStates({JobState::OnTheMachine})) {
                auto card = desk::jobCard(ledger, line.id, std::nullopt);
                if (!card) {
                    return tl::unexpected<Refusal>(card.error());
                }
                cards.push_back(std::move(*card));
            }
            return cards;
        },
        [this](Result<std::vector<desk::JobCard>> cards) {
            if (cards && !cards->empty()) {
                Q_EMIT foundOnMachines(*cards);
            }
        });
}

void ShellPresenter::setUpShop(const desk::NewShop& shop) {
    if (m_settingUp) {
        return;
    }
    m_settingUp = true;
    write([shop, now = shift().now()](desk::Transaction& ledger) { return desk::setUpShop(ledger, shop, now); },
          [this](Result<void> done) {
              m_settingUp = false;
              if (!done) {
                  Q_EMIT setUpRefused(done.error());
                  return;
              }
              refresh();
          },
          [this] { m_settingUp = false; });
}

} // namespace rw::ui
