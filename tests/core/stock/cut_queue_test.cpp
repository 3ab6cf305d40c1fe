// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/cut_queue.h"
#include "tests/core/stock/queue_oracle.h"
#include "tests/core/stock/stock_data.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace rw::stock::test {
namespace {

using namespace std::chrono_literals;

constexpr QueueRules kPieceByPiece{.sameReel = false, .limit = 60s};
constexpr QueueRules kOneReel{.sameReel = true, .limit = 60s};

QueueLot opened(double length) { return {{.length = metres(length)}, std::nullopt, std::nullopt}; }

QueueLot sealedReel(double length) {
    QueueLot lot = opened(length);
    lot.source.sealed = true;
    return lot;
}

std::vector<QueueLot> lotsOf(const std::vector<double>& lengths) {
    std::vector<QueueLot> lots;
    for (const double length : lengths) {
        lots.push_back(opened(length));
    }
    return lots;
}

QueuePiece piece(double length, std::int64_t job) { return {metres(length), JobId::of(job), std::nullopt}; }

/// Each a job of its own.
std::vector<QueuePiece> piecesOf(const std::vector<double>& lengths) {
    std::vector<QueuePiece> pieces;
    for (const double length : lengths) {
        pieces.push_back(piece(length, static_cast<std::int64_t>(pieces.size()) + 1));
    }
    return pieces;
}

/// A plan that leaves nothing and nobody's rules out, and loses what it says.
QueuePlan planned(const std::vector<QueueLot>& lots, const std::vector<QueuePiece>& pieces,
                  const QueueRules& rules = kPieceByPiece) {
    QueuePlan plan = planQueue(lots, pieces, mixedValue(), rules);
    EXPECT_NEAR(plan.lostMm, worthOf(plan, lots, pieces, mixedValue()).lostMm, 1e-6);
    EXPECT_TRUE(plan.proven);
    return plan;
}

// remnant-exact-cases.json, "delta_W_opt": by trying every plan. Worked out for this project by another program; to a
// millimetre.
TEST(CutQueue, IsTheOptimumOfTheExactCases) {
    for (const ExactCase& each : exactCases()) {
        const auto lots = lotsOf(each.stocks);
        const auto pieces = piecesOf(each.pieces);
        const QueuePlan plan = planned(lots, pieces);
        EXPECT_EQ(worthOf(plan, lots, pieces, mixedValue()).leftOut, 0);
        EXPECT_NEAR(plan.lostMm / 1'000, each.optimum, 0.001);
    }
}

/// A small question of any kind: scarce or plenty, other people's reels, pinned, sealed and unmeasured lots.
struct SmallQuestion {
    explicit SmallQuestion(std::mt19937& random) {
        const auto upTo = [&](int most) { return std::uniform_int_distribution<>(0, most)(random); };
        const int lotCount = 2 + upTo(2);
        const int pieceCount = 3 + upTo(5);
        const bool scarce = upTo(2) == 0;
        for (int i = 0; i < lotCount; ++i) {
            QueueLot lot = opened(0.01 * (400 + upTo(4'500)));
            if (i == 0) {
                lot = opened(scarce ? 60.01 : 100 + upTo(90));
                lot.pinnedTo = std::nullopt;
            } else {
                lot.source.sealed = upTo(5) == 0;
                lot.source.gap = mm(upTo(1) * 150);
                lot.owner = upTo(4) == 0 ? std::optional(CustomerId::of(7)) : std::nullopt;
                lot.pinnedTo = upTo(4) == 0 ? std::optional(JobId::of(1 + upTo(pieceCount))) : std::nullopt;
            }
            lots.push_back(lot);
        }
        for (int i = 0; i < pieceCount; ++i) {
            const double length = upTo(4) == 0 ? 9.5 + 0.01 * upTo(250) : 5 + 0.01 * upTo(200);
            pieces.push_back(piece(scarce ? 2 * length : length, 1 + upTo(pieceCount)));
            pieces.back().owner = upTo(4) == 0 ? std::optional(CustomerId::of(7)) : std::nullopt;
        }
    }
    std::vector<QueueLot> lots;
    std::vector<QueuePiece> pieces;
};

TEST(CutQueue, AgreesWithGlpk) {
    std::mt19937 random(20'260'301);
    int short_ = 0;
    for (int i = 0; i < 60; ++i) {
        const SmallQuestion question(random);
        const PlanWorth best = bestByGlpk(question.lots, question.pieces, mixedValue());
        const PlanWorth ours =
            worthOf(planned(question.lots, question.pieces), question.lots, question.pieces, mixedValue());
        EXPECT_EQ(ours.leftOut, best.leftOut) << i;
        EXPECT_EQ(ours.opened, best.opened) << i;
        EXPECT_NEAR(ours.lostMm, best.lostMm, 1e-3) << i;
        short_ += best.leftOut > 0 ? 1 : 0;
    }
    EXPECT_GT(short_, 10); // both kinds are among them
    EXPECT_LT(short_, 50);
}

TEST(CutQueue, LeavesAPlannedJobWhereItIsUnlessAnotherPlaceIsWorthIt) {
    const auto full = lotsOf({120, 100}); // a cut loses nothing on either
    const auto one = piecesOf({6.2});
    EXPECT_EQ(planned(full, one).placing, Placing{0});
    QueueRules rules = kPieceByPiece;
    rules.asPlanned = {1};
    EXPECT_EQ(planned(full, one, rules).placing, Placing{1});
    // leaves 4.9 m of scrap of an end that two pieces fit on
    ASSERT_GT(mixedValue().lostByCutting(metres(11.1), metres(6.2)), kWorthMovingMm);
    EXPECT_EQ(planned(lotsOf({120, 11.1}), one, rules).placing, Placing{0});
    // the lot does not hold it any more
    EXPECT_EQ(planned(lotsOf({120, 6.1}), one, rules).placing, Placing{0});
}

TEST(CutQueue, MovesAsFewJobsAsAPlanAllows) {
    QueueRules rules = kPieceByPiece;
    rules.asPlanned = {0, 0, 1};
    // two of the three use up the end; the one that is there already is one of them
    EXPECT_EQ(planned(lotsOf({120, 12.2}), piecesOf({6.1, 6.1, 6.1}), rules).placing, (Placing{0, 1, 1}));
}

TEST(CutQueue, ANewJobDoesNotMoveTheOthersForNothing) {
    QueueRules rules = kPieceByPiece;
    rules.asPlanned = {1, std::nullopt};
    EXPECT_EQ(planned(lotsOf({120, 100}), piecesOf({6.2, 5.6}), rules).placing, (Placing{1, 0}));
}

TEST(CutQueue, TakesBothPiecesOffOneReel) {
    const std::vector<QueuePiece> pieces = {piece(6.1, 1), piece(5.6, 1)};
    const auto ends = lotsOf({120, 6.1, 5.6});
    const auto apart = planned(ends, pieces);
    EXPECT_EQ(apart.placing, (Placing{1, 2}));
    const auto together = planned(ends, pieces, kOneReel);
    EXPECT_EQ(together.placing, (Placing{0, 0}));
    EXPECT_EQ(QueueRules{}.sameReel, true);
    // what holds only one of them holds neither
    EXPECT_EQ(planned(lotsOf({6.1, 11}), pieces, kOneReel).placing, (Placing{std::nullopt, std::nullopt}));
}

TEST(CutQueue, PiecesOfTwoOwnersAreTwoReels) {
    std::vector<QueuePiece> pieces = {piece(6.1, 1), piece(5.6, 1)};
    pieces[1].owner = CustomerId::of(7);
    auto lots = lotsOf({120, 100});
    EXPECT_EQ(planned(lots, pieces, kOneReel).placing, (Placing{0, std::nullopt}));
    lots[1].owner = CustomerId::of(7);
    EXPECT_EQ(planned(lots, pieces, kOneReel).placing, (Placing{0, 1}));
}

TEST(CutQueue, APinnedJobStaysWhereItIs) {
    const auto pieces = piecesOf({6.1, 5.6});
    auto lots = lotsOf({120, 6.1, 11});
    EXPECT_EQ(planned(lots, pieces).placing, (Placing{1, 2}));
    lots[0].pinnedTo = JobId::of(1);
    EXPECT_EQ(planned(lots, pieces).placing[0], 0U);
    lots[0].pinnedTo = std::nullopt;
    lots[1].pinnedTo = JobId::of(2); // 0.5 m of scrap, and still
    EXPECT_EQ(planned(lots, pieces).placing[1], 1U);
    lots[1].source.length = mm(5'599); // it fits there no longer, and goes nowhere else
    EXPECT_EQ(planned(lots, pieces).placing[1], std::nullopt);
}

TEST(CutQueue, APinnedJobComesBeforeTwoOthers) {
    auto lots = lotsOf({12});
    lots[0].pinnedTo = JobId::of(1);
    EXPECT_EQ(planned(lots, piecesOf({11, 6, 5.5})).placing, (Placing{0, std::nullopt, std::nullopt}));
    lots[0].pinnedTo = std::nullopt;
    EXPECT_EQ(planned(lots, piecesOf({11, 6, 5.5})).placing, (Placing{std::nullopt, 0, 0}));
}

TEST(CutQueue, AJobPinnedToTwoLotsComesOffTwo) {
    auto lots = lotsOf({120, 6.1, 5.6});
    lots[1].pinnedTo = lots[2].pinnedTo = JobId::of(1);
    EXPECT_EQ(planned(lots, {piece(6.1, 1), piece(5.6, 1)}, kOneReel).placing, (Placing{1, 2}));
}

TEST(CutQueue, OpensASealedReelOnlyWhenItMust) {
    // the end would do with a loss, and a full reel is open
    EXPECT_EQ(planned({opened(70), sealedReel(200)}, piecesOf({11, 11, 11, 11, 11, 11})).placing, (Placing(6, 0)));
    // one more does not fit
    const auto plan = planned({opened(70), sealedReel(200)}, piecesOf({11, 11, 11, 11, 11, 11, 11}));
    EXPECT_NE(std::ranges::count(plan.placing, Placing::value_type(1)), 0);
    // none is full enough and the end would lose more than 0.30 m
    EXPECT_EQ(planned({opened(8), sealedReel(200)}, piecesOf({5.6})).placing, (Placing{1}));
    EXPECT_EQ(planned({opened(8), sealedReel(200)}, piecesOf({8})).placing, (Placing{0}));
}

TEST(CutQueue, KeepsTheGap) {
    auto lots = lotsOf({6.3});
    lots[0].source.gap = mm(150);
    EXPECT_EQ(planned(lots, piecesOf({6.16})).placing, (Placing{std::nullopt}));
    EXPECT_EQ(planned(lots, piecesOf({6.15})).placing, (Placing{0}));
    lots[0].source.length = mm(100); // less than the gap
    EXPECT_EQ(planned(lots, piecesOf({6.15})).placing, (Placing{std::nullopt}));
}

TEST(CutQueue, PullsOldEndsForward) {
    auto lots = lotsOf({131, 9});
    ASSERT_EQ(planned(lots, piecesOf({6.1})).placing, (Placing{0}));
    lots[1].source.pullMm = 300;
    EXPECT_EQ(planned(lots, piecesOf({6.1})).placing, (Placing{1}));
}

TEST(CutQueue, OfNothingIsNothing) {
    EXPECT_TRUE(planned({}, {}).placing.empty());
    EXPECT_EQ(planned({}, piecesOf({6})).placing, (Placing{std::nullopt}));
    EXPECT_EQ(planned(lotsOf({6, 7}), {}).lostMm, 0);
}

} // namespace
} // namespace rw::stock::test
