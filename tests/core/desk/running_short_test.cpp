// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/asked_for_none.h"
#include "core/desk/running_short.h"
#include "core/desk/settings.h"
#include "tests/core/desk/demo_fixture.h"

#include <cmath>

// What the ledger's days say of each string.
namespace rw::desk::test {
namespace {

using std::chrono::days;
using std::chrono::hours;

constexpr Instant kToday = std::chrono::sys_days(std::chrono::year(2026) / 3 / 12) + hours(11);

/// A shop of nothing but strings and the days on which they were wanted.
class Days : public ::testing::Test {
protected:
    StringArticleId string(std::string_view code) {
        StringArticle article;
        article.code = code;
        article.name = code;
        return *inTransaction(ledger, Access::Write,
                              [&](Transaction& t) -> Result<StringArticleId> { return t.strings().add(article); });
    }
    void wanted(StringArticleId article, Instant at) {
        ledger.rows.askedForNone.push_back(
            {std::to_string(ledger.rows.askedForNone.size()), article, {StaffId::of(1), "counter", at}});
    }
    void wantedDaysAgo(StringArticleId article, std::initializer_list<int> ago) {
        for (const int day : ago) {
            wanted(article, kToday - days(day));
        }
    }
    void reel(StringArticleId article, std::string_view tag, double m, Instant received) {
        ledger.rows.lots.push_back({.id = ledger.rows.next<LotId>(),
                                    .tag = std::string(tag),
                                    .article = article,
                                    .owner = std::nullopt,
                                    .nominal = metres(200),
                                    .length = metres(m),
                                    .price = pounds(11000),
                                    .shipping = pounds(0),
                                    .batch = {},
                                    .received = received,
                                    .closed = std::nullopt});
    }
    void set(std::string_view name, std::string_view value) { ledger.rows.settings[std::string(name)] = value; }
    std::vector<ShelfString> strings() {
        const auto found = inTransaction(ledger, Access::Read, [](Transaction& t) { return shelfAhead(t, kToday); });
        EXPECT_TRUE(found);
        return *found;
    }
    ShelfString onShelf(std::string_view code) {
        const auto all = strings();
        return *std::ranges::find(all, code, [](const ShelfString& s) { return s.article.code; });
    }

