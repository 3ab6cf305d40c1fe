// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/sold_string.h"

#include "core/desk/settings.h"
#include "tests/core/desk/demo_fixture.h"

#include <algorithm>

// What a string is and costs: added, read, changed.
namespace rw::desk::test {
namespace {

class SoldStrings : public DemoEverywhere {
protected:
    static SoldString millrace() {
        StringArticle article;
        article.code = "M";
        article.name = " Millrace 127 ";
        article.diameterMicrometres = 1270;
        return {article, pounds(1101), std::nullopt};
    }
    Result<StringArticle> add(const SoldString& wanted) {
        return write([&](Transaction& t) { return addString(t, wanted, kNow); });
    }
    Result<StringArticle> change(const SoldString& wanted, Instant now = kNow) {
        return write([&](Transaction& t) { return changeString(t, wanted, now); });
    }
    SoldString sold(StringArticleId id, Instant now = kNow) {
        return read([&](Transaction& t) { return soldString(t, id, now); }).value();
    }
    Result<void> setLines(const PriceList& list) {
        return write([&](Transaction& t) -> Result<void> {
            t.priceLists().replaceLines(list);
            return {};
        });
    }
    std::optional<PriceList> listOn(Instant now) {
        return look([&](Transaction& t) { return t.priceLists().validOn(today(t.shop(), now)); });
    }
};
IN_MEMORY_AND_ON_BOTH_ENGINES(SoldStrings);

TEST_P(SoldStrings, AnAddedOneIsSoldByTheHalfToo) {
    PriceList taxed = *listOn(kNow);
    for (PriceLine& line : taxed.lines) {
        line.taxHundredthsPercent = 2000;
    }
    ASSERT_TRUE(setLines(taxed));
    const auto added = add(millrace());
    ASSERT_TRUE(added);
    const SoldString found = sold(*added->id);
    EXPECT_EQ(found.article.name, "Millrace 127");
    EXPECT_EQ(found.article.gaugeName, "16L") << "as nearestGaugeName has it";
    EXPECT_EQ(found.fullBed, pounds(1101));
    EXPECT_EQ(found.halfBed, pounds(551)) << "half of it, half a penny up";
    const auto list = listOn(kNow);
    const auto* line = list->find(ChargeKind::HalfBed, Sport::Tennis, Method::TwoPiece, added->id);
    ASSERT_NE(line, nullptr);
    EXPECT_EQ(line->taxHundredthsPercent, 2000) << "as the other strings";
    EXPECT_EQ(refusalOf(add(millrace())), Code::ImpossibleValue) << "the code is in use";
}

TEST_P(SoldStrings, WhatCannotBeIsRefusedAndNothingIsKept) {
    const auto refusal = [&](auto spoil) {
        SoldString wanted = millrace();
        spoil(wanted);
        const auto added = add(wanted);
        EXPECT_FALSE(added);
        return added ? Refusal(Code::NotFound) : added.error();
    };
    EXPECT_EQ(refusal([](SoldString& s) { s.article.code = " "; }).text("what"), "code");
    EXPECT_EQ(refusal([](SoldString& s) { s.article.code = std::string(21, 'M'); }).code(), Code::TooLong);
    EXPECT_EQ(refusal([](SoldString& s) { s.article.name = ""; }).text("what"), "name");
    EXPECT_EQ(refusal([](SoldString& s) { s.article.colour = std::string(41, 'c'); }).text("what"), "colour");
    EXPECT_EQ(refusal([](SoldString& s) { s.article.gaugeName = std::string(11, '1'); }).text("what"), "gauge");
    EXPECT_EQ(refusal([](SoldString& s) { s.article.diameterMicrometres = 12'700; }).text("what"), "thickness");
    EXPECT_EQ(refusal([](SoldString& s) { s.article.milligramsPerMetre = 1; }).text("what"), "weight");
    EXPECT_EQ(refusal([](SoldString& s) { s.fullBed.reset(); }).text("kind"), "full-bed");
    EXPECT_EQ(refusal([](SoldString& s) { s.halfBed = pounds(-1); }).text("key"), "price");
    EXPECT_EQ(refusal([](SoldString& s) { s.halfBed = Money::zero(*Currency::fromCode("EUR")); }).code(),
              Code::CurrencyMismatch);
    EXPECT_EQ(look([](Transaction& t) { return t.strings().all(); }).size(), 4U);
}

TEST_P(SoldStrings, AChangeHoldsFromItsDayOn) {
    const auto yesterday = kNow - std::chrono::hours(24);
    const auto before = listOn(yesterday);
    ASSERT_TRUE(before);
    SoldString kestrelline = sold(*string("K").id);
    const auto oldPrice = kestrelline.fullBed;
    kestrelline.article.code = "Q";
    kestrelline.article.name = "Kestrelline Pro 125";
    kestrelline.article.colour = "graphite";
    kestrelline.article.milligramsPerMetre = 1'650;
    kestrelline.fullBed = pounds(1750);
    kestrelline.halfBed = pounds(900);
    ASSERT_TRUE(change(kestrelline));
    const SoldString after = sold(*string("K").id);
    EXPECT_EQ(after.article.name, "Kestrelline Pro 125");
    EXPECT_EQ(after.article.colour, "graphite");
    EXPECT_EQ(after.article.milligramsPerMetre, 1'650);
    EXPECT_EQ(after.fullBed, pounds(1750));
    EXPECT_EQ(after.halfBed, pounds(900));
    EXPECT_EQ(sold(*string("K").id, yesterday).fullBed, oldPrice);

    const auto count = listOn(kNow)->lines.size();
    SoldString again = after;
    again.fullBed = pounds(1800);
    ASSERT_TRUE(change(again)) << "a second time on one day";
    EXPECT_EQ(sold(*string("K").id).fullBed, pounds(1800));
    EXPECT_EQ(listOn(kNow)->lines.size(), count);
    EXPECT_EQ(listOn(yesterday)->lines.size(), before->lines.size());
    EXPECT_EQ(sold(*string("L").id).fullBed, sold(*string("L").id, yesterday).fullBed) << "the others stay";

    kestrelline.article.id = StringArticleId::of(999'999);
    EXPECT_EQ(refusalOf(change(kestrelline)), Code::NotFound);
}

// A ledger may hold strings without a half bed's price: whoever logs a hybrid must hear of which string, and where.
TEST_P(SoldStrings, AMissingPriceIsNamedWithItsString) {
    const auto lark = *string("L").id;
    PriceList list = *listOn(kNow);
    std::erase_if(list.lines,
                  [&](const PriceLine& line) { return line.article == lark && line.kind == ChargeKind::HalfBed; });
    ASSERT_TRUE(setLines(list));
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    const auto hybrid = preview(draftFor(racket, "K", "L", "52", "50"));
    ASSERT_FALSE(hybrid);
    EXPECT_EQ(hybrid.error().code(), Code::Missing);
    EXPECT_EQ(hybrid.error().text("kind"), "half-bed");
    EXPECT_EQ(hybrid.error().text("string"), "Larkspun 130");
    SoldString larkspun = sold(lark);
    EXPECT_FALSE(larkspun.halfBed);
    ASSERT_TRUE(change(larkspun));
    EXPECT_TRUE(preview(draftFor(racket, "K", "L", "52", "50")));
}

TEST_P(SoldStrings, OfTwoStationsThatChangeOneTheSecondIsTold) {
    const SoldString mine = sold(*string("K").id);
    SoldString theirs = mine;
    theirs.fullBed = pounds(1800);
    ASSERT_TRUE(change(theirs));
    EXPECT_EQ(refusalOf(change(mine)), Code::ChangedMeanwhile);
    EXPECT_EQ(sold(*string("K").id).fullBed, pounds(1800));
    EXPECT_TRUE(change(sold(*string("K").id))) << "and goes on with what it read anew";
}

} // namespace
} // namespace rw::desk::test
