// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/price_lists.h"

#include "core/desk/sold_string.h"
#include "tests/core/desk/demo_fixture.h"

#include <algorithm>

// The shop's price lists: a new one from a day on, its lines, and what nobody may do to them.
namespace rw::desk::test {
namespace {
using namespace std::chrono_literals;

constexpr CivilDate kToday = 2026y / 3 / 12;
constexpr CivilDate kTomorrow = 2026y / 3 / 13;
constexpr Instant kNextDay = kNow + 24h;

class PriceLists : public DemoEverywhere {
protected:
    std::vector<DatedPrices> dated(Instant now = kNow) {
        return read([&](Transaction& t) { return datedPrices(t, now); }).value();
    }
    PriceList inForce(Instant now = kNow) {
        const auto all = dated(now);
        return std::ranges::find(all, Holds::Now, &DatedPrices::holds)->list;
    }
    PriceList toBegin(CivilDate from) {
        return read([&](Transaction& t) { return pricesToBegin(t, from); }).value();
    }
    Result<PriceList> add(const PriceList& list) {
        return write([&](Transaction& t) { return addPriceList(t, list, kNow); });
    }
    Result<PriceList> change(const PriceList& before, const PriceList& wanted, Instant now = kNow) {
        return write([&](Transaction& t) { return changePriceList(t, before, wanted, now); });
    }
    Result<void> drop(const PriceList& list, Instant now = kNow) {
        return write([&](Transaction& t) { return dropPriceList(t, list, now); });
    }
    static PriceLine lineOf(ChargeKind kind, Money amount, std::string label = {},
                            std::optional<Sport> sport = std::nullopt) {
        return {.kind = kind,
                .sport = sport,
                .method = std::nullopt,
                .article = std::nullopt,
                .label = std::move(label),
                .amount = amount};
    }
    static void setAll(PriceList& list, ChargeKind kind, Money amount) {
        for (PriceLine& line : list.lines) {
            if (line.kind == kind) {
                line.amount = amount;
            }
        }
    }
    static PriceList withLabour(PriceList list, std::int64_t pence) {
        setAll(list, ChargeKind::Labour, pounds(pence));
        return list;
    }
    Money priceOn(Instant now) {
        const IntakeDraft draft = draftFor(racketOf("Lindobi", "Aldermoor 98", "A"), "K", "K", "52", "52");
        return read([&](Transaction& t) { return previewIntake(t, draft, now); })->quote.total;
    }
};
IN_MEMORY_AND_ON_BOTH_ENGINES(PriceLists);

TEST_P(PriceLists, ANewOneHoldsFromItsDay) {
    const PriceList old = inForce();
    const Money before = priceOn(kNow);
    const PriceList next = withLabour(toBegin(kTomorrow), 15'50);
    EXPECT_EQ(next.lines.size(), old.lines.size()) << "it starts as a copy";
    const auto added = add(next);
    ASSERT_TRUE(added);
    EXPECT_NE(added->id, old.id);
    EXPECT_EQ(priceOn(kNow), before);
    EXPECT_EQ(priceOn(kNextDay), before + pounds(15'50) - pounds(14'00));
    ASSERT_EQ(dated().size(), 2U);
    EXPECT_EQ(dated()[0].holds, Holds::Later);
    EXPECT_EQ(dated()[1].holds, Holds::Now);
    EXPECT_EQ(dated(kNextDay)[0].holds, Holds::Now);
    EXPECT_EQ(dated(kNextDay)[1].holds, Holds::Past);
    EXPECT_EQ(inForce(), old);
}

TEST_P(PriceLists, AJobKeepsWhatItWasQuoted) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    const Job job = logged(racket, draftFor(racket, "K", "K", "52", "52"), "quoted");
    ASSERT_TRUE(change(inForce(), withLabour(inForce(), 99'00)));
    const auto after = look([&](Transaction& t) { return t.jobs().get(*job.id); });
    EXPECT_EQ(after->total, job.total);
    EXPECT_EQ(priceOn(kNow), job.total + pounds(99'00) - pounds(14'00));
}

TEST_P(PriceLists, TheOneInForceIsLeftAsItWasForThePast) {
    const PriceList old = inForce();
    ASSERT_LT(old.validFrom, kToday);
    const auto changed = change(old, withLabour(old, 15'00));
    ASSERT_TRUE(changed);
    EXPECT_EQ(changed->validFrom, kToday);
    EXPECT_EQ(inForce(), *changed);
    EXPECT_EQ(dated().back().list, old);
    EXPECT_EQ(dated().back().holds, Holds::Past);
    const auto again = change(*changed, withLabour(*changed, 16'00));
    ASSERT_TRUE(again) << "what begins today is changed in its place";
    EXPECT_EQ(again->id, changed->id);
    EXPECT_EQ(dated().size(), 2U);
    EXPECT_EQ(refusalOf(change(old, withLabour(old, 1'00))), Code::ChangedMeanwhile) << "it holds no more";
}

TEST_P(PriceLists, ItsTaxIsIncludedOrAdded) {
    PriceList taxed = toBegin(kTomorrow);
    taxed.taxRule = TaxRule::Added;
    for (PriceLine& line : taxed.lines) {
        line.taxHundredthsPercent = 20'00;
    }
    const auto added = add(taxed);
    ASSERT_TRUE(added);
    EXPECT_EQ(added->taxRule, TaxRule::Added);
    EXPECT_EQ(priceOn(kNextDay).minor(), priceOn(kNow).minor() * 120 / 100);
    PriceList included = *added;
    included.taxRule = TaxRule::Included;
    ASSERT_TRUE(change(*added, included));
    EXPECT_EQ(priceOn(kNextDay), priceOn(kNow));
}

TEST_P(PriceLists, OfTwoThatChangeOneTheSecondIsTold) {
    const PriceList seen = add(withLabour(toBegin(kTomorrow), 15'00)).value();
    ASSERT_TRUE(change(seen, withLabour(seen, 16'00)));
    const auto second = change(seen, withLabour(seen, 17'00));
    ASSERT_FALSE(second);
    EXPECT_EQ(second.error().code(), Code::ChangedMeanwhile);
    EXPECT_EQ(second.error().text("what"), "price list");
    EXPECT_EQ(refusalOf(drop(seen)), Code::ChangedMeanwhile);
    EXPECT_EQ(dated().front().list.lines, withLabour(seen, 16'00).lines);
}

TEST_P(PriceLists, TheSameOneSentAgainIsGivenBack) {
    const PriceList next = withLabour(toBegin(kTomorrow), 15'00);
    const auto once = add(next);
    const auto twice = add(next);
    ASSERT_TRUE(once && twice);
    EXPECT_EQ(*once, *twice);
    EXPECT_EQ(dated().size(), 2U);
    const auto other = add(withLabour(next, 16'00));
    ASSERT_FALSE(other);
    EXPECT_EQ(other.error().text("key"), "date");
}

TEST_P(PriceLists, OneThatDoesNotHoldYetIsTakenBack) {
    const PriceList next = add(toBegin(kTomorrow)).value();
    EXPECT_EQ(drop(inForce()).error().text("key"), "date");
    EXPECT_EQ(drop(next, kNextDay).error().text("key"), "date") << "it holds now";
    ASSERT_TRUE(drop(next));
    EXPECT_EQ(dated().size(), 1U);
}

TEST_P(PriceLists, WhatCannotBeIsRefusedAndNothingIsKept) {
    const auto refusal = [&](auto spoil) {
        PriceList list = toBegin(kTomorrow);
        spoil(list);
        const auto added = add(list);
        EXPECT_FALSE(added);
        return added ? Refusal(Code::NotFound) : added.error();
    };
    const auto without = [](ChargeKind kind) {
        return [kind](PriceList& list) {
            std::erase_if(list.lines, [&](const PriceLine& line) { return line.kind == kind; });
        };
    };
    for (const ChargeKind kind : {ChargeKind::Labour, ChargeKind::OwnStringLabour, ChargeKind::Rush}) {
        const Refusal missing = refusal(without(kind));
        EXPECT_EQ(missing.code(), Code::Missing);
        EXPECT_EQ(missing.text("kind"), chargeKindText(kind));
    }
    const Refusal squash = refusal([](PriceList& list) { list.lines.front().sport = Sport::Tennis; });
    EXPECT_EQ(squash.text("sport"), "squash") << "labour for tennis alone leaves the others without";
    EXPECT_EQ(refusal(without(ChargeKind::FullBed)).text("string"), "Kestrelline 125");
    EXPECT_EQ(refusal([](PriceList& l) { l.lines[0].amount = pounds(-1); }).text("key"), "amount");
    EXPECT_EQ(refusal([](PriceList& l) { l.lines[0].cost = pounds(1); }).text("key"), "line") << "labour has no cost";
    EXPECT_EQ(refusal([](PriceList& l) {
                  l.lines.push_back(lineOf(ChargeKind::Extra, pounds(1), "stencil"));
                  l.lines.back().cost = pounds(-1);
              }).text("key"),
              "cost");
    EXPECT_EQ(refusal([](PriceList& l) { l.lines[0].amount = Money::zero(*Currency::fromCode("EUR")); }).code(),
              Code::CurrencyMismatch);
    EXPECT_EQ(refusal([](PriceList& l) { l.lines[0].taxHundredthsPercent = 10'001; }).text("what"), "tax");
    EXPECT_EQ(refusal([](PriceList& l) { l.lines[0].taxHundredthsPercent = -1; }).text("what"), "tax");
    EXPECT_EQ(refusal([](PriceList& l) { l.lines.push_back(l.lines[0]); }).text("key"), "line");
    EXPECT_EQ(refusal([](PriceList& l) { l.lines[0].label = "neat"; }).code(), Code::TooLong);
    EXPECT_EQ(refusal([&](PriceList& l) { l.lines[0].article = string("K").id; }).text("key"), "line");
    EXPECT_EQ(refusal([](PriceList& l) { l.lines.push_back(lineOf(ChargeKind::Discount, pounds(1))); }).text("key"),
              "line");
    EXPECT_EQ(refusal([](PriceList& l) { l.lines.push_back(lineOf(ChargeKind::Extra, pounds(1), " ")); }).text("what"),
              "extra");
    EXPECT_EQ(refusal([](PriceList& l) {
                  l.lines.push_back(lineOf(ChargeKind::FullBed, pounds(1)));
                  l.lines.back().article = StringArticleId::of(999'999);
              }).code(),
              Code::NotFound);
    EXPECT_EQ(refusal([](PriceList& l) { l.validFrom = 2026y / 3 / 11; }).text("key"), "date") << "yesterday";
    EXPECT_EQ(dated().size(), 1U);
}

TEST_P(PriceLists, AStringIsSoldByTheBedAndByThePacket) {
    const auto kestrelline = *string("K").id;
    PriceList list = toBegin(kTomorrow);
    StringPrices prices = pricesOf(list, kestrelline);
    EXPECT_EQ(prices.fullBed, pounds(13'00));
    EXPECT_EQ(prices.halfBed, pounds(6'50));
    EXPECT_FALSE(prices.packet);
    prices = {pounds(13'01), std::nullopt, pounds(15'00), 20'00};
    setPricesOf(list, kestrelline, prices);
    ASSERT_TRUE(add(list));
    const StringPrices kept = pricesOf(inForce(kNextDay), kestrelline);
    EXPECT_EQ(kept, (StringPrices{pounds(13'01), pounds(6'51), pounds(15'00), 20'00})) << "half of it, half a penny up";
    setPricesOf(list, kestrelline, {std::nullopt, std::nullopt, pounds(15'00), 0});
    EXPECT_EQ(pricesOf(list, kestrelline), (StringPrices{std::nullopt, std::nullopt, pounds(15'00), 0}));
}

TEST_P(PriceLists, AnExtraGetsItsNameAndASportItsLabour) {
    PriceList list = toBegin(kTomorrow);
    putLine(list, lineOf(ChargeKind::Extra, pounds(2'00), "  stencil "));
    putLine(list, lineOf(ChargeKind::Labour, pounds(12'00), {}, Sport::Squash));
    const auto added = add(list);
    ASSERT_TRUE(added);
    EXPECT_EQ(added->lines[1].sport, Sport::Squash) << "beside the labour of the others";
    EXPECT_NE(added->find(ChargeKind::Extra, Sport::Tennis, Method::TwoPiece, std::nullopt, "stencil"), nullptr);
    PriceList dearer = *added;
    putLine(dearer, lineOf(ChargeKind::Labour, pounds(13'00), {}, Sport::Squash), added->lines[1]);
    EXPECT_EQ(dearer.lines.size(), added->lines.size());
    EXPECT_EQ(dearer.lines[1].amount, pounds(13'00));
}

TEST_P(PriceLists, AStringThatIsAddedTodayIsOnTheListOfTomorrowToo) {
    ASSERT_TRUE(add(toBegin(kTomorrow)));
    SoldString millrace;
    millrace.article.code = "M";
    millrace.article.name = "Millrace 127";
    millrace.article.diameterMicrometres = 1270;
    millrace.fullBed = pounds(11'00);
    const auto added = write([&](Transaction& t) { return addString(t, millrace, kNow); });
    ASSERT_TRUE(added);
    EXPECT_EQ(pricesOf(inForce(kNextDay), *added->id).fullBed, pounds(11'00));
    EXPECT_EQ(pricesOf(inForce(kNow), *added->id).halfBed, pounds(5'50));
}

} // namespace
} // namespace rw::desk::test