    FakeLedger ledger;
};

const double kFading = std::exp2(-1.0 / 90);

/// The days of `length` days in all as they are remembered: a geometric sum.
double remembered(int length) { return (1 - std::pow(kFading, length)) / (1 - kFading); }

// The stock model's closed form: a = 0.5 + A and b = 0.5 / pooled rate + B, where a day counts half after 90 days.
TEST_F(Days, TheRateIsThatOfTheDaysFromTheFirstOneOn) {
    const auto k = string("K");
    wantedDaysAgo(k, {40, 20, 20, 1});
    const double a = 0.5 + std::pow(kFading, 39) + 2 * std::pow(kFading, 19) + 1;
    const double b = 0.5 / (4.0 / 40) + remembered(40);
    EXPECT_NEAR(onShelf("K").ahead->jobsPerDay, a / b, 1e-12);
}

TEST_F(Days, AStringsDaysBeginWithItsFirstReel) {
    const auto k = string("K");
    wantedDaysAgo(k, {10});
    reel(k, "K-1", 100, kToday - days(60));
    EXPECT_NEAR(onShelf("K").ahead->jobsPerDay, (0.5 + std::pow(kFading, 9)) / (0.5 / (1.0 / 60) + remembered(60)),
                1e-12);
}

TEST_F(Days, TodayIsNotCountedYet) {
    const auto k = string("K");
    wantedDaysAgo(k, {30, 12});
    const double before = onShelf("K").ahead->jobsPerDay;
    wantedDaysAgo(k, {0, 0});
    EXPECT_DOUBLE_EQ(onShelf("K").ahead->jobsPerDay, before);
}

TEST_F(Days, ADayIsADayOfTheShop) {
    set(setting::kTimeZone, "Pacific/Auckland"); // thirteen hours before UTC in March: there it is midnight just now
    const auto k = string("K");
    wantedDaysAgo(k, {20});
    wanted(k, kToday - hours(23)); // of the day before in UTC, of yesterday there
    const double a = 0.5 + std::pow(kFading, 19) + 1;
    EXPECT_NEAR(onShelf("K").ahead->jobsPerDay, a / (0.5 / (2.0 / 20) + remembered(20)), 1e-12);
}

TEST_F(Days, AStringThatNobodyEverWantedIsOnRequest) {
    string("N");
    wantedDaysAgo(string("K"), {30, 12});
    const ShelfString n = onShelf("N");
    EXPECT_TRUE(n.ahead->onRequest);
    EXPECT_FALSE(n.runningShort()) << "nobody is nagged about it";
    EXPECT_FALSE(onShelf("K").ahead->onRequest);
    EXPECT_TRUE(onShelf("K").runningShort());
    wanted(n.article.id.value(), kToday - hours(1));
    EXPECT_FALSE(onShelf("N").ahead->onRequest) << "wanted today is wanted";
}

TEST_F(Days, BeforeTheFirstDayTheFewestThatTheShopWantsSpeakAlone) {
    const auto k = string("K");
    const ShelfString nothing = onShelf("K");
    EXPECT_FALSE(nothing.ahead->isKnown());
    EXPECT_FALSE(nothing.ahead->onRequest);
    EXPECT_TRUE(nothing.runningShort());
    reel(k, "K-1", 100, kToday);
    EXPECT_FALSE(onShelf("K").runningShort());
}

TEST_F(Days, ItRunsShortAtTheOrderPointAndNotBefore) {
    const auto k = string("K");
    wantedDaysAgo(k, {60, 50, 40, 30, 20, 10, 1});
    const ShelfString none = onShelf("K");
    const double perJob = none.perJob.metres();
    ASSERT_GT(none.ahead->s, 2) << "above the fewest that the shop wants anyway";
    reel(k, "K-1", perJob * (none.ahead->s + 0.5), kToday - days(60));
    const ShelfString at = onShelf("K");
    EXPECT_EQ(at.ahead->jobsLeft, at.ahead->s);
    EXPECT_TRUE(at.runningShort());
    EXPECT_LE(at.ahead->chanceOfNone, 0.02 + 1e-9);
    ledger.rows.lots.back().length = metres(perJob * (none.ahead->s + 1.5));
    EXPECT_FALSE(onShelf("K").runningShort());
    ledger.rows.lots.back().length = metres(perJob * (none.ahead->s - 0.5));
    EXPECT_GT(onShelf("K").ahead->chanceOfNone, 0.02);
}

TEST_F(Days, TheFewestThatTheShopAlwaysWantsAreAFloor) {
    const auto k = string("K");
    wantedDaysAgo(k, {400});
    const double perJob = onShelf("K").perJob.metres();
    reel(k, "K-1", perJob * 4.5, kToday - days(500));
    EXPECT_FALSE(onShelf("K").runningShort());
    set(setting::kRunningShortJobs, "5");
    EXPECT_TRUE(onShelf("K").runningShort());
}

TEST_F(Days, AStringThatEarnsLessThanItCostsToKeepIsOnRequest) {
    const auto k = string("K");
    wantedDaysAgo(k, {300, 200});
    wantedDaysAgo(string("L"), {300, 200, 100});
    reel(k, "K-1", 200, kToday - days(300));
    PriceList list{
        .id = 1, .validFrom = CivilDate{std::chrono::year(2020) / 1 / 1}, .currency = Currency::pounds(), .lines = {}};
    const auto costs = [&](std::int64_t pence) {
        list.lines = {{.kind = ChargeKind::FullBed,
                       .sport = std::nullopt,
                       .method = std::nullopt,
                       .article = k,
                       .label = {},
                       .amount = pounds(pence)}};
        ledger.rows.priceLists = {list};
    };
    // Keeping a reel of 110.00 costs 22.00 a year. Some two jobs a year, of about 6 worth of string each:
    costs(1000);
    EXPECT_TRUE(onShelf("K").ahead->onRequest) << "4 a job do not pay for that";
    costs(4000);
    EXPECT_FALSE(onShelf("K").ahead->onRequest) << "34 a job do";
    ledger.rows.lots.back().price = pounds(0);
    costs(1000);
    EXPECT_FALSE(onShelf("K").ahead->onRequest) << "nobody knows what the reel cost";
}

TEST_F(Days, WhatRunsShortStandsFirstTheSoonestBeforeTheOthers) {
    const auto a = string("A");
    const auto b = string("B");
    const auto c = string("C");
    string("D");
    wantedDaysAgo(a, {90, 60, 30});
    wantedDaysAgo(b, {90, 60, 30});
    wantedDaysAgo(c, {90, 60, 30, 20, 10, 9, 8, 7, 6, 5, 4, 3, 2, 1});
    reel(a, "A-1", 200, kToday - days(90));
    reel(b, "B-1", 20, kToday - days(90));
    std::string order;
    for (const ShelfString& string : strings()) {
        order += string.article.code + (string.runningShort() ? "!" : "");
    }
    EXPECT_EQ(order, "C!B!AD");
}

TEST_F(Days, TheCourseEndsWhereItRunsOut) {
    const auto k = string("K");
    wantedDaysAgo(k, {30, 25, 20, 15, 10, 5});
    reel(k, "K-1", onShelf("K").perJob.metres() * 3.5, kToday - days(30));
    const StringAhead ahead = *onShelf("K").ahead;
    const std::vector<stock::StockStep> course = ahead.course();
    ASSERT_EQ(course.size(), 4U);
    EXPECT_EQ(course.front().left, 2);
    EXPECT_EQ(course.back().left, -1);
    const auto day = [](double later) {
        return CivilDate(std::chrono::floor<days>(kToday) + days(static_cast<int>(later)));
    };
    EXPECT_EQ(ahead.runOut.p10, day(course.back().early));
    EXPECT_EQ(ahead.runOut.p50, day(course.back().likely));
    EXPECT_EQ(ahead.runOut.p90, day(course.back().late));
    for (std::size_t i = 1; i < course.size(); ++i) {
        EXPECT_GT(course[i].early, course[i - 1].early);
        EXPECT_LT(course[i].early, course[i].likely);
        EXPECT_LT(course[i].likely, course[i].late);
    }
}

/// The demo shop, in which jobs were strung: both engines must tell the days as the rows have them.
class Ahead : public DemoEverywhere {
protected:
    std::vector<ShelfString> strings() {
        return *read([](Transaction& t) { return shelfAhead(t, kNow); });
    }
    double jobsOf(std::string_view code, Instant since = kNow - days(3650)) {
        const auto id = *string(code).id;
        double halfBeds = 0;
        for (const StringWish& wish : look([&](Transaction& t) { return t.supply().wishes(since); })) {
            halfBeds += wish.article == id ? wish.halfBeds : 0;
        }
        return halfBeds / 2;
    }
};
IN_MEMORY_AND_ON_BOTH_ENGINES(Ahead);

TEST_P(Ahead, EveryKeepingTellsTheSame) {
    FakeLedger fake;
    fake.rows = stockedRows();
    const auto expected = inTransaction(fake, Access::Read, [](Transaction& t) { return shelfAhead(t, kNow); });
    const auto found = strings();
    ASSERT_EQ(found.size(), expected->size());
    for (std::size_t i = 0; i < found.size(); ++i) {
        EXPECT_EQ(found[i].article.code, (*expected)[i].article.code);
        EXPECT_EQ(found[i].runningShort(), (*expected)[i].runningShort());
        EXPECT_DOUBLE_EQ(found[i].ahead->jobsPerDay, (*expected)[i].ahead->jobsPerDay);
        EXPECT_EQ(found[i].ahead->s, (*expected)[i].ahead->s);
        EXPECT_EQ(found[i].ahead->runOut, (*expected)[i].ahead->runOut);
        EXPECT_FALSE(found[i].ahead->onRequest);
    }
    EXPECT_EQ(found.front().article.code, "L") << "it has one job left";
    EXPECT_TRUE(found.front().runningShort());
}

TEST_P(Ahead, AHalfBedIsHalfAJobAndWhatWasWithdrawnIsNone) {
    const double k = jobsOf("K");
    const double l = jobsOf("L");
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    const Job hybrid = logged(racket, draftFor(racket, "K", "L", "52", "50"), "hybrid");
    EXPECT_DOUBLE_EQ(jobsOf("K"), k + 0.5);
    EXPECT_DOUBLE_EQ(jobsOf("L"), l + 0.5);
    const JobEvent withdrawn{std::nullopt,  *hybrid.id,   JobEventKind::Withdrawn,
                             by("counter"), std::nullopt, std::nullopt};
    ASSERT_TRUE(write([&](Transaction& t) -> Result<JobEventId> { return t.jobs().record(withdrawn); }));
    EXPECT_DOUBLE_EQ(jobsOf("K"), k);
    IntakeDraft own = draftFor(racket, "K", "K", "52", "50");
    own.mains.source = PieceSource::CustomersSet;
    logged(racket, own, "own set");
    EXPECT_DOUBLE_EQ(jobsOf("K"), k) << "a customer's own string is none of the shop's";
    EXPECT_DOUBLE_EQ(jobsOf("K", kNow + days(1)), 0);
}

TEST_P(Ahead, WhatWasAskedForInVainIsWantedOnce) {
    const AskedForNone asked{" in vain ", *string("T").id, by("counter")};
    const auto ask = [&](const AskedForNone& again) {
        return write([&](Transaction& t) { return askedForNone(t, again); });
    };
    const double before = jobsOf("T");
    ASSERT_TRUE(ask(asked));
    EXPECT_EQ(ask(asked)->code, "T");
    EXPECT_DOUBLE_EQ(jobsOf("T"), before + 1) << "pressed twice it is asked for once";
    EXPECT_EQ(refusalOf(ask({"in vain", *string("K").id, by("counter")})), Code::ChangedMeanwhile);
    EXPECT_EQ(refusalOf(ask({"", *string("K").id, by("counter")})), Code::Missing);
    EXPECT_EQ(refusalOf(ask({"new", StringArticleId::of(999'999), by("counter")})), Code::NotFound);
    ASSERT_TRUE(ask({"another", *string("T").id, by("counter")}));
    EXPECT_DOUBLE_EQ(jobsOf("T"), before + 2);
}

TEST_P(Ahead, TheNewestLotSaysWhatAReelCostsAndWhoSendsIt) {
    const auto supplyOf = [&](std::string_view code) {
        const auto all = look([](Transaction& t) { return t.supply().lastSupplies(); });
        return *std::ranges::find(all, *string(code).id, &LastSupply::article);
    };
    EXPECT_EQ(supplyOf("K").nominal, metres(200));
    EXPECT_EQ(supplyOf("K").landedCost(), pounds(11450)) << "K-4 came last";
    ReceiveDelivery parcel{.requestKey = "parcel",
                           .supplier = "Calder & Finch",
                           .lines = {{.article = *string("K").id, .nominal = metres(100), .priceEach = pounds(6000)},
                                     {.article = *string("T").id, .nominal = metres(100), .priceEach = pounds(3000)}},
                           .shipping = pounds(900),
                           .by = by("stockroom")};
    ASSERT_TRUE(write([&](Transaction& t) { return receiveDelivery(t, parcel); }));
    ASSERT_TRUE(receive(delivery("K", "Petra 1", metres(22), personCalled("Lindobi").customer.id)));
    const LastSupply k = supplyOf("K");
    EXPECT_EQ(k.supplier, "Calder & Finch");
    EXPECT_EQ(k.nominal, metres(100));
    EXPECT_EQ(k.price, pounds(6000));
    EXPECT_EQ(k.shipping, pounds(600));
    EXPECT_EQ(k.parcelShipping, pounds(900));
}

} // namespace
} // namespace rw::desk::test
