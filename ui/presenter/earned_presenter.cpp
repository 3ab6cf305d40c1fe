// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/earned_presenter.h"

#include "ui/presenter/owner_presenter.h"

#include <algorithm>

namespace rw::ui {

EarnedPresenter::EarnedPresenter(DeskRunner& runner, Shift& shift, OwnerPresenter& owner, QObject* parent)
    : BooksPresenter(runner, shift, parent)
    , m_owner(owner) {
    connect(&owner, &OwnerPresenter::changed, this, [this] {
        m_earned.reset();
        Q_EMIT earnedChanged();
        refresh();
    });
}

bool EarnedPresenter::mayGoOn() const { return m_month < desk::monthOf(shift().today()).first; }

void EarnedPresenter::load() {
    m_asked.cancel();
    if (!m_owner.mayShow()) {
        return;
    }
    if (m_followsToday) {
        m_month = desk::monthOf(shift().today()).first;
    }
    m_asked = read([month = desk::monthOf(m_month)](desk::Transaction& ledger) { return desk::earned(ledger, month); },
                   [this](Result<desk::Earned> earned) {
                       if (earned) {
                           m_earned = std::move(*earned);
                           Q_EMIT earnedChanged();
                       }
                   });
}

void EarnedPresenter::goMonths(int months) {
    const CivilDate now = desk::monthOf(shift().today()).first;
    m_month = std::min(desk::monthsOn(m_month, months), now);
    m_followsToday = m_month == now;
    m_earned.reset();
    Q_EMIT earnedChanged();
    refresh();
}

} // namespace rw::ui
