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

TEST_P(ShopTest, HasOneCurrency) {
    EXPECT_EQ(shop().currency(), Currency::pounds());
    connection().execute("UPDATE ledger SET currency = 'gb!'");
    EXPECT_THAT(corruptionIn([&] { (void)shop().currency(); }),
                testing::AllOf(HasSubstr("ledger 1"), HasSubstr("currency"), HasSubstr("gb!")));
}

} // namespace rw::sql::test
