// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/desk/demo_fixture.h"

// The demo shop must hold its numbers on whatever day it is stocked.
namespace rw::desk::test {
namespace {

using std::chrono::sys_days;

class StockedOn : public ::testing::TestWithParam<Instant> {
protected:
    Result<void> stock() {
        return inTransaction(ledger, Access::Write, [](Transaction& t) { return stockDemoShop(t, GetParam()); });
    }
    Length left(std::string_view tag) { return ledger.begin(Access::Read)->lots().byTag(tag).value().length; }

    FakeLedger ledger;
};

constexpr Instant on(int year, unsigned month, unsigned day, int hour) {
    return sys_days(std::chrono::year(year) / std::chrono::month(month) / std::chrono::day(day)) +
           std::chrono::hours(hour);
}

INSTANTIATE_TEST_SUITE_P(AnyDay, StockedOn,
                         testing::Values(on(2026, 3, 12, 11),  // a Thursday morning
                                         on(2026, 11, 25, 23), // at night
                                         on(2026, 8, 2, 3),    // a Sunday before dawn, in summer time
                                         on(2027, 1, 20, 12),  // on a twentieth
                                         on(2027, 1, 29, 9),   // nine days after one
                                         on(2027, 2, 27, 12),  // on which the other jobs begin on one
                                         on(2028, 2, 29, 17)));

TEST_P(StockedOn, TheReelsHoldWhatTheStoriesSay) {
    ASSERT_TRUE(stock());
    EXPECT_EQ(left("L-3"), metres(48.7));
    EXPECT_EQ(left("K-2"), metres(6.4));
    EXPECT_EQ(left("K-4"), metres(200));
    EXPECT_EQ(left("K-7"), metres(60));
    EXPECT_EQ(left("T-1"), metres(27.6));
    EXPECT_EQ(left("L-2"), metres(0));
    const auto transaction = ledger.begin(Access::Read);
    const auto k2 = transaction->lots().byTag("K-2");
    EXPECT_TRUE(k2->measuredSinceLastCut);
    EXPECT_TRUE(transaction->lots().byTag("K-4")->sealed);
    Length onL3 = Length::fromMillimetres(0);
    Length onK7 = Length::fromMillimetres(0);
    for (const PlannedCut& planned : transaction->lots().plannedCuts()) {
        onL3 += planned.lot == transaction->lots().byTag("L-3")->id ? planned.length : metres(0);
        onK7 += planned.lot == transaction->lots().byTag("K-7")->id ? planned.length : metres(0);
    }
    EXPECT_EQ(onL3, metres(32.4));
    EXPECT_EQ(onK7, metres(56));
    EXPECT_TRUE(ledger.check().empty());
}

TEST_P(StockedOn, EverythingHappenedBeforeAndInItsOrder) {
    ASSERT_TRUE(stock());
    Instant last = Instant::min();
    for (const JobEvent& event : ledger.rows.events) {
        EXPECT_LT(event.by.at, GetParam());
        EXPECT_GE(event.by.at + std::chrono::minutes(30), last) << "two benches work side by side, no more";
        last = std::max(last, event.by.at);
    }
    for (const Job& job : ledger.rows.jobs) {
        EXPECT_TRUE(!job.strung || job.strung->by.at > job.logged);
    }
    const auto transaction = ledger.begin(Access::Read);
    for (const JobLine& line : transaction->jobs().inStates({JobState::Logged, JobState::OnTheMachine})) {
        EXPECT_GT(line.promised.value(), GetParam());
    }
    EXPECT_EQ(transaction->jobs().inStates({JobState::Strung}).size(), 4U);
    EXPECT_EQ(transaction->jobs().inStates({JobState::OnTheMachine}).size(), 1U);
    EXPECT_EQ(transaction->jobs().get(*transaction->jobs().byNumber(2120))->state, JobState::Logged);
}

TEST_P(StockedOn, ALedgerWithAnythingInItIsLeftAlone) {
    ASSERT_TRUE(inTransaction(ledger, Access::Write, [](Transaction& t) {
        return addCustomer(t, {"a form", Customer{std::nullopt, "Somebody", {}}});
    }));
    EXPECT_EQ(refusalOf(stock()), Code::ImpossibleValue);
    EXPECT_TRUE(ledger.rows.lots.empty());
}

} // namespace
} // namespace rw::desk::test
