// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/shift.h"

#include "core/base/world_error.h"
#include "ui/text/format.h"
#include "ui/text/sentences.h"

#include <algorithm>
#include <cassert>
#include <utility>

namespace rw::ui {

namespace {
template<class Rows, class Key>
auto find(const Rows& rows, const Key& id) {
    const auto found = std::ranges::find_if(rows, [&](const auto& row) { return row.id == id; });
    return found == rows.end() ? nullptr : &*found;
}

/// Of a history that names what is offered no more.
template<class Rows, class Key>
auto findEver(const Rows& now, const Rows& former, const Key& id) {
    const auto* found = find(now, id);
    return found == nullptr ? find(former, id) : found;
}

template<class Rows, class Key>
void keepWhileThere(const Rows& rows, std::optional<Key>& chosen) {
    if (chosen && find(rows, *chosen) == nullptr) {
        chosen.reset();
    }
}

bool isLost(const std::exception_ptr& error) {
    try {
        std::rethrow_exception(error);
    } catch (const LedgerLost&) {
        return true;
    } catch (...) {
        return false;
    }
}
} // namespace

Shift::Shift(const Clock& clock, QObject* parent)
    : QObject(parent)
    , m_clock(clock) {}

void Shift::setShop(desk::ShopFacts shop) {
    if (m_shop == shop) {
        return;
    }
    m_shop = std::move(shop);
    keepWhileThere(m_shop->staff, m_staff);
    if (!m_staff && m_shop->staff.size() == 1) {
        m_staff = m_shop->staff.front().id;
    }
    keepWhileThere(m_shop->machines, m_machine);
    if (!m_machine && !m_shop->machines.empty()) {
        m_machine = m_shop->machines.front().id;
    }
    Q_EMIT shopChanged();
    Q_EMIT staffChanged();
    Q_EMIT machineChanged();
}

QTimeZone Shift::zone() const { return m_shop ? timeZoneOf(m_shop->timeZone) : QTimeZone::utc(); }

OpeningHours Shift::hours() const { return m_shop ? m_shop->hours : OpeningHours(); }

void Shift::setStaff(StaffId staff) {
    if (m_staff != staff) {
        m_staff = staff;
        Q_EMIT staffChanged();
    }
}

void Shift::setMachine(MachineId machine) {
    if (m_machine != machine) {
        m_machine = machine;
        Q_EMIT machineChanged();
    }
}

void Shift::noteTrouble(desk::Access access, const std::exception_ptr& error) {
    m_trouble = sentenceFor(error);
    m_cutOff = m_cutOff || access == desk::Access::Read || isLost(error);
    Q_EMIT troubleChanged();
    if (m_cutOff) {
        Q_EMIT unanswered();
    }
}

void Shift::noteAnswer(desk::Access access) {
    if (m_trouble.isEmpty() || (access == desk::Access::Read && !m_cutOff)) {
        return;
    }
    m_trouble.clear();
    const bool isBack = std::exchange(m_cutOff, false);
    Q_EMIT troubleChanged();
    if (isBack) {
        Q_EMIT ledgerChanged();
    }
}

void Shift::commandAnswered(bool written) {
    m_allWritten = m_allWritten && written;
    if (--m_underWay == 0) {
        Q_EMIT allAnswered(std::exchange(m_allWritten, true));
    }
}

By Shift::by(std::string_view station) const {
    assert(m_staff.has_value());
    return {*m_staff, std::string(station), now()};
}

QString Shift::staffName(StaffId id) const {
    const auto* member = m_shop ? findEver(m_shop->staff, m_shop->formerStaff, id) : nullptr;
    return member == nullptr ? QString() : fromUtf8(member->name);
}

QString Shift::machineName(MachineId id) const {
    const auto* machine = machineOf(id);
    return machine == nullptr ? QString() : fromUtf8(machine->name);
}

const desk::Machine* Shift::machineOf(MachineId id) const {
    return m_shop ? findEver(m_shop->machines, m_shop->formerMachines, id) : nullptr;
}

const StringArticle* Shift::article(StringArticleId id) const {
    return m_shop ? findEver(m_shop->strings, m_shop->formerStrings, id) : nullptr;
}

TensionUnit Shift::usualUnit() const {
    return m_shop && !m_shop->machines.empty() ? m_shop->machines.front().unit : TensionUnit::Pound;
}

} // namespace rw::ui
