// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/takings_presenter.h"

#include <algorithm>

namespace rw::ui {

namespace {
struct Asked {
    desk::Takings day;
    desk::Takings month;
};
} // namespace

TakingsPresenter::TakingsPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : BooksPresenter(runner, shift, parent) {}

bool TakingsPresenter::mayGoOn() const { return m_day < shift().today(); }

void TakingsPresenter::load() {
    if (m_followsToday) {
        m_day = shift().today();
    }
    m_asked.cancel();
    m_asked = read(
        [day = m_day](desk::Transaction& ledger) -> Result<Asked> {
            auto ofDay = desk::takings(ledger, desk::dayOf(day));
            auto ofMonth = desk::takings(ledger, desk::monthOf(day));
            if (!ofDay || !ofMonth) {
                return tl::unexpected<Refusal>(ofDay ? ofMonth.error() : ofDay.error());
            }
            return Asked{std::move(*ofDay), std::move(*ofMonth)};
        },
        [this](Result<Asked> asked) {
            if (asked) {
                m_ofDay = std::move(asked->day);
                m_ofMonth = std::move(asked->month);
                Q_EMIT takingsChanged();
            }
        });
}

void TakingsPresenter::goTo(CivilDate day) {
    m_day = std::min(day, shift().today());
    m_followsToday = m_day == shift().today();
    m_ofDay.reset();
    m_ofMonth.reset();
    Q_EMIT takingsChanged();
    refresh();
}

void TakingsPresenter::goDays(int days) { goTo(CivilDate(std::chrono::sys_days(m_day) + std::chrono::days(days))); }

void TakingsPresenter::goMonths(int months) { goTo(desk::monthsOn(m_day, months)); }

void TakingsPresenter::goToday() { goTo(shift().today()); }

} // namespace rw::ui
