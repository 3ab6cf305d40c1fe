// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/shell_presenter.h"

#include "core/desk/clock_check.h"

#include <QPointer>

#include <chrono>

namespace rw::ui {

namespace {
/// Soon enough that nobody restarts the program, seldom enough that a server which comes up is left in peace.
constexpr std::chrono::seconds kAskAgainAfter{2};
} // namespace

ShellPresenter::ShellPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : StationPresenter(runner, shift, "counter", parent) {
    m_askAgain.setSingleShot(true);
    m_askAgain.setInterval(kAskAgainAfter);
    connect(&m_askAgain, &QTimer::timeout, this, &ShellPresenter::refresh);
    connect(&shift, &Shift::unanswered, &m_askAgain, qOverload<>(&QTimer::start));
    runner.watchChanges([told = QPointer(&shift)] {
        if (told) {
            told->noteChange();
        }
    });
}

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

void ShellPresenter::lookAtClock() {
    read([now = shift().now()](desk::Transaction& ledger) { return desk::momentAhead(ledger, now); },
         [this](const Result<std::optional<Instant>>& ahead) {
             if (ahead && *ahead) {
                 Q_EMIT foundAhead(**ahead);
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
              }
          },
          [this] { m_settingUp = false; });
}

} // namespace rw::ui
