// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/shift.h"

#include "ui/text/format.h"

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

template<class Rows, class Key>
void keepOrFirst(const Rows& rows, std::optional<Key>& chosen) {
    if (chosen && find(rows, *chosen) != nullptr) {
        return;
    }
    chosen = rows.empty() ? std::nullopt : rows.front().id;
}
} // namespace

Shift::Shift(const Clock& clock, QObject* parent)
    : QObject(parent)
    , m_clock(clock) {}

void Shift::setShop(desk::ShopFacts shop) {
    m_shop = std::move(shop);
    keepOrFirst(m_shop->staff, m_staff);
    keepOrFirst(m_shop->machines, m_machine);
    Q_EMIT shopChanged();
    Q_EMIT staffChanged();
    Q_EMIT machineChanged();
}

QTimeZone Shift::zone() const { return m_shop ? timeZoneOf(m_shop->timeZone) : QTimeZone::utc(); }

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

void Shift::setTrouble(const QString& trouble) {
    if (m_trouble != trouble) {
        m_trouble = trouble;
        Q_EMIT troubleChanged();
    }
}

void Shift::commandAnswered() {
    if (--m_underWay == 0) {
        Q_EMIT allAnswered();
    }
}

By Shift::by(std::string_view station) const {
    assert(m_staff.has_value());
    return {*m_staff, std::string(station), now()};
}

QString Shift::staffName(StaffId id) const {
    const auto* member = m_shop ? find(m_shop->staff, id) : nullptr;
    return member == nullptr ? QString() : fromUtf8(member->name);
}

QString Shift::machineName(MachineId id) const {
    const auto* machine = machineOf(id);
    return machine == nullptr ? QString() : fromUtf8(machine->name);
}

const desk::Machine* Shift::machineOf(MachineId id) const { return m_shop ? find(m_shop->machines, id) : nullptr; }

const StringArticle* Shift::article(StringArticleId id) const { return m_shop ? find(m_shop->strings, id) : nullptr; }

TensionUnit Shift::usualUnit() const {
    return m_shop && !m_shop->machines.empty() ? m_shop->machines.front().unit : TensionUnit::Pound;
}

} // namespace rw::ui
