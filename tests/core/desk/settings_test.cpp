// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/settings.h"
#include "tests/core/desk/fake_ledger.h"

#include <gtest/gtest.h>

namespace rw::desk::test {
namespace {

class Settings : public ::testing::Test {
protected:
    ShopSettings settings() {
        const auto transaction = ledger.begin(Access::Read);
        return readSettings(transaction->shop());
    }
    Workshop workshop() {
        const auto transaction = ledger.begin(Access::Read);
        return workshopOf(transaction->shop(), readSettings(transaction->shop()));
    }
    void set(std::string_view name, std::string_view value) { ledger.rows.settings[std::string(name)] = value; }

    FakeLedger ledger;
};

using std::chrono::minutes;

TEST_F(Settings, ANewLedgerHasDefaults) {
    const ShopSettings found = settings();
    EXPECT_EQ(found.hours.week[0], (DayHours{minutes(600), minutes(1080)}));
    EXPECT_FALSE(found.hours.week[6].has_value());
    EXPECT_EQ(workshop().machines, 1);
    EXPECT_EQ(found.marginPercent, 15);
    EXPECT_EQ(found.minutesPerJob, minutes(25));
    EXPECT_EQ(found.tapeStep, Length::fromMillimetres(50));
    EXPECT_EQ(found.scaleStep, Mass::fromMilligrams(1'000));
    EXPECT_DOUBLE_EQ(found.ceiling, 0.01);
    EXPECT_EQ(found.reach, Length::fromMillimetres(300));
}

TEST_F(Settings, AreReadAsValues) {
    set("hours.mon", "09:30 - 12:00");
    set("hours.sat", "");
    set("closed-days", "2026-12-25 2026-02-30 nonsense 2026-12-26");
    set("minutes.per-job", "40");
    set("promise.margin-percent", "0");
    set("ceiling-percent", "0,5");
    set("short-side", "right");
    ledger.rows.machines = {{MachineId::of(1), "Old", TensionUnit::Pound, 50, Length::fromMillimetres(380)},
                            {MachineId::of(2), "New", TensionUnit::Kilogram, 10, Length::fromMillimetres(250)}};
    const ShopSettings found = settings();
    EXPECT_EQ(found.hours.week[0], (DayHours{minutes(570), minutes(720)}));
    EXPECT_FALSE(found.hours.week[1].has_value()) << "a week with any hours is as it is written";
    EXPECT_EQ(found.hours.closedDays.size(), 2U);
    EXPECT_EQ(found.minutesPerJob, minutes(40));
    EXPECT_EQ(found.marginPercent, 0);
    EXPECT_DOUBLE_EQ(found.ceiling, 0.005);
    EXPECT_EQ(found.shortSide, Side::Right);
    EXPECT_EQ(workshop().machines, 2);
    EXPECT_EQ(found.reach, Length::fromMillimetres(380)) << "a cut serves whichever machine is free";
}

TEST_F(Settings, PromisesCountOnWhoStringsAndOnMachinesInUse) {
    StaffMember away{.id = StaffId::of(3), .name = "Ines Varholt"};
    away.worker.daysOff = {std::chrono::year(2026) / 5 / 14};
    ledger.rows.staff = {{.id = StaffId::of(1), .name = "Oriel Tamm", .strings = false},
                         {.id = StaffId::of(2), .name = "Somebody", .retired = true},
                         away};
    ledger.rows.machines = {{MachineId::of(1), "Bench A", TensionUnit::Pound},
                            {.id = MachineId::of(2), .name = "Bench Z", .unit = TensionUnit::Pound, .retired = true}};
    const Workshop found = workshop();
    ASSERT_EQ(found.people.size(), 1U);
    EXPECT_EQ(found.people[0].daysOff, away.worker.daysOff);
    EXPECT_EQ(found.machines, 1);
}

TEST_F(Settings, AShopThatNamedNoStringerHasSomebodyAtEachMachine) {
    ledger.rows.staff = {{.id = StaffId::of(1), .name = "Oriel Tamm", .strings = false}};
    ledger.rows.machines = {{MachineId::of(1), "Old", TensionUnit::Pound},
                            {MachineId::of(2), "New", TensionUnit::Pound}};
    EXPECT_EQ(workshop().people.size(), 2U);
}

TEST_F(Settings, WhatCannotBeReadCountsAsNotSet) {
    set("hours.mon", "ten to six");
    set("hours.tue", "18:00-10:00");
    set("hours.wed", "10:00-25:00");
    set("minutes.per-job", "-5");
    set("tape-step-mm", "0");
    set("ceiling-percent", "99");
    set("promise.step-minutes", "15 or so");
    const ShopSettings found = settings();
    EXPECT_TRUE(found.hours.week[0].has_value()) << "a shop that never opens could promise nothing";
    EXPECT_EQ(found.minutesPerJob, minutes(25));
    EXPECT_EQ(found.tapeStep, Length::fromMillimetres(50));
    EXPECT_DOUBLE_EQ(found.ceiling, 0.01);
    EXPECT_EQ(found.step, minutes(15));
}

} // namespace
} // namespace rw::desk::test
