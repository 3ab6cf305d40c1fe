// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/finished_piece.h"
#include "tests/core/length/requests.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

using namespace rw;
using namespace rw::length;

namespace {

using Outcome = FinishedPiece::Outcome;

FinishedPiece withTails(PieceRole role, double cutMm, double tailsMm) {
    return {.role = role, .cutMm = cutMm, .outcome = Outcome::Tails, .tailsLowMm = tailsMm, .tailsHighMm = tailsMm};
}

FinishedPiece ending(PieceRole role, double cutMm, Outcome outcome) {
    return {.role = role, .cutMm = cutMm, .outcome = outcome};
}

constexpr double kBackAnEnd = 300 - 60; // the default reach less what stays in the knot

Observation seen(const FinishedPiece& piece, double backMm = 2 * kBackAnEnd) {
    return observationOf(piece, 5500, backMm, "evidence[0]").value();
}

Result<CutPlan> planKnowing(CutRequest request, std::vector<FinishedPiece> finished) {
    request.finished = std::move(finished);
    return planCut(request);
}

// need = cut - tails + (reach - knot use) an end: a tail is what is left after the knot. 300 and 60 mm by default.
TEST(FinishedPiece, TailsTellTheNeed) {
    const FinishedPiece mains = withTails(PieceRole::Mains, 5800, 700);
    EXPECT_NEAR(seen(mains).low, std::log((5800 - 700 + 2 * 240) / 5500.0), 1e-12);
    EXPECT_TRUE(seen(mains).isExact());
    EXPECT_NEAR(seen(mains, kBackAnEnd).low, std::log((5800 - 700 + 240) / 5500.0), 1e-12);
    FinishedPiece inWords = mains;
    inWords.tailsLowMm = 150;
    EXPECT_NEAR(seen(inWords).low, std::log((5800 - 700 + 480) / 5500.0), 1e-12);
    EXPECT_NEAR(seen(inWords).high, std::log((5800 - 150 + 480) / 5500.0), 1e-12);
}

TEST(FinishedPiece, EnoughAndShortAreBounds) {
    const Observation enough = seen(ending(PieceRole::Mains, 5800, Outcome::Enough));
    EXPECT_TRUE(std::isinf(enough.low));
    EXPECT_NEAR(enough.high, std::log(5800 / 5500.0), 1e-12);
    FinishedPiece piece = ending(PieceRole::Mains, 5400, Outcome::Short);
    EXPECT_NEAR(seen(piece).low, std::log(5400 / 5500.0), 1e-12);
    EXPECT_TRUE(std::isinf(seen(piece).high));
    piece.shortByMm = 150;
    EXPECT_NEAR(seen(piece).low, std::log(5550 / 5500.0), 1e-12);
    EXPECT_TRUE(seen(piece).isExact());
}

TEST(FinishedPiece, ACoarserMeasureSaysLess) {
    FinishedPiece piece = withTails(PieceRole::Mains, 5800, 700);
    EXPECT_EQ(seen(piece).sd, kJobSpread);
    double last = kJobSpread;
    for (const MeasuredWith measure : {MeasuredWith::Tape, MeasuredWith::HeadLengths, MeasuredWith::ArmSpans}) {
        piece.measuredWith = measure;
        EXPECT_GT(seen(piece).sd, last);
        last = seen(piece).sd;
    }
    EXPECT_NEAR(last, std::hypot(kJobSpread, 0.01), 1e-12); // within 2 % is a standard deviation of 1 %
}

TEST(FinishedPiece, AReelsEndTellsOnlyThatItWasEnough) {
    FinishedPiece piece = withTails(PieceRole::Mains, 8000, 2900);
    EXPECT_TRUE(seen(piece).isExact());
    piece.reelEnd = true;
    EXPECT_FALSE(seen(piece).isExact());
    EXPECT_NEAR(seen(piece).high, std::log(8000 / 5500.0), 1e-12);
    const CutRequest request = inTwoPieces(defaultRequest(Sport::Tennis));
    const CutPlan before = planCut(request).value();
    const CutPlan after = planKnowing(request, {piece}).value();
    EXPECT_NEAR(after.pieces[0].quantilesMm.p99, before.pieces[0].quantilesMm.p99, 0.1);
}

TEST(FinishedPiece, ASlipIsRefusedByName) {
    const auto refused = [](const FinishedPiece& piece) {
        return observationOf(piece, 5500, 2 * kBackAnEnd, "evidence[3]").error().text("key");
    };
    EXPECT_EQ(refused(ending(PieceRole::Mains, 580, Outcome::Enough)), "evidence[3].cutMm");
    EXPECT_EQ(refused(withTails(PieceRole::Mains, 5800, 5700)), "evidence[3].tailsMm");
    EXPECT_EQ(refused(ending(PieceRole::Mains, 58'000, Outcome::Short)), "evidence[3].cutMm");
    EXPECT_TRUE(observationOf(ending(PieceRole::Mains, 58'000, Outcome::Enough), 5500, 480, "")); // true enough
}

bool says(const CutPlan& plan, Why::Kind kind, std::string_view text) {
    return std::ranges::any_of(plan.why, [&](const Why& why) { return why.kind == kind && why.text == text; });
}

TEST(Experience, MovesThePieceThatItIsOf) {
    const CutRequest request = inTwoPieces(defaultRequest(Sport::Tennis));
    const CutPlan before = planCut(request).value();
    const double cut = 5900;
    const double tails = cut + 480 - 1.04 * before.pieces[0].needMm; // four percent more than geometry says
    const std::vector<FinishedPiece> five(5, withTails(PieceRole::Mains, cut, tails));
    const CutPlan after = planKnowing(request, five).value();
    // Five jobs outweigh the belief: 5 / 0.015^2 against 1 / (0.025^2 + 0.02^2 + material).
    EXPECT_NEAR(after.pieces[0].needMm / before.pieces[0].needMm, 1.04, 0.003);
    EXPECT_EQ(after.pieces[0].predictedMm, before.pieces[0].needMm);
    EXPECT_LT(after.pieces[0].needSdMm, 0.6 * before.pieces[0].needSdMm);
    EXPECT_EQ(after.pieces[0].observations, 5);
    EXPECT_EQ(after.pieces[1].observations, 0);
    EXPECT_EQ(after.pieces[1].needMm, before.pieces[1].needMm);
    EXPECT_TRUE(says(after, Why::Kind::OwnJobs, "mains"));
    EXPECT_TRUE(says(after, Why::Kind::OwnNeeds, "mains"));
    EXPECT_TRUE(says(after, Why::Kind::Corrected, "mains"));
    EXPECT_TRUE(says(after, Why::Kind::GeometryOnly, "crosses"));
    EXPECT_FALSE(says(before, Why::Kind::GeometryOnly, "mains"));
    EXPECT_TRUE(says(before, Why::Kind::GeometryOnly, ""));
}

TEST(Experience, ShortSideAndWholeEachHaveTheirOwn) {
    const CutRequest request = inOnePiece(defaultRequest(Sport::Tennis), "plain-2");
    const CutPlan before = planCut(request).value();
    const PiecePlan& first = before.pieces[0];
    const auto needed = [&](double need, int pulled) {
        const double cut = 1.05 * need;
        return withTails(PieceRole::Whole, cut, cut + pulled * 240 - need);
    };
    FinishedPiece shortSide = needed(1.03 * first.shortSide->needMm, 1);
    shortSide.shortSide = true;
    const CutPlan ofShortSide = planKnowing(request, std::vector<FinishedPiece>(20, shortSide)).value();
    EXPECT_NEAR(ofShortSide.pieces[0].shortSide->needMm, 1.03 * first.shortSide->needMm, 5);
    EXPECT_EQ(ofShortSide.pieces[0].needMm, first.needMm);
    EXPECT_EQ(ofShortSide.pieces[0].shortSide->observations, 20);
    const auto margin = [](const ShortSide& side) { return side.measure.metres() * 1000 - side.needMm; };
    EXPECT_LT(margin(*ofShortSide.pieces[0].shortSide), margin(*first.shortSide));
    EXPECT_LE(ofShortSide.pieces[0].shortSide->chanceShort, 0.005);

    const CutPlan ofWhole =
        planKnowing(request, std::vector<FinishedPiece>(20, needed(0.97 * first.needMm, 2))).value();
    EXPECT_NEAR(ofWhole.pieces[0].needMm, 0.97 * first.needMm, 10);
    EXPECT_EQ(ofWhole.pieces[0].shortSide->needMm, first.shortSide->needMm);
    EXPECT_LT(ofWhole.pieces[0].cut, first.cut);
}

// Only a first cut is held at the usual packet: a shop that has seen a frame need more cuts more.
TEST(Experience, IsNotHeldAtThePacket) {
    CutRequest request = inTwoPieces(of(headOf(Sport::Tennis, 340, 255, 16, 19), Material::Polyester));
    const CutPlan first = planCut(request).value();
    ASSERT_TRUE(first.pieces[0].heldAtPacket);
    std::vector<FinishedPiece> shorts;
    for (int i = 0; i < 3; ++i) {
        shorts.push_back(
            ending(PieceRole::Mains, static_cast<double>(first.pieces[0].cut.millimetres()), Outcome::Short));
    }
    const CutPlan next = planKnowing(request, shorts).value();
    EXPECT_FALSE(next.pieces[0].heldAtPacket);
    EXPECT_GT(cutOf(next).millimetres(), 12'200);
    EXPECT_LE(next.chanceShortJob, request.ceiling);
}

TEST(Experience, OfAPieceThatTheJobDoesNotHaveIsRefused) {
    const std::vector<FinishedPiece> mains{ending(PieceRole::Whole, 11'500, Outcome::Enough),
                                           ending(PieceRole::Mains, 5800, Outcome::Enough)};
    const auto plan = planKnowing(inOnePiece(defaultRequest(Sport::Tennis), "plain-2"), mains);
    ASSERT_FALSE(plan);
    EXPECT_EQ(plan.error().text("key"), "evidence[1].piece");
    EXPECT_EQ(plan.error().text("text"), "mains");
    EXPECT_TRUE(plan.error().text("expected").starts_with("whole or short side"));
}

} // namespace
