// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/weigh_in.h"

#include "core/desk/lot_care.h"
#include "core/desk/stock_take.h"
#include "tests/core/desk/demo_fixture.h"

#include <algorithm>

// A lot on the scale: what it says beside the book, booking it, taking that back, and a whole shelf of it.
namespace rw::desk::test {
namespace {

using stock::WeighBasis;

Mass grams(double g) { return Mass::fromMilligrams(std::llround(g * 1000)); }

class WeighIns : public DemoEverywhere {
protected:
    void TearDown() override { EXPECT_TRUE(ledger().check().empty()); }

    By at(int minutes) {
        By who = by("stockroom");
        who.at += std::chrono::minutes(minutes);
        return who;
    }
    WeighLot on(std::string_view tag, double gross, int minutes = 1) {
        return {.tag = std::string(tag), .gross = grams(gross), .by = at(minutes)};
    }
    Result<WeighIn> weighed(const WeighLot& command) {
        return write([&](Transaction& t) { return weigh(t, command); });
    }
    /// The spool weighs 150 g, K-7 weighed 385 g with the 138.4 m that were on it when it came.
    WeighLot k7(double gross, int minutes = 1) {
        WeighLot command = on("K-7", gross, minutes);
        command.empty = grams(150);
        command.fresh = grams(385);
        return command;
    }
    Result<WeighIn> booked(const WeighIn& in, int minutes = 2, std::string why = {}) {
        const BookWeighing command{*in.weighing.id, at(minutes), std::move(why)};
        return write([&](Transaction& t) { return bookWeighing(t, command); });
    }
    void spool(std::string_view tag, SpoolWeight what, const ScaleReading& reading) {
        const LotId id = *lot(tag).id;
        const By who = at(0);
        ASSERT_TRUE(write([&](Transaction& t) -> Result<int> {
            t.weighings().setSpoolWeight(id, what, reading, who);
            return 0;
        }));
    }
    void loses(std::string_view tag, Length length, int minutes) {
        const Movement lost{.id = std::nullopt,
                            .lot = *lot(tag).id,
                            .reason = MovementReason::Lost,
                            .change = -length,
                            .attempt = std::nullopt,
                            .lostReason = LostReason::Kinked,
                            .corrects = std::nullopt,
                            .by = at(minutes)};
        ASSERT_TRUE(write([&](Transaction& t) -> Result<MovementId> { return t.lots().move(lost); }));
    }
    std::vector<Movement> movements(std::string_view tag) {
        const LotId id = *lot(tag).id;
        return look([&](Transaction& t) { return t.lots().movements(id); });
    }
    void takeBackLast(std::string_view tag) {
        const TakeBack command{{{*lot(tag).id, *movements(tag).back().id}}, at(50)};
        ASSERT_TRUE(write([&](Transaction& t) { return takeBack(t, command); }));
    }
    StockTakeId stockTake(int minutes = 0) {
        const By who = at(minutes);
        return *write([&](Transaction& t) -> Result<StockTakeId> { return goOnWithStockTake(t, who); });
    }
    StockTakeSheet sheet() {
        return *read([](Transaction& t) { return stockTakeSheet(t); });
    }
};
IN_MEMORY_AND_ON_BOTH_ENGINES(WeighIns);

// stock-checks.csv, weigh1: GUM eq. 10, a Monte Carlo agrees. L0 = 200 m (u 1 m), G0 = 490 g and G = 236 g (u 0.58 g: a
// step of 2.009 g), T = 150 g (u 1 g: a step of 3.464 g); L = 50.588235 m, u = 0.617204 m.
TEST_P(WeighIns, AgainstTheNewReelAsInTheChecks) {
    ASSERT_TRUE(receive(delivery("K", "K-9", metres(200))));
    spool("K-9", SpoolWeight::Empty, {grams(150), grams(3.464)});
    spool("K-9", SpoolWeight::New, {grams(490), grams(2.009)});
    WeighLot command = on("k-9", 236);
    command.step = grams(2.009);
    const auto in = weighed(command);
    ASSERT_TRUE(in);
    EXPECT_EQ(in->weighing.basis, WeighBasis::AgainstNew);
    EXPECT_EQ(in->weighing.weighedMm.value, 50'588);
    EXPECT_EQ(in->weighing.weighedMm.sd, 617);
    EXPECT_EQ(in->weighing.bookMm.value, 200'000);
    EXPECT_EQ(in->weighing.bookMm.sd, 1'000) << "0.5 % of a new reel";
    EXPECT_TRUE(in->finding.isFinding);
}

// stock-checks.csv, weigh2: GUM eq. 10. rho = 1.70 g/m within 2 %; L = 50.588235 m, u = 1.219053 m.
TEST_P(WeighIns, ByWhatAMetreWeighsAsInTheChecks) {
    StringArticle k = string("K");
    k.milligramsPerMetre = 1'700;
    ASSERT_TRUE(write([&](Transaction& t) { return t.strings().update(k); }));
    ASSERT_TRUE(receive(delivery("K", "K-9", metres(200))));
    spool("K-9", SpoolWeight::Empty, {grams(150), grams(3.464)});
    WeighLot command = on("K-9", 236);
    command.step = grams(2.009);
    const auto in = weighed(command);
    ASSERT_TRUE(in);
    EXPECT_EQ(in->weighing.basis, WeighBasis::ByMetre);
    EXPECT_EQ(in->weighing.weighedMm.value, 50'588);
    EXPECT_EQ(in->weighing.weighedMm.sd, 1'219);
    EXPECT_FALSE(in->isNewWeight) << "sealed by the book, and three quarters of it gone by the scale";
}

TEST_P(WeighIns, WhatAgreesIsNoFindingAndLeavesTheBookAlone) {
    const auto count = movements("K-7").size();
    const auto in = weighed(k7(252));
    ASSERT_TRUE(in);
    EXPECT_EQ(in->weighing.bookMm.value, 60'000);
    EXPECT_NEAR(in->weighing.weighedMm.value, 138'400 * (252.0 - 150) / (385 - 150), 1);
    EXPECT_FALSE(in->finding.isFinding);
    EXPECT_TRUE(in->causes.empty());
    EXPECT_EQ(movements("K-7").size(), count);
    ASSERT_TRUE(in->weighing.whenNewMm) << "more than half is gone: it tells whether it was full";
    EXPECT_NEAR(in->weighing.whenNewMm->value, 138'400, 2 * in->weighing.whenNewMm->sd);
}

TEST_P(WeighIns, AJobThatNobodyBookedIsFoundAndBooked) {
    const auto in = weighed(k7(233)); // 48.9 m: one job of 11.2 m less than the book
    ASSERT_TRUE(in);
    EXPECT_TRUE(in->finding.isFinding);
    EXPECT_EQ(in->finding.unbookedJobs, 1);
    ASSERT_FALSE(in->causes.empty());
    EXPECT_EQ(in->causes.front(), WeighCause::UnbookedJobs);
    const auto done = booked(*in, 2, " a job of Tuesday ");
    ASSERT_TRUE(done);
    const Movement last = movements("K-7").back();
    EXPECT_EQ(last.reason, MovementReason::Weighed);
    EXPECT_EQ(last.change.millimetres(), std::llround(in->weighing.weighedMm.value) - 60'000);
    EXPECT_EQ(last.words, "a job of Tuesday");
    EXPECT_EQ(done->weighing.booked, last.id);
    const LotId k7Id = *lot("K-7").id;
    const auto life = read([&](Transaction& t) { return lotLife(t, k7Id); });
    EXPECT_EQ(life->onScale.at(*last.id), grams(233)) << "beside its weights";
    EXPECT_EQ(lot("K-7").length.millimetres(), std::llround(in->weighing.weighedMm.value));
    const auto count = movements("K-7").size();
    ASSERT_TRUE(booked(*in, 3)) << "said twice";
    EXPECT_EQ(movements("K-7").size(), count);
    const auto again = weighed(k7(233, 5));
    EXPECT_EQ(again->weighing.bookMm.sd, in->weighing.weighedMm.sd) << "the book is as sure now as the scale was";
    EXPECT_FALSE(again->finding.isFinding);
}

TEST_P(WeighIns, ABookingIsTakenBackByACorrection) {
    const auto in = weighed(k7(233));
    ASSERT_TRUE(booked(*in));
    takeBackLast("K-7");
    EXPECT_EQ(lot("K-7").length, metres(60));
    const auto life = movements("K-7");
    EXPECT_EQ(life.back().corrects, life[life.size() - 2].id);
    EXPECT_FALSE(look([&](Transaction& t) { return t.weighings().get(*in->weighing.id); })->booked);
    EXPECT_GT(weighed(k7(233, 60))->weighing.bookMm.sd, in->weighing.weighedMm.sd) << "as unsure as it was before";
    ASSERT_TRUE(booked(*in, 61)) << "and it can be booked again";
    EXPECT_NE(lot("K-7").length, metres(60));
}

TEST_P(WeighIns, WhatWasCutMeanwhileStaysCut) {
    const auto in = weighed(k7(233));
    loses("K-7", metres(6), 2);
    ASSERT_TRUE(booked(*in, 3));
    EXPECT_EQ(lot("K-7").length.millimetres(), std::llround(in->weighing.weighedMm.value) - 6'000);
}

TEST_P(WeighIns, ABookThatWasCorrectedMeanwhileIsNotCorrectedTwice) {
    const auto in = weighed(k7(233));
    const CorrectLot tape{*lot("K-7").id, metres(48.8), at(2)};
    ASSERT_TRUE(write([&](Transaction& t) { return correctLot(t, tape); }));
    EXPECT_EQ(refusalOf(booked(*in, 3)), Code::ChangedMeanwhile);
    EXPECT_EQ(lot("K-7").length, metres(48.8));
}

TEST_P(WeighIns, AnEmptySpoolIsClosed) {
    const auto in = weighed(k7(150));
    ASSERT_TRUE(booked(*in));
    EXPECT_FALSE(lot("K-7").isOpen());
    EXPECT_EQ(refusalOf(weighed(on("K-7", 150, 3))), Code::LotClosed);
    takeBackLast("K-7");
    EXPECT_EQ(lot("K-7").length, metres(60));
    EXPECT_TRUE(lot("K-7").isOpen());
}

TEST_P(WeighIns, WhatCannotBeIsRefusedAndLeavesNothing) {
    EXPECT_EQ(refusalOf(weighed(on("X-9", 236))), Code::NotFound);
    EXPECT_EQ(refusalOf(weighed(on(" ", 236))), Code::Missing);
    EXPECT_EQ(refusalOf(weighed(on("K-7", 0))), Code::OutOfRange);
    const auto light = weighed(k7(149));
    ASSERT_FALSE(light);
    EXPECT_EQ(light.error().code(), Code::ImpossibleValue);
    EXPECT_EQ(light.error().text("key"), "weight");
    EXPECT_EQ(refusalOf(weighed(on("K-7", 252))), Code::Missing) << "the refused spool was not kept";
    WeighLot noStep = k7(252);
    noStep.step = grams(0);
    EXPECT_EQ(refusalOf(weighed(noStep)), Code::OutOfRange);
}

TEST_P(WeighIns, LookingWritesNothing) {
    const WeighLot command = k7(252);
    ASSERT_TRUE(read([&](Transaction& t) { return wouldWeigh(t, command); }));
    EXPECT_EQ(refusalOf(weighed(on("K-7", 252))), Code::Missing);
}

TEST_P(WeighIns, ASpoolLikeItServesUntilItsOwnIsWeighed) {
    ASSERT_TRUE(receive(delivery("W", "W-2", metres(200))));
    spool("W-1", SpoolWeight::Empty, {grams(120), grams(1)});
    loses("W-2", metres(100), 1);
    const auto in = weighed(on("W-2", 260, 2));
    ASSERT_TRUE(in);
    EXPECT_EQ(in->spoolOf, "W-1");
    EXPECT_EQ(in->weighing.empty, (ScaleReading{grams(120), grams(4)})) << "spools of one make differ by about a gram";
    WeighLot own = on("W-2", 260, 3);
    own.empty = grams(118);
    EXPECT_FALSE(weighed(own)->spoolOf);
    EXPECT_EQ(weighed(on("W-2", 260, 4))->weighing.empty, (ScaleReading{grams(118), grams(1)}));
}

TEST_P(WeighIns, AReelThatNothingWasCutFromTellsItsWeightWhenNew) {
    const auto first = weighed(on("K-4", 489));
    ASSERT_TRUE(first) << "no spool is needed";
    EXPECT_TRUE(first->isNewWeight);
    EXPECT_EQ(first->weighing.weighedMm.value, 200'000);
    loses("K-4", metres(20), 2);
    const auto later = weighed(on("K-4", 455, 3));
    ASSERT_TRUE(later);
    EXPECT_EQ(later->weighing.basis, WeighBasis::ByGone);
    EXPECT_EQ(later->weighing.fresh, (ScaleReading{grams(489), grams(1)}));
    EXPECT_FALSE(later->isNewWeight);
    EXPECT_FALSE(later->finding.isFinding);
}

TEST_P(WeighIns, AMetreIsLearnedByWeighingBeforeAndAfterACut) {
    const auto metre = [&] {
        const StringArticle k = string("K");
        return look([&](Transaction& t) { return gramsPerMetre(t, k); });
    };
    const stock::Estimate before = metre();
    ASSERT_TRUE(weighed(k7(252)));
    loses("K-7", metres(40), 2);
    ASSERT_TRUE(weighed(on("K-7", 185, 3))); // 67 g for 40 m: 1.675 g/m, if the string was what it was taken for
    const stock::Estimate after = metre();
    EXPECT_LT(after.sd, before.sd);
    EXPECT_LT(std::abs(after.value - 1.675), std::abs(before.value - 1.675));
}

TEST_P(WeighIns, PacketsAreCountedAndACustomersReelIsWeighedAsTheirs) {
    const auto owner = racketOf("Lindobi", "Aldermoor 98", "A").racket.customer;
    ASSERT_TRUE(receive(delivery("L", "Petra 1", metres(22), owner)));
    ReceiveLot packet = delivery("L", "P-1", metres(12));
    packet.kind = LotKind::Packet;
    ASSERT_TRUE(receive(packet));
    EXPECT_EQ(refusalOf(weighed(on("P-1", 20))), Code::ImpossibleValue);
    WeighLot theirs = on("Petra 1", 190);
    theirs.empty = grams(150);
    const auto in = weighed(theirs);
    ASSERT_TRUE(in);
    EXPECT_NE(in->owner, "");
    loses("P-1", metres(6), 3);
    const auto half = weighed(on("P-1", 9, 4));
    ASSERT_TRUE(half) << "a coil lies on no spool";
    EXPECT_EQ(half->weighing.empty->weight, grams(0));
}

TEST_P(WeighIns, TheScalesStepIsTheShopsUnlessItIsTold) {
    ASSERT_TRUE(write([](Transaction& t) -> Result<int> {
        t.shop().set("scale-step-g", "0.5");
        return 0;
    }));
    EXPECT_EQ(weighed(k7(252))->weighing.gross.step, grams(0.5));
    WeighLot other = on("K-7", 252, 2);
    other.step = grams(5);
    EXPECT_GT(weighed(other)->weighing.weighedMm.sd, weighed(on("K-7", 252, 3))->weighing.weighedMm.sd);
}

TEST_P(WeighIns, AReelMayBeWeighedWhenItComes) {
    const auto fresh = [&](std::string_view tag) {
        const LotId id = *lot(tag).id;
        return look([&](Transaction& t) { return t.weighings().spoolWeights(id).fresh; });
    };
    ReceiveLot single = delivery("K", "K-20", metres(200));
    single.newWeight = grams(489);
    ASSERT_TRUE(receive(single));
    EXPECT_EQ(fresh("K-20"), (ScaleReading{grams(489), grams(1)}));
    const StringArticleId k = *string("K").id;
    ReceiveDelivery parcel{
        .requestKey = "a parcel",
        .supplier = {},
        .lines =
            {{.article = k, .count = 2, .nominal = metres(200), .priceEach = pounds(0)},
             {.article = k, .nominal = metres(100), .priceEach = pounds(0), .tag = "K-30", .newWeight = grams(320)}},
        .shipping = pounds(0),
        .by = at(1)};
    const auto received = [&] { return write([&](Transaction& t) { return receiveDelivery(t, parcel); }); };
    ASSERT_TRUE(received());
    EXPECT_EQ(fresh("K-30"), (ScaleReading{grams(320), grams(1)}));
    EXPECT_FALSE(fresh("K-21"));
    parcel.requestKey = "another";
    parcel.lines[1].tag = "K-31";
    parcel.lines[0].newWeight = grams(489);
    EXPECT_EQ(refusalOf(received()), Code::ImpossibleValue) << "two reels, one weight";
    parcel.lines[0].count = 1;
    parcel.lines[0].kind = LotKind::Packet;
    EXPECT_EQ(refusalOf(received()), Code::ImpossibleValue);
    parcel.lines[0] = {.article = k, .nominal = metres(200), .priceEach = pounds(0), .newWeight = grams(0)};
    EXPECT_EQ(refusalOf(received()), Code::OutOfRange);
}

TEST_P(WeighIns, AStockTakeKeepsTheLastWeighingOfEachLotAndWhatIsStillToDo) {
    EXPECT_FALSE(sheet().take) << "who only looks begins none";
    const auto toWeigh = sheet().toWeigh.size();
    ASSERT_GT(toWeigh, 3U);
    const StockTakeId begun = stockTake();
    EXPECT_EQ(stockTake(1), begun) << "who comes back goes on with it";
    WeighLot first = k7(233);
    first.stockTake = begun;
    ASSERT_TRUE(weighed(first));
    WeighLot again = on("K-7", 234, 2);
    again.stockTake = begun;
    ASSERT_TRUE(weighed(again));
    WeighLot fresh = on("K-4", 489, 3);
    fresh.stockTake = begun;
    ASSERT_TRUE(weighed(fresh));
    ASSERT_TRUE(weighed(on("K-7", 250, 4))) << "a weighing by the way is in no stock-take";
    const StockTakeSheet found = sheet();
    ASSERT_EQ(found.lines.size(), 2U);
    EXPECT_EQ(found.lines[0].weighing.gross.weight, grams(234));
    EXPECT_EQ(found.lines[1].lot.tag, "K-4");
    EXPECT_TRUE(found.lines[1].isNewWeight) << "as it was said when it was weighed";
    EXPECT_EQ(found.findings(), 1);
    EXPECT_EQ(found.toWeigh.size(), toWeigh - 2);
    EXPECT_EQ(found.startedBy, "Bastian Quill");
}

TEST_P(WeighIns, AStockTakeThatHasEndedTakesNothingMore) {
    const StockTakeId begun = stockTake();
    const auto end = [&](int minutes) {
        const By who = at(minutes);
        return *write([&](Transaction& t) { return endStockTake(t, begun, who); });
    };
    EXPECT_FALSE(end(9).take->isGoingOn());
    EXPECT_EQ(end(10).take->ended, at(9).at) << "ended twice";
    EXPECT_EQ(end(10).endedBy, "Bastian Quill");
    EXPECT_FALSE(sheet().take);
    WeighLot late = k7(252, 10);
    late.stockTake = begun;
    EXPECT_EQ(refusalOf(weighed(late)), Code::ChangedMeanwhile);
    EXPECT_NE(stockTake(11), begun);
}

} // namespace
} // namespace rw::desk::test
