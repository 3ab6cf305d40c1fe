// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/intake_plan.h"
#include "core/desk/lessons.h"
#include "tests/core/desk/demo_fixture.h"

#include <gmock/gmock.h>

#include <cmath>

// What the shop's own cuts teach, and where it is used.
namespace rw::desk::test {
namespace {

using testing::IsEmpty;
using testing::SizeIs;

class Learning : public DemoEverywhere {
protected:
    void SetUp() override {
        DemoEverywhere::SetUp();
        ASSERT_TRUE(receive(delivery("L", "L-9", metres(200)))); // there is much to string
    }
    struct Ended {
        Length mainsTail;
        Length crossesTail;
    };
    /// A two-piece job of one string, cut as proposed and strung; `tails` where they were measured.
    void strung(const RacketSummary& racket, std::string_view string, const std::optional<Ended>& tails) {
        IntakeDraft draft = draftFor(racket, string, string, "52", "50");
        draft.method = Method::TwoPiece;
        const Job job = logged(racket, draft, "learning " + std::to_string(++m_jobs));
        EXPECT_TRUE(take(*job.id));
        for (const JobPiece& piece : job.pieces) {
            EXPECT_TRUE(cut(cutting(*job.id, piece.role, piece.planned)));
        }
        FinishJob command{*job.id, job.asked, *machine("Bench A").id, {}, by()};
        if (tails) {
            command.tails = {{PieceRole::Mains, false, Tails::measured(tails->mainsTail)},
                             {PieceRole::Crosses, false, Tails::measured(tails->crossesTail)}};
        }
        EXPECT_TRUE(write([&](Transaction& t) { return finishJob(t, command); }));
    }
    IntakePreview proposal(const RacketSummary& racket, std::string_view string) {
        IntakeDraft draft = draftFor(racket, string, string, "52", "50");
        draft.method = Method::TwoPiece;
        return *preview(draft);
    }
    /// A frame that nobody has strung here, brought by somebody who is known.
    RacketSummary freshFrame(std::string_view name) {
        FrameModel frame = racketOf("Ferreday", "Aldermoor 98").frame;
        frame.id = std::nullopt;
        frame.name = name;
        const CustomerId customer = personCalled("Ferreday").customer.id.value();
        return write([&](Transaction& t) -> Result<RacketSummary> {
                   frame.id = t.frames().add(frame);
                   RacketSummary summary{
                       .racket = {std::nullopt, customer, *frame.id, ""}, .frame = frame, .lastJob = {}, .newest = {}};
                   summary.racket.id = t.customers().addRacket(summary.racket, name);
                   return summary;
               })
            .value();
    }

