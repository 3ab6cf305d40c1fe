// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/shelf.h"

#include <gtest/gtest.h>

#include <chrono>

using namespace rw;

namespace {

Length mm(std::int64_t value) { return Length::fromMillimetres(value); }
const StringArticleId kArticle = StringArticleId::of(1);

/// An opened 200 m reel of the shop that holds `left` millimetres; younger ids are received later.
Lot reel(std::int64_t id, std::int64_t left) {
    return {.id = LotId::of(id),
            .tag = "K-" + std::to_string(id),
            .article = kArticle,
            .owner = std::nullopt,
            .nominal = mm(200'000),
            .length = mm(left),
            .price = Money::zero(Currency::pounds()),
            .shipping = Money::zero(Currency::pounds()),
            .batch = "",
            .received = Instant{std::chrono::hours(id)},
            .sealed = false,
            .closed = std::nullopt};
}

Lot measured(Lot lot) {
    lot.measuredSinceLastCut = true;
    return lot;
}

Lot sealedReel(std::int64_t id) {
    Lot lot = reel(id, 200'000);
    lot.sealed = true;
    return lot;
}

Lot packet(std::int64_t id, std::int64_t length) {
    Lot lot = sealedReel(id);
    lot.kind = LotKind::Packet;
    lot.nominal = lot.length = mm(length);
    return lot;
}

PlannedCut cut(std::optional<std::int64_t> lot, std::int64_t length) {
    return {.piece = JobPieceId::of(1),
            .article = kArticle,
            .lot = lot ? std::optional(LotId::of(*lot)) : std::nullopt,
            .owner = std::nullopt,
            .length = mm(length)};
}

// Scenario of the shop: T-1 holds 27.6 m, a job takes 9.3 m.
TEST(WholeJobs, ThirdWouldBeThirtyCentimetresShort) {
    EXPECT_EQ(wholeJobs(mm(27'600), mm(9'300)).jobs, 2);
    EXPECT_EQ(wholeJobs(mm(27'600), mm(9'300)).nextShortBy, mm(300));
}

TEST(WholeJobs, AreNeverRoundedUp) {
    EXPECT_EQ(wholeJobs(mm(27'899), mm(9'300)).jobs, 2);
    EXPECT_EQ(wholeJobs(mm(27'900), mm(9'300)).jobs, 3);
    EXPECT_EQ(wholeJobs(mm(27'900), mm(9'300)).nextShortBy, mm(9'300));
    EXPECT_EQ(wholeJobs(mm(0), mm(9'300)).jobs, 0);
    EXPECT_EQ(wholeJobs(mm(-500), mm(9'300)).jobs, 0);
    EXPECT_EQ(wholeJobs(mm(-500), mm(9'300)).nextShortBy, mm(9'800));
}

// Check values 20b: whole jobs in reels as sold, in whole millimetres (worked out from the lengths).
TEST(WholeJobs, FromReelsAsSold) {
    EXPECT_EQ(wholeJobs(mm(200'000), mm(11'000)).jobs, 18);
    EXPECT_EQ(wholeJobs(mm(201'168), mm(11'580)).jobs, 17);
    EXPECT_EQ(wholeJobs(mm(200'000), mm(12'000)).jobs, 16);
    EXPECT_EQ(wholeJobs(mm(200'000), mm(10'000)).jobs, 20);
    EXPECT_EQ(wholeJobs(Length::fromFeetRoundedDown(360), Length::fromFeetRoundedDown(30)).jobs, 12);
}

TEST(WholeJobs, CountEachLotOnItsOwn) {
    EXPECT_EQ(wholeJobsOver({mm(6'000), mm(6'000), mm(6'000), mm(6'000)}, mm(11'000)), 0);
    EXPECT_EQ(wholeJobsOver({mm(22'500), mm(11'000), mm(10'999)}, mm(11'000)), 3);
}

TEST(WholeJobs, AreFreeBesideWhatIsPromised) {
    const std::vector<Lot> lots = {reel(1, 48'700)};
    EXPECT_EQ(wholeJobsFree(lots, {}, mm(10'800)), 4);
    EXPECT_EQ(wholeJobsFree(lots, {cut(1, 10'800), cut(1, 10'800), cut(1, 10'800)}, mm(10'800)), 1);
    EXPECT_EQ(wholeJobsFree(lots, {cut(std::nullopt, 6'000), cut(9, 6'000)}, mm(10'800)), 2);
    EXPECT_EQ(wholeJobsFree({}, {cut(std::nullopt, 1)}, mm(10'800)), -1);
}

TEST(RunningShort, BelowTheFewestJobsAShopWants) {
    EXPECT_TRUE(isRunningShort(1));
    EXPECT_FALSE(isRunningShort(2));
    EXPECT_TRUE(isRunningShort(4, 5));
}

// Scenario of the shop: reel L-3 holds 48.7 m, three open jobs will take 32.4 m.
TEST(Uncommitted, IsWhatNoPlannedCutTakes) {
    const std::vector<PlannedCut> planned = {cut(3, 10'800), cut(3, 10'800), cut(3, 10'800), cut(4, 5'000)};
    EXPECT_EQ(uncommitted(reel(3, 48'700), planned), mm(16'300));
    EXPECT_EQ(uncommitted(reel(5, 1'000), planned), mm(1'000));
    EXPECT_EQ((Holding{mm(48'700), mm(32'400)}.free()), mm(16'300));
}

TEST(ProposePacket, TakesTheShortestFullOneThatHoldsThePiece) {
    const std::vector<Lot> lots = {packet(1, 12'200), packet(2, 12'000), packet(3, 12'000), reel(4, 12'000)};
    EXPECT_EQ(proposePacket(lots, {}, mm(12'000), std::nullopt), LotId::of(2)) << "the older of two";
    EXPECT_EQ(proposePacket(lots, {}, mm(12'001), std::nullopt), LotId::of(1));
    EXPECT_EQ(proposePacket(lots, {cut(2, 6'500)}, mm(5'500), std::nullopt), LotId::of(2)) << "beside what is planned";
    EXPECT_EQ(proposePacket(lots, {cut(2, 6'501)}, mm(5'500), std::nullopt), LotId::of(3));
    EXPECT_EQ(proposePacket(lots, {}, mm(12'201), std::nullopt), std::nullopt);
}

TEST(ProposePacket, NeverTakesSomebodyElsesOrAnOpenedOrAClosedOne) {
    Lot kept = packet(1, 12'000);
    kept.owner = CustomerId::of(7);
    Lot closed = packet(2, 12'000);
    closed.closed = Instant{};
    Lot opened = packet(3, 12'000);
    opened.sealed = false;
    EXPECT_EQ(proposePacket({kept, closed, opened}, {}, mm(6'200), std::nullopt), std::nullopt);
    EXPECT_EQ(proposePacket({kept, closed, opened}, {}, mm(6'200), CustomerId::of(7)), LotId::of(1));
}

// Scenario of the shop: K-2 has 6.4 m left, measured since its last cut; mains of 6.2 m leave 0.2 m.
TEST(Fit, TightCutSaysMeasureBeforeCutting) {
    EXPECT_EQ(fitOf(measured(reel(2, 6'400)), mm(6'200)), Fit::FitsIfBookIsRight);
}

TEST(Fit, FollowsTheBookAndItsUncertainty) {
    EXPECT_EQ(fitOf(measured(reel(1, 6'450)), mm(6'200)), Fit::Fits);
    EXPECT_EQ(fitOf(measured(reel(1, 6'449)), mm(6'200)), Fit::FitsIfBookIsRight);
    EXPECT_EQ(fitOf(reel(1, 6'199), mm(6'200)), Fit::DoesNotFit);
    EXPECT_EQ(fitOf(reel(1, 6'200), mm(6'200)), Fit::FitsIfBookIsRight);
    EXPECT_EQ(fitOf(reel(1, 8'200), mm(6'200)),
              Fit::FitsIfBookIsRight); // 2.0 m left, the book is good to 2.02 m
    EXPECT_EQ(fitOf(reel(1, 8'300), mm(6'200)), Fit::Fits);
    EXPECT_EQ(fitOf(reel(3, 48'700), mm(10'800), mm(32'400)), Fit::Fits);
    EXPECT_EQ(fitOf(reel(3, 48'700), mm(10'800), mm(37'901)), Fit::DoesNotFit);
}

TEST(Fit, APacketIsUsedWhole) {
    EXPECT_EQ(fitOf(packet(1, 12'000), mm(12'000)), Fit::Fits);
    EXPECT_EQ(fitOf(packet(1, 12'000), mm(12'001)), Fit::DoesNotFit);
}

// Stock model, "Uncertainty of the book".
TEST(BookUncertainty, OfNewOpenedAndMeasured) {
    EXPECT_EQ(bookUncertainty(sealedReel(1)), mm(1'000));         // 0.5 % of 200 m
    EXPECT_EQ(bookUncertainty(measured(reel(1, 6'400))), mm(10)); // a tape
    EXPECT_EQ(bookUncertainty(reel(1, 100'000)), mm(1'004));      // sqrt(1 m^2 + 20 x (2 cm)^2) = 1.00399 m
}

} // namespace
