// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/ledger_address.h"

#include "core/base/world_error.h"
#include "core/desk/unit_of_work.h"
#include "core/sql/migration.h"
#include "tests/sql/engines.h"
#include "tests/sql/ledgers.h"

#include <thread>
#include <vector>

namespace rw::sql::test {

class OpenLedgerTest : public OnEngine {};
ON_BOTH_ENGINES(OpenLedgerTest);

TEST_P(OpenLedgerTest, MakesALedgerWhereNoneIsAndFindsItAgain) {
    {
        const auto ledger = mustOpen(place().address());
        EXPECT_TRUE(ledger->check().empty());
        const auto work = ledger->begin(desk::Access::Write);
        EXPECT_EQ(work->shop().currency(), Currency::pounds());
        work->shop().set("words", "stay");
        work->commit();
    }
    const auto ledger = mustOpen(place().address(), IfMissing::Refuse);
    const auto work = ledger->begin(desk::Access::Read);
    EXPECT_EQ(work->shop().setting("words"), "stay");
}

TEST_P(OpenLedgerTest, TheCurrencyIsChosenBeforeThereIsMoneyAndNeverAfter) {
    const auto ledger = mustOpen(place().address());
    const Currency franc = *Currency::fromCode("CHF");
    {
        const auto work = ledger->begin(desk::Access::Write);
        ASSERT_TRUE(work->shop().setCurrency(franc));
        EXPECT_EQ(work->shop().currency(), franc);
        work->priceLists().add({.id = 0,
                                .validFrom = std::chrono::year(2026) / 3 / 12,
                                .currency = franc,
                                .taxRule = TaxRule::Included,
                                .lines = {}});
        work->commit();
    }
    EXPECT_TRUE(ledger->check().empty());
    const auto work = ledger->begin(desk::Access::Write);
    const auto refused = work->shop().setCurrency(Currency::pounds());
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error(), Refusal(Code::CurrencyMismatch, {{"left", "GBP"}, {"right", "CHF"}}));
    EXPECT_EQ(work->shop().currency(), franc);
}

TEST_P(OpenLedgerTest, RefusesWhereNoneIsWhenAskedTo) {
    EXPECT_EQ(refusalOf(place().address(), IfMissing::Refuse), Code::LedgerUnreachable);
}

TEST_P(OpenLedgerTest, RefusesANewerOneWithBothNumbers) {
    (void)mustOpen(place().address());
    {
        const auto connection = place().connect();
        connection->execute("INSERT INTO schema_version (version, name, applied_at) VALUES (4711, 'later', 1)");
    }
    const auto refused = openLedger(*LedgerAddress::parse(place().address()));
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().code(), Code::LedgerNewer);
    EXPECT_EQ(refused.error().number("found"), 4711);
    EXPECT_EQ(refused.error().number("known"), latestVersion());
}

TEST_P(OpenLedgerTest, AnOpenLedgerStopsWhenANewerProgramChangesTheSchema) {
    const auto ledger = mustOpen(place().address());
    place().connect()->execute("INSERT INTO schema_version (version, name, applied_at) VALUES (4711, 'later', 1)");
    EXPECT_THROW((void)ledger->begin(desk::Access::Write), LedgerLost);
    EXPECT_THROW((void)ledger->begin(desk::Access::Read), LedgerLost);
}

TEST_P(OpenLedgerTest, TwoWhoMakeItAtOnceOpenTheSameOne) {
    constexpr int kStations = 4;
    const std::string address = place().address();
    std::vector<std::string> errors(kStations);
    {
        std::vector<std::jthread> stations;
        stations.reserve(kStations);
        for (int station = 0; station < kStations; ++station) {
            stations.emplace_back([&, station] {
                try {
                    auto ledger = openLedger(*LedgerAddress::parse(address));
                    if (!ledger) {
                        errors[static_cast<std::size_t>(station)] = ledger.error().text("reason");
                        return;
                    }
                    const auto done = desk::inTransaction(**ledger, desk::Access::Write, [&](desk::Transaction& work) {
                        work.shop().add(desk::StaffMember{std::nullopt, "station " + std::to_string(station)});
                        return Result<void>();
                    });
                    (void)done;
                } catch (const std::exception& error) {
                    errors[static_cast<std::size_t>(station)] = error.what();
                }
            });
        }
    }
    for (const auto& error : errors) {
        EXPECT_EQ(error, "");
    }
    const auto ledger = mustOpen(place().address());
    EXPECT_EQ(ledger->begin(desk::Access::Read)->shop().staff().size(), kStations);
    EXPECT_TRUE(ledger->check().empty());
}

TEST_P(OpenLedgerTest, CountsWhatOthersChangeAndNotWhatItChangesItself) {
    const auto mine = mustOpen(place().address());
    const auto theirs = mustOpen(place().address());
    const auto before = mine->changeCount();
    const auto set = [](desk::Ledger& ledger, std::string_view value) {
        const auto work = ledger.begin(desk::Access::Write);
        work->shop().set("words", value);
        work->commit();
    };
    set(*mine, "mine");
    EXPECT_EQ(mine->changeCount(), before);
    set(*theirs, "theirs");
    const auto after = mine->changeCount();
    EXPECT_GT(after, before);
    EXPECT_EQ(mine->changeCount(), after);
    (void)theirs->begin(desk::Access::Read)->shop().setting("words");
    EXPECT_EQ(mine->changeCount(), after) << "reading is no change";
}

} // namespace rw::sql::test