    int m_jobs = 0;
};
IN_MEMORY_AND_ON_BOTH_ENGINES(Learning);

constexpr double kBackMm = 300 - 60; // what a pulled end gives back: the reach less the knot (length model's defaults)

TEST_P(Learning, WhereNothingIsToldGeometryAnswersAsEver) {
    const RacketSummary fresh = freshFrame("Sorrel 98");
    const IntakePreview shown = proposal(fresh, "L");
    length::CutRequest request = requestFor(fresh.frame, string("L"), string("L"), {lb("52"), lb("50")},
                                            look([](Transaction& t) { return readSettings(t.shop()); }));
    request.method = Method::TwoPiece;
    const auto alone = length::planCut(request);
    ASSERT_TRUE(alone.has_value());
    for (std::size_t i = 0; i < 2; ++i) {
        EXPECT_EQ(shown.pieces[i].cutFrom, CutFrom::Geometry);
        EXPECT_EQ(shown.pieces[i].cut, alone->pieces[i].cut);
        EXPECT_EQ(shown.plan.pieces[i].needMm, alone->pieces[i].needMm);
        EXPECT_EQ(shown.plan.pieces[i].chanceShort, alone->pieces[i].chanceShort);
    }
}

TEST_P(Learning, FiveToldTailsReplaceTheUsualCutAndFourDoNot) {
    const RacketSummary teaching = racketOf("Ferreday", "Aldermoor 98");
    const RacketSummary learning = racketOf("Lindobi", "Aldermoor 98", "A");
    const double before = proposal(learning, "L").plan.pieces[0].needSdMm;
    for (int i = 0; i < 4; ++i) {
        strung(teaching, "L", Ended{metres(1.0), metres(0.7)});
    }
    EXPECT_EQ(proposal(learning, "L").pieces[0].cutFrom, CutFrom::UsualCut);
    EXPECT_EQ(proposal(learning, "L").pieces[0].cut, metres(6.2));
    strung(teaching, "L", Ended{metres(1.0), metres(0.7)});
    const IntakePreview shown = proposal(learning, "L");
    const length::PiecePlan& mains = shown.plan.pieces[0];
    EXPECT_EQ(shown.pieces[0].cutFrom, CutFrom::OwnCuts);
    EXPECT_EQ(mains.measured, 5);
    // Each needed its cut, less the tail, and what two pulled ends gave back.
    EXPECT_NEAR(mains.needMm, 6200 - 1000 + 2 * kBackMm, 60);
    EXPECT_LT(mains.needSdMm, before);
    EXPECT_LT(shown.pieces[0].cut, metres(6.2)) << "tails of a metre are string thrown away";
    EXPECT_GT(static_cast<double>(shown.pieces[0].cut.millimetres()), mains.needMm);
    EXPECT_LE(mains.chanceShort, 0.005) << "the owner's ceiling of a hundredth, shared by two pieces";
    EXPECT_EQ(proposal(teaching, "L").pieces[0].cutFrom, CutFrom::LastTime) << "as agreed: what held on this racket";
}

TEST_P(Learning, JobsOfWhichNobodyNotedMoreReplaceNothing) {
    const RacketSummary teaching = racketOf("Ferreday", "Aldermoor 98");
    for (int i = 0; i < 6; ++i) {
        strung(teaching, "L", std::nullopt);
    }
    const IntakePreview shown = proposal(racketOf("Lindobi", "Aldermoor 98", "A"), "L");
    EXPECT_EQ(shown.pieces[0].cutFrom, CutFrom::UsualCut);
    EXPECT_GE(shown.plan.pieces[0].observations, 6) << "but the model has heard of them";
    EXPECT_EQ(shown.plan.pieces[0].measured, 0);
}

TEST_P(Learning, AFrameWithoutAUsualCutLearnsFromItsFirstJob) {
    const RacketSummary fresh = freshFrame("Sorrel 98");
    const IntakePreview first = proposal(fresh, "L");
    strung(fresh, "L", Ended{metres(0.3), metres(0.3)});
    IntakeDraft others = draftFor(fresh, "L", "L", "52", "50");
    others.racket = std::nullopt; // another racket of the same frame
    others.method = Method::TwoPiece;
    const auto second = preview(others);
    EXPECT_EQ(second->pieces[0].cutFrom, CutFrom::OwnCuts);
    const length::PiecePlan& mains = second->plan.pieces[0];
    const double needed = static_cast<double>(first.pieces[0].cut.millimetres()) - 300 + 2 * kBackMm;
    EXPECT_LT(std::abs(mains.needMm - needed), std::abs(mains.predictedMm - needed)) << "nearer to what it needed";
}

// Closed form, normal and normal: r of the group's mean with variance frame² + job²/n against the shop's own spread.
TEST_P(Learning, TailsOnOneFrameSayHowFarTheShopIsOffOnAnother) {
    const RacketSummary teaching = racketOf("Ferreday", "Aldermoor 98");
    for (int i = 0; i < 3; ++i) {
        strung(teaching, "L", Ended{metres(0.9), metres(0.6)});
    }
    const length::PiecePlan taught = proposal(teaching, "L").plan.pieces[0];
    const double r = std::log((6200 - 900 + 2 * kBackMm) / taught.predictedMm);
    const double said = 1 / (0.02 * 0.02 + 0.015 * 0.015 / 3);
    const double bias = r * said / (said + 1 / (0.025 * 0.025));
    const IntakePreview shown = proposal(freshFrame("Sorrel 98"), "L");
    const length::PiecePlan& mains = shown.plan.pieces[0];
    EXPECT_EQ(shown.pieces[0].cutFrom, CutFrom::OtherFrames);
    EXPECT_EQ(mains.shopCuts, 3);
    EXPECT_NEAR(mains.shopBias, bias, 1e-12);
    EXPECT_NEAR(mains.needMm / mains.predictedMm, std::exp(bias), 1e-9);
    EXPECT_EQ(proposal(racketOf("Hallerby", "Pellow Feather"), "W").plan.pieces[0].shopCuts, 0) << "another sport";
}

TEST_P(Learning, AnotherMaterialIsAnotherGroup) {
    const RacketSummary teaching = racketOf("Ferreday", "Aldermoor 98");
    strung(teaching, "L", Ended{metres(0.9), metres(0.6)});
    const IntakePreview polyester = proposal(racketOf("Lindobi", "Aldermoor 98", "A"), "K");
    EXPECT_EQ(polyester.plan.pieces[0].measured, 0);
    EXPECT_EQ(polyester.plan.pieces[0].shopCuts, 1) << "but the same tape and the same hands";
}

TEST_P(Learning, AReelsEndIsNoHabit) {
    const RacketSummary racket = racketOf("Ferreday", "Aldermoor 98");
    const Job job = logged(racket, draftFor(racket, "K", "L", "50", "52"), "end");
    ASSERT_TRUE(take(*job.id));
    ConfirmCut mains = cutting(*job.id, PieceRole::Mains, metres(6.35));
    mains.lot = lot("K-2").id;
    mains.measuredLeft = metres(6.35);
    ASSERT_TRUE(cut(mains));
    ASSERT_TRUE(cut(cutting(*job.id, PieceRole::Crosses, metres(5.6))));
    const FinishJob command{*job.id,
                            job.asked,
                            *machine("Bench A").id,
                            {},
                            by(),
                            {{PieceRole::Mains, false, Tails::measured(metres(0.2))},
                             {PieceRole::Crosses, false, Tails::measured(metres(0.2))}}};
    ASSERT_TRUE(write([&](Transaction& t) { return finishJob(t, command); }));
    const auto shown = preview(draftFor(racket, "K", "L", "50", "52"));
    EXPECT_EQ(shown->plan.pieces[0].measured, 0) << "whatever was left of it, it was only enough";
    EXPECT_EQ(shown->plan.pieces[1].measured, 1);
}

TEST_P(Learning, WhatCameShortNeedsMore) {
    const RacketSummary fresh = freshFrame("Sorrel 98");
    IntakeDraft draft = draftFor(fresh, "L", "L", "52", "50");
    draft.method = Method::TwoPiece;
    const double before = preview(draft)->plan.pieces[1].needMm;
    const Job job = logged(fresh, draft, "short");
    ASSERT_TRUE(take(*job.id));
    ASSERT_TRUE(cut(cutting(*job.id, PieceRole::Crosses, job.pieces[1].planned)));
    ASSERT_TRUE(lose(*job.id, PieceRole::Crosses, 1, LostReason::CameShort));
    const auto shown = preview(draft);
    EXPECT_GT(shown->plan.pieces[1].needMm, before * 1.02);
    EXPECT_GT(shown->pieces[1].cut, job.pieces[1].planned);
    EXPECT_EQ(shown->plan.pieces[0].observations, 0) << "of the mains nothing is told yet";
}

TEST_P(Learning, AShortSideIsToldByItsRoute) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    const IntakeDraft draft = draftFor(racket, "L", "L", "52", "50");
    const Job job = logged(racket, draft, "one piece");
    ASSERT_TRUE(take(*job.id));
    ASSERT_TRUE(cut(cutting(*job.id, PieceRole::Whole, metres(10.8))));
    const FinishJob command{*job.id,
                            job.asked,
                            *machine("Bench A").id,
                            {},
                            by(),
                            {{PieceRole::Whole, true, Tails::measured(metres(0.3))},
                             {PieceRole::Whole, false, Tails::measured(metres(0.8))}}};
    ASSERT_TRUE(write([&](Transaction& t) { return finishJob(t, command); }));
    const auto told = read([&](Transaction& t) -> Result<std::vector<ToldNeed>> {
        return toldFor(t, racket.frame, t.strings().all(), readSettings(t.shop()));
    });
    const auto ofRoute = [&](std::string_view route) {
        return experienceFor(*told, *racket.frame.id, Material::Multifilament, Material::Multifilament, route);
    };
    const auto exact = [](const length::Learnt& learnt) {
        return std::ranges::count_if(learnt.seen, &length::Observation::isExact);
    };
    EXPECT_EQ(exact(ofRoute(job.route).shortSide), 1);
    EXPECT_EQ(exact(ofRoute("plain-2").shortSide), 0);
    EXPECT_EQ(exact(ofRoute("plain-2").whole), 1) << "totals of one-piece routes are pooled";
}

TEST_P(Learning, TheCardStandsOnTheSameCuts) {
    const RacketSummary fresh = freshFrame("Sorrel 98");
    strung(fresh, "L", Ended{metres(0.5), metres(0.4)});
    IntakeDraft draft = draftFor(fresh, "L", "L", "52", "50");
    draft.method = Method::TwoPiece;
    const Job next = logged(fresh, draft, "next");
    const JobCard shown = card(*next.id);
    EXPECT_EQ(shown.plan.pieces[0].measured, 1);
    EXPECT_EQ(shown.plan.pieces[0].needMm, preview(draft)->plan.pieces[0].needMm);
}

TEST_P(Learning, LessonsNameEachGroupOnce) {
    const RacketSummary teaching = racketOf("Ferreday", "Aldermoor 98");
    strung(teaching, "L", Ended{metres(0.9), metres(0.6)});
    strung(teaching, "L", Ended{metres(0.8), metres(0.6)});
    const auto taught = read([](Transaction& t) { return lessons(t); });
    ASSERT_TRUE(taught.has_value());
    ASSERT_THAT(taught->parts, SizeIs(2)) << "tails were told of tennis mains and crosses only";
    EXPECT_EQ(taught->parts[0].cuts, 2);
    EXPECT_EQ(taught->parts[0].groups, 1);
    const auto mains = std::ranges::find_if(taught->frames, [](const FrameLesson& lesson) {
        return lesson.frame == "Aldermoor 98" && lesson.group.role == PieceRole::Mains &&
               lesson.group.material == Material::Multifilament;
    });
    ASSERT_NE(mains, taught->frames.end());
    EXPECT_EQ(mains->measured, 2);
    EXPECT_EQ(mains->bias.mean, 0) << "no other group tells anything";
    const length::PiecePlan plan = proposal(teaching, "L").plan.pieces[0];
    EXPECT_NEAR(mains->effect, plan.frameEffect, 1e-12);
    const auto same = [&](const FrameLesson& other) { return other.group == mains->group; };
    EXPECT_EQ(std::ranges::count_if(taught->frames, same), 1);
    const bool squash =
        std::ranges::any_of(taught->frames, [](const FrameLesson& lesson) { return lesson.sport == Sport::Squash; });
    EXPECT_TRUE(squash) << "jobs without tails tell that they were enough";
}

} // namespace
} // namespace rw::desk::test
