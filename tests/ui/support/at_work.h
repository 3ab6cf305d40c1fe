// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/demo_shop.h"
#include "core/desk/shop_facts.h"
#include "core/desk/unit_of_work.h"
#include "tests/core/desk/fake_ledger.h"
#include "tests/ui/no_warnings.h"
#include "tests/ui/support/held_desk_runner.h"
#include "ui/presenter/shift.h"

#include <gtest/gtest.h>

#include <chrono>
#include <string_view>

namespace rw::ui::test {

/// The demo shop's day: Thursday 12 March 2026, eleven o'clock, in winter time.
constexpr Instant kThursday = std::chrono::sys_days(std::chrono::year(2026) / 3 / 12) + std::chrono::hours(11);
constexpr std::chrono::milliseconds kAtOnce{0};

/// Harbour Lane Strings in memory, with somebody at work, for presenters: no window, no waiting.
class AtWork : public testing::Test {
protected:
    AtWork() {
        shift.setShop(facts());
        shift.setStaff(*shift.shop().staff.front().id);
    }

    desk::ShopFacts facts() {
        return *desk::inTransaction(ledger, desk::Access::Read,
                                    [](desk::Transaction& t) { return desk::shopFacts(t, kThursday); });
    }
    template<class Work>
    auto look(Work work) {
        const auto transaction = ledger.begin(desk::Access::Read);
        return work(*transaction);
    }
    StringArticleId string(std::string_view code) {
        for (const auto& article : shift.shop().strings) {
            if (article.code == code) {
                return *article.id;
            }
        }
        throw std::invalid_argument("no such string in the demo shop");
    }
    MachineId machine(std::string_view name) {
        for (const auto& found : shift.shop().machines) {
            if (found.name == name) {
                return *found.id;
            }
        }
        throw std::invalid_argument("no such machine in the demo shop");
    }
    Lot lot(std::string_view tag) {
        return *look([&](desk::Transaction& t) { return t.lots().byTag(tag); });
    }

    static desk::test::Rows stocked() {
        static const desk::test::Rows rows = [] {
            desk::test::FakeLedger empty;
            const auto done = desk::inTransaction(
                empty, desk::Access::Write, [](desk::Transaction& t) { return desk::stockDemoShop(t, kThursday); });
            EXPECT_TRUE(done.has_value());
            return empty.rows;
        }();
        return rows;
    }
    static desk::test::FakeLedger stockedLedger() {
        desk::test::FakeLedger ledger;
        ledger.rows = stocked();
        return ledger;
    }

    NoWarnings noWarnings;
    desk::test::FakeLedger ledger = stockedLedger();
    FixedClock clock{kThursday};
    HeldDeskRunner runner{ledger};
    Shift shift{clock};
};

inline Tension lb(std::string_view text) { return *Tension::tryParse(text, TensionUnit::Pound); }
inline Length metres(double m) { return Length::fromMillimetres(static_cast<std::int64_t>(m * 1000 + 0.5)); }

} // namespace rw::ui::test
