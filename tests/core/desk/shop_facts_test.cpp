// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/settings.h"
#include "core/desk/shop_facts.h"
#include "tests/core/desk/demo_fixture.h"

#include <algorithm>

namespace rw::desk::test {
namespace {

class Facts : public DemoEverywhere {
protected:
    ShopFacts facts() { return *read([](Transaction& t) { return shopFacts(t, kNow); }); }
    template<class Rows>
    static bool has(const Rows& rows, std::string_view name) {
        return std::ranges::any_of(rows, [&](const auto& row) { return row.name == name; });
    }
};
IN_MEMORY_AND_ON_BOTH_ENGINES(Facts);

TEST_P(Facts, WhoLeftAndWhatIsRetiredIsNamedButNotOffered) {
    ASSERT_TRUE(write([](Transaction& t) -> Result<void> {
        StaffMember bastian = t.shop().staff()[1];
        bastian.retired = true;
        Machine bench = t.shop().machines().front();
        bench.retired = true;
        StringArticle string = t.strings().all().front();
        string.retired = true;
        const auto retired = t.shop().update(bastian);
        const auto gone = retired ? t.shop().update(bench) : retired;
        return gone ? t.strings().update(string) : gone;
    }));
    const ShopFacts now = facts();
    EXPECT_FALSE(has(now.staff, "Bastian Quill"));
    EXPECT_TRUE(has(now.formerStaff, "Bastian Quill"));
    EXPECT_TRUE(has(now.staff, "Ines Varholt"));
    EXPECT_FALSE(has(now.machines, "Bench A"));
    EXPECT_TRUE(has(now.formerMachines, "Bench A"));
    EXPECT_FALSE(has(now.strings, "Kestrelline 125"));
    EXPECT_TRUE(has(now.formerStrings, "Kestrelline 125"));
    EXPECT_FALSE(now.isNew());
}

TEST_P(Facts, WhatTheShopSaysOfTensionsIsAmongThem) {
    EXPECT_EQ(facts().badmintonCrosses, *CrossesRise::tryParse("2 lb"));
    EXPECT_EQ(facts().aboveMarkedWords, "");
    ASSERT_TRUE(write([](Transaction& t) -> Result<void> {
        t.shop().set(setting::kBadmintonCrosses, "higher");
        t.shop().set(setting::kAboveMarkedWords, "At your own risk.");
        return {};
    }));
    EXPECT_TRUE(facts().badmintonCrosses.isNone()) << "what is stored unreadably counts as not set";
    EXPECT_EQ(facts().aboveMarkedWords, "At your own risk.");
    EXPECT_EQ(facts().hours.week[0], (DayHours{std::chrono::hours(10), std::chrono::hours(18)}));
}

} // namespace
} // namespace rw::desk::test
