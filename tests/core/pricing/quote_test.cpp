// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/pricing/harbour_lane_prices.h"

#include <gtest/gtest.h>

#include <numeric>
#include <string>
#include <vector>

using namespace rw;
using namespace rw::prices;

namespace {

/// "labour 14.00, full-bed 16.00": the lines of a quote in their order.
std::string linesOf(const Quote& quoted) {
    std::string lines;
    for (const Charge& charge : quoted.charges) {
        lines += (lines.empty() ? "" : ", ") + std::string(chargeKindText(charge.kind)) + " " + charge.amount.text();
    }
    return lines;
}

Quote quoted(const PriceList& list, const QuoteRequest& request) {
    const auto result = quote(list, request);
    EXPECT_TRUE(result) << static_cast<int>(result.error().code()) << " " << result.error().text("what");
    return *result;
}

TEST(Quote, OneStringIsAFullBedInOnePieceOrTwo) {
    EXPECT_EQ(linesOf(quoted(harbourLane(), onePiece(kLarkspun))), "labour 14.00, full-bed 16.00");
    const Quote two = quoted(harbourLane(), twoPieces(kLarkspun, kLarkspun));
    EXPECT_EQ(linesOf(two), "labour 14.00, full-bed 16.00");
    EXPECT_EQ(two.total, pounds(3'000));
}

TEST(Quote, AHybridIsTwoHalfBeds) {
    const Quote hybrid = quoted(harbourLane(), twoPieces(kKestrelline, kLarkspun));
    EXPECT_EQ(linesOf(hybrid), "labour 14.00, half-bed 6.50, half-bed 8.00");
    EXPECT_EQ(hybrid.charges[1].article, kKestrelline);
    EXPECT_EQ(hybrid.charges[2].article, kLarkspun);
    EXPECT_EQ(hybrid.total, pounds(2'850));
}

TEST(Quote, TheCustomersOwnStringIsNotCharged) {
    QuoteRequest request = twoPieces(kKestrelline, kLarkspun);
    request.pieces[0].customersOwn = true;
    EXPECT_EQ(linesOf(quoted(harbourLane(), request)), "labour 14.00, half-bed 8.00");
    request.pieces[1].customersOwn = true;
    EXPECT_EQ(linesOf(quoted(harbourLane(), request)), "own-string-labour 16.00");
}

TEST(Quote, APacketIsChargedOnceHoweverItIsHalved) {
    PriceList list = harbourLane();
    list.lines.push_back(line(ChargeKind::Packet, 1500, kKestrelline));
    QuoteRequest request = twoPieces(kKestrelline, kKestrelline);
    request.pieces[0].packet = true;
    EXPECT_EQ(linesOf(quoted(list, request)), "labour 14.00, packet 15.00, half-bed 6.50");
    request.pieces[1].packet = true;
    EXPECT_EQ(linesOf(quoted(list, request)), "labour 14.00, packet 15.00");
}

TEST(Quote, LinesComeInTheirOrder) {
    PriceList list = harbourLane();
    list.taxRule = TaxRule::Added;
    QuoteRequest request = onePiece(kKestrelline);
    request.extras = {{"grommet tube", 3}};
    request.rush = true;
    request.discount = Discount{.hundredthsPercent = 1000, .fixed = std::nullopt, .reason = "team"};
    const Quote all = quoted(list, request);
    EXPECT_EQ(linesOf(all), "labour 14.00, full-bed 13.00, extra 1.50, rush 5.00, discount -3.35, tax 6.03");
    EXPECT_EQ(all.charges[2].count, 3);
    EXPECT_EQ(all.charges[4].label, "team");
    EXPECT_EQ(all.total, pounds(3'618)); // 33.50 - 3.35 = 30.15, and 20 % of it
}

// The design's check table for prices: a team's 24 rackets.
TEST(Quote, TwentyFourRacketsOfATeam) {
    const auto total = [](const std::optional<Discount>& discount) {
        Money sum = pounds(0);
        const auto add = [&](int times, QuoteRequest request) {
            request.discount = discount;
            sum += quoted(harbourLane(), request).total * times;
        };
        add(14, twoPieces(kKestrelline, kKestrelline));
        add(6, twoPieces(kKestrelline, kLarkspun));
        add(4, twoPieces(kLarkspun, kLarkspun));
        return sum;
    };
    EXPECT_EQ(total(std::nullopt), pounds(66'900));
    EXPECT_EQ(total(Discount{.hundredthsPercent = 1000, .fixed = std::nullopt, .reason = "team"}), pounds(60'210));
}

// The design's check table for tax.
TEST(Tax, IncludedOrAdded) {
    EXPECT_EQ(taxOf(pounds(2'400), 2000, TaxRule::Included), pounds(400));
    EXPECT_EQ(taxOf(pounds(2'400), 1900, TaxRule::Included), pounds(383));
    EXPECT_EQ(taxOf(pounds(3'000), 770, TaxRule::Added), pounds(231));
    EXPECT_EQ(pounds(3'000) + taxOf(pounds(3'000), 770, TaxRule::Added), pounds(3'231));
}

TEST(Tax, IncludedChangesNothingInTheTotal) {
    const Quote included = quoted(harbourLane(), onePiece(kLarkspun));
    ASSERT_EQ(included.taxes.size(), 1U);
    EXPECT_EQ(included.taxes[0].hundredthsPercent, 2000);
    EXPECT_EQ(included.taxes[0].tax, pounds(500));
    EXPECT_EQ(included.total, pounds(3'000));
}

TEST(Tax, IsSummedPerRateAndRoundedOnceEach) {
    PriceList list = harbourLane();
    list.taxRule = TaxRule::Added;
    list.lines = {line(ChargeKind::Labour, 1'010, std::nullopt, {}, 500),
                  line(ChargeKind::FullBed, 1'010, kLarkspun, {}, 500),
                  line(ChargeKind::Rush, 999, std::nullopt, {}, 2000)};
    QuoteRequest request = onePiece(kLarkspun);
    request.rush = true;
    const Quote taxed = quoted(list, request);
    ASSERT_EQ(taxed.taxes.size(), 2U);
    EXPECT_EQ(taxed.taxes[0].tax, pounds(101)); // line by line it would be 0.51 + 0.51
    EXPECT_EQ(taxed.taxes[1].tax, pounds(200)); // 1.998
    EXPECT_EQ(linesOf(taxed), "labour 10.10, full-bed 10.10, rush 9.99, tax 1.01, tax 2.00");
}

TEST(Tax, ADiscountTakesItsShareFromEveryRate) {
    PriceList list = harbourLane();
    list.lines[0].taxHundredthsPercent = 500; // labour at 5 %, string at 20 %
    QuoteRequest request = onePiece(kLarkspun);
    request.discount = Discount{.fixed = pounds(1'000), .reason = "goodwill"};
    const Quote shared = quoted(list, request);
    EXPECT_EQ(linesOf(shared), "labour 14.00, full-bed 16.00, discount -4.67, discount -5.33");
    EXPECT_EQ(shared.taxes[0].tax, taxOf(pounds(933), 500, TaxRule::Included));
    EXPECT_EQ(shared.taxes[1].tax, taxOf(pounds(1'067), 2000, TaxRule::Included));
    EXPECT_EQ(shared.total, pounds(2'000));
}

TEST(Quote, ADiscountIsRoundedOnceHalfAway) {
    QuoteRequest request = twoPieces(kKestrelline, kLarkspun); // 28.50
    request.discount = Discount{.hundredthsPercent = 500, .fixed = std::nullopt, .reason = "club"};
    EXPECT_EQ(quoted(harbourLane(), request).charges.back().amount, pounds(-143)); // 1.425
    request.discount->hundredthsPercent = 10'000;
    EXPECT_EQ(quoted(harbourLane(), request).total, pounds(0)); // a redo: everything off, with its reason
    request.discount->hundredthsPercent = 0;
    request.discount->reason.clear();
    EXPECT_EQ(quoted(harbourLane(), request).charges.size(), 3U);
}

TEST(Quote, RefusesADiscountThatCannotBe) {
    const auto refusal = [](Discount discount) {
        QuoteRequest request = onePiece(kLarkspun);
        request.discount = std::move(discount);
        return quote(harbourLane(), request).error();
    };
    EXPECT_EQ(refusal({.hundredthsPercent = 1000, .fixed = std::nullopt, .reason = ""}).code(), Code::Missing);
    EXPECT_EQ(refusal({.hundredthsPercent = 10'001, .fixed = std::nullopt, .reason = "x"}).code(), Code::OutOfRange);
    EXPECT_EQ(refusal({.hundredthsPercent = -1, .fixed = std::nullopt, .reason = "x"}).code(), Code::OutOfRange);
    EXPECT_EQ(refusal({.fixed = pounds(3'001), .reason = "x"}).code(), Code::OutOfRange);
    EXPECT_EQ(refusal({.fixed = pounds(-1), .reason = "x"}).code(), Code::OutOfRange);
    EXPECT_EQ(refusal({.fixed = Money::fromMinor(1, *Currency::fromCode("EUR")), .reason = "x"}).code(),
              Code::CurrencyMismatch);
}

TEST(Quote, SaysWhichPriceIsMissing) {
    const Refusal half = quote(harbourLane(), twoPieces(kTarnweave, kLarkspun)).error();
    EXPECT_EQ(half.code(), Code::Missing);
    EXPECT_EQ(half.text("what"), "price");
    EXPECT_EQ(half.text("kind"), "half-bed");
    EXPECT_EQ(half.number("article"), kTarnweave.value());
    QuoteRequest request = onePiece(kLarkspun);
    request.extras = {{"new grip", 1}};
    EXPECT_EQ(quote(harbourLane(), request).error().text("label"), "new grip");
    request.extras = {{"grommet tube", 0}};
    EXPECT_EQ(quote(harbourLane(), request).error().code(), Code::OutOfRange);
    PriceList empty = harbourLane();
    empty.lines.clear();
    EXPECT_EQ(quote(empty, onePiece(kLarkspun)).error().text("kind"), "labour");
}

TEST(Quote, TheLinesAddUpToTheTotal) {
    PriceList list = harbourLane();
    list.taxRule = TaxRule::Added;
    for (int percent = 0; percent <= 10'000; percent += 37) {
        QuoteRequest request = twoPieces(kKestrelline, kLarkspun);
        request.extras = {{"grommet tube", 7}};
        request.discount = Discount{.hundredthsPercent = percent, .fixed = std::nullopt, .reason = "club"};
        const Quote priced = quoted(list, request);
        Money sum = pounds(0);
        for (const Charge& charge : priced.charges) {
            sum += charge.amount;
        }
        ASSERT_EQ(sum, priced.total) << percent;
    }
}

} // namespace
