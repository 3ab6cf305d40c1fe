// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/staff_presenter.h"

#include "core/desk/settings.h"

#include <algorithm>

namespace rw::ui {

StaffPresenter::StaffPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : SetUpPresenter(runner, shift, parent) {}

void StaffPresenter::load() {
    struct Found {
        std::vector<desk::StaffMember> staff;
        CivilDate today;
    };
    show(
        [now = shift().now()](desk::Transaction& ledger) -> Result<Found> {
            return Found{ledger.shop().staff(), desk::today(ledger.shop(), now)};
        },
        [this](Found found) {
            m_staff = std::move(found.staff);
            m_today = found.today;
            std::ranges::stable_partition(m_staff, [](const auto& member) { return !member.retired; });
        });
}

void StaffPresenter::keep(const desk::StaffMember& member) {
    act([member](desk::Transaction& ledger) { return desk::keepPerson(ledger, member); },
        [this](const desk::StaffMember& done) { Q_EMIT kept(done); });
}

void StaffPresenter::retire(desk::StaffMember member) {
    member.retired = !member.retired;
    keep(member);
}

} // namespace rw::ui
