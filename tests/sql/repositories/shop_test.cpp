// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/repositories/repository_test.h"

using testing::HasSubstr;
using testing::IsEmpty;

namespace rw::sql::test {

class ShopTest : public RepositoryTest {};
ON_BOTH_ENGINES(ShopTest);

TEST_P(ShopTest, SettingsAreKeptUntilTheyAreSetAgain) {
    EXPECT_FALSE(shop().setting("tape step"));
    shop().set("tape step", "50");
    shop().set("greeting", "");
    shop().set("tape step", "'; DROP TABLE setting; -- 🎾");
    EXPECT_EQ(shop().setting("tape step"), "'; DROP TABLE setting; -- 🎾");
    EXPECT_EQ(shop().setting("greeting"), "");
}

TEST_P(ShopTest, PeopleAreListedAsTheyCameAndMachinesByName) {
    EXPECT_THAT(shop().staff(), IsEmpty());
    EXPECT_THAT(shop().machines(), IsEmpty());
    const auto oriel = shop().add(desk::StaffMember{std::nullopt, "Oriel Tamm"});
    const auto bastian = shop().add(desk::StaffMember{std::nullopt, "Bastian Quill"});
    const auto staff = shop().staff();
    ASSERT_EQ(staff.size(), 2U);
    EXPECT_EQ(staff[0].id, oriel);
    EXPECT_EQ(staff[0].name, "Oriel Tamm");
    EXPECT_EQ(staff[1].id, bastian);

    const auto crank = shop().add(desk::Machine{std::nullopt, "Bench B", TensionUnit::Kilogram, 25, mm(280)});
    const auto electronic = shop().add(desk::Machine{std::nullopt, "Bench A", TensionUnit::Pound, 50, mm(300)});
    const auto machines = shop().machines();
    ASSERT_EQ(machines.size(), 2U);
    EXPECT_EQ(machines[0].id, electronic);
    EXPECT_EQ(machines[1].id, crank);
    EXPECT_EQ(machines[1].name, "Bench B");
    EXPECT_EQ(machines[1].unit, TensionUnit::Kilogram);
    EXPECT_EQ(machines[1].stepHundredths, 25);
    EXPECT_EQ(machines[1].reach, mm(280));
    EXPECT_THAT(guardOf([&] {
                    (void)shop().add(desk::Machine{std::nullopt, "Odd", TensionUnit::Pound, 0, mm(300)});
                }),
                HasSubstr("machine_step"));
}

TEST_P(ShopTest, KeepsWhenSomebodyWorks) {
    using namespace std::chrono;
    desk::StaffMember ines{.id = {}, .name = "Ines Varholt", .worker = {}};
    ines.worker.week.emplace();
    ines.worker.week->at(5) = DayHours{10h, 14h};
    ines.worker.daysOff = {2026y / May / 15, 2026y / May / 16};
    ines.id = shop().add(ines);
    auto stored = shop().staff().back();
    ASSERT_TRUE(stored.worker.week);
    EXPECT_EQ(stored.worker.week, ines.worker.week);
    EXPECT_EQ(stored.worker.daysOff, ines.worker.daysOff);
    EXPECT_TRUE(stored.strings);

    stored.worker.week.reset();
    stored.worker.daysOff = {2026y / May / 16};
    stored.strings = false;
    stored.retired = true;
    ASSERT_TRUE(shop().update(stored));
    const auto changed = shop().staff().back();
    EXPECT_FALSE(changed.worker.week);
    EXPECT_EQ(changed.worker.daysOff, stored.worker.daysOff);
    EXPECT_FALSE(changed.strings);
    EXPECT_TRUE(changed.retired);
}

TEST_P(ShopTest, OfTwoWhoChangeTheSameTheSecondIsTold) {
    (void)shop().add(desk::StaffMember{.id = {}, .name = "Ines Varholt", .worker = {}});
    (void)shop().add(desk::Machine{std::nullopt, "Bench C", TensionUnit::Pound, 50, mm(300)});
    auto ines = shop().staff().back();
    auto bench = shop().machines().back();
    ASSERT_TRUE(shop().update(ines));
    ASSERT_TRUE(shop().update(bench));
    ines.name = "Ines V";
    EXPECT_EQ(shop().update(ines).error().code(), Code::ChangedMeanwhile);
    EXPECT_EQ(shop().update(bench).error().text("theirs"), "Bench C");
    ines.id = StaffId::of(999);
    EXPECT_EQ(shop().update(ines).error().code(), Code::NotFound);
}

TEST_P(ShopTest, HasOneCurrency) {
    EXPECT_EQ(shop().currency(), Currency::pounds());
    connection().execute("UPDATE ledger SET currency = 'gb!'");
    EXPECT_THAT(corruptionIn([&] { (void)shop().currency(); }),
                testing::AllOf(HasSubstr("ledger 1"), HasSubstr("currency"), HasSubstr("gb!")));
}

} // namespace rw::sql::test
