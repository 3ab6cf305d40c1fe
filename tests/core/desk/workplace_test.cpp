// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/workplace.h"

#include "core/desk/settings.h"
#include "tests/core/desk/demo_fixture.h"

#include <gmock/gmock.h>

#include <algorithm>

// Who works in the shop and at which machines: added, changed, retired, brought back.
namespace rw::desk::test {
namespace {
using namespace std::chrono_literals;

class Workplaces : public DemoEverywhere {
protected:
    StaffMember person(std::string_view name) {
        for (StaffMember& member : look([](Transaction& t) { return t.shop().staff(); })) {
            if (member.name == name) {
                return member;
            }
        }
        throw std::invalid_argument("nobody of that name works here");
    }
    Result<StaffMember> keep(const StaffMember& member) {
        return write([&](Transaction& t) { return keepPerson(t, member); });
    }
    Result<Machine> keep(const Machine& machine) {
        return write([&](Transaction& t) { return keepMachine(t, machine); });
    }
    /// For one racket that nothing waits before, without a margin.
    Instant promise() {
        return look([](Transaction& t) {
            ShopSettings settings = readSettings(t.shop());
            settings.marginPercent = 0;
            return earliestPromise(workshopOf(t.shop(), settings), kNow, {}, settings.minutesPerJob);
        });
    }
    std::size_t people() {
        return look([](Transaction& t) { return t.shop().staff().size(); });
    }
};
IN_MEMORY_AND_ON_BOTH_ENGINES(Workplaces);

TEST_P(Workplaces, APersonIsAddedOnce) {
    const auto before = people();
    const StaffMember wanted{.id = std::nullopt, .name = " Tove Larke ", .strings = false};
    const auto added = keep(wanted);
    const auto again = keep(wanted);
    ASSERT_TRUE(added && again);
    EXPECT_EQ(added->name, "Tove Larke");
    EXPECT_EQ(added->id, again->id) << "pressed twice";
    EXPECT_EQ(people(), before + 1);
    EXPECT_EQ(person("Tove Larke"), *added);
    EXPECT_EQ(keep(StaffMember{.id = std::nullopt, .name = "tove LARKE"}).error().text("key"), "name");
}

TEST_P(Workplaces, HoursAndDaysOffMoveThePromise) {
    const Instant usual = promise();
    EXPECT_EQ(usual, kNow + 30min);
    for (const char* name : {"Oriel Tamm", "Bastian Quill", "Ines Varholt", "Marguerite Dossan"}) {
        StaffMember member = person(name);
        member.worker.daysOff = {2026y / 3 / 13, 2026y / 3 / 12, 2026y / 3 / 13};
        const auto kept = keep(member);
        ASSERT_TRUE(kept);
        EXPECT_EQ(kept->worker.daysOff, (std::vector<CivilDate>{2026y / 3 / 12, 2026y / 3 / 13}));
    }
    EXPECT_EQ(promise(), kNow + 48h - 30min) << "Saturday, half an hour after ten";
    StaffMember ines = person("Ines Varholt");
    ines.worker.daysOff.clear();
    ines.worker.week = WeekHours{};
    (*ines.worker.week)[4] = DayHours{14h, 16h};
    ASSERT_TRUE(keep(ines));
    EXPECT_EQ(promise(), kNow + 24h + 3h + 30min) << "Friday from two on";
}

TEST_P(Workplaces, OneWhoDoesNotStringMakesNoPromise) {
    for (const char* name : {"Oriel Tamm", "Bastian Quill", "Marguerite Dossan"}) {
        StaffMember member = person(name);
        member.strings = false;
        ASSERT_TRUE(keep(member));
    }
    StaffMember ines = person("Ines Varholt");
    ines.worker.daysOff = {2026y / 3 / 12};
    ASSERT_TRUE(keep(ines));
    EXPECT_EQ(promise(), kNow + 23h + 30min) << "Friday, half an hour after ten";
}

TEST_P(Workplaces, WhoLeavesStaysInTheHistoryAndComesBack) {
    const auto before = people();
    StaffMember ines = person("Ines Varholt");
    ines.retired = true;
    ASSERT_TRUE(keep(ines));
    EXPECT_TRUE(person("Ines Varholt").retired);
    EXPECT_EQ(people(), before);
    StaffMember back = person("Ines Varholt");
    back.retired = false;
    ASSERT_TRUE(keep(back));
    EXPECT_FALSE(person("Ines Varholt").retired);
}

TEST_P(Workplaces, SomebodyMustStay) {
    for (const char* name : {"Oriel Tamm", "Bastian Quill", "Ines Varholt"}) {
        StaffMember member = person(name);
        member.retired = true;
        ASSERT_TRUE(keep(member));
    }
    StaffMember last = person("Marguerite Dossan");
    last.retired = true;
    EXPECT_EQ(keep(last).error().text("key"), "retired");
    EXPECT_FALSE(person("Marguerite Dossan").retired);
}

TEST_P(Workplaces, WhatCannotBeIsRefused) {
    const auto refused = [&](auto spoil) {
        StaffMember member = person("Oriel Tamm");
        spoil(member);
        const auto kept = keep(member);
        EXPECT_FALSE(kept);
        return kept ? Refusal(Code::NotEnoughString) : kept.error();
    };
    EXPECT_EQ(refused([](StaffMember& m) { m.name = " "; }).text("what"), "name");
    EXPECT_EQ(refused([](StaffMember& m) { m.name = std::string(81, 'o'); }).code(), Code::TooLong);
    EXPECT_EQ(refused([](StaffMember& m) { m.name = "Ines Varholt"; }).text("key"), "name");
    EXPECT_EQ(refused([](StaffMember& m) { m.worker.week = WeekHours{}; }).text("key"), "hours");
    EXPECT_EQ(refused([](StaffMember& m) {
                  m.worker.week = WeekHours{};
                  (*m.worker.week)[0] = DayHours{18h, 10h};
              }).text("key"),
              "hours");
    EXPECT_EQ(refused([](StaffMember& m) { m.id = StaffId::of(999'999); }).code(), Code::ImpossibleValue)
        << "the name is somebody else's";
    EXPECT_EQ(refused([](StaffMember& m) {
                  m.id = StaffId::of(999'999);
                  m.name = "Nobody";
              }).code(),
              Code::NotFound);
    EXPECT_EQ(person("Oriel Tamm").version, 1);
}

TEST_P(Workplaces, OfTwoThatChangeAPersonTheSecondIsTold) {
    StaffMember mine = person("Oriel Tamm");
    StaffMember theirs = mine;
    theirs.strings = false;
    ASSERT_TRUE(keep(theirs));
    mine.name = "Oriel T.";
    EXPECT_EQ(refusalOf(keep(mine)), Code::ChangedMeanwhile);
    EXPECT_EQ(person("Oriel Tamm").version, 2);
}

TEST_P(Workplaces, AMachineIsAddedChangedAndRetired) {
    const Machine wanted{.id = std::nullopt, .name = "Bench C", .unit = TensionUnit::Kilogram, .stepHundredths = 25};
    const auto added = keep(wanted);
    ASSERT_TRUE(added);
    EXPECT_EQ(keep(wanted)->id, added->id) << "pressed twice";
    Machine changed = *added;
    changed.reach = Length::fromMillimetres(420);
    changed.retired = true;
    ASSERT_TRUE(keep(changed));
    EXPECT_EQ(machine("Bench C").reach, Length::fromMillimetres(420));
    const auto inUse = look([](Transaction& t) { return machinesInUse(t.shop()); });
    EXPECT_EQ(std::ranges::count(inUse, std::string("Bench C"), &Machine::name), 0);
    EXPECT_EQ(refusalOf(keep(*added)), Code::ChangedMeanwhile);
}

TEST_P(Workplaces, AMachineThatARacketLiesOnStays) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    const Job job = logged(racket, draftFor(racket, "K", "K", "52", "52"), "on-it");
    ASSERT_TRUE(take(*job.id, "Bench B"));
    Machine busy = machine("Bench B");
    busy.retired = true;
    const auto refused = keep(busy);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().text("key"), "retired");
    EXPECT_THAT(refused.error().text("expected"), testing::HasSubstr(std::to_string(job.number)));
}

TEST_P(Workplaces, TheLastMachineStays) {
    Machine other = machine("Bench B");
    other.retired = true;
    ASSERT_TRUE(keep(other));
    Machine last = machine("Bench A");
    last.retired = true;
    EXPECT_EQ(keep(last).error().text("expected"), "no other machine is in use");
    EXPECT_FALSE(machine("Bench A").retired);
}

TEST_P(Workplaces, ADialThatNoMachineHasIsRefused) {
    Machine coarse = machine("Bench A");
    coarse.stepHundredths = 1001;
    EXPECT_EQ(keep(coarse).error().text("what"), "step");
    Machine far = machine("Bench A");
    far.reach = Length::fromMillimetres(2001);
    EXPECT_EQ(keep(far).error().text("what"), "reach");
    Machine twin = machine("Bench A");
    twin.name = "bench b";
    EXPECT_EQ(keep(twin).error().text("key"), "name");
}

} // namespace
} // namespace rw::desk::test
