// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/frames.h"

#include "tests/core/desk/demo_fixture.h"

#include <gmock/gmock.h>

#include <algorithm>

// What the shop knows of a frame, as the owner writes it.
namespace rw::desk::test {
namespace {

class Frames : public DemoEverywhere {
protected:
    FrameModel frame(std::string_view name) {
        return look([&](Transaction& t) { return t.frames().find(name, 1); }).front();
    }
    Result<FrameModel> keep(const FrameModel& wanted) {
        return write([&](Transaction& t) { return keepFrame(t, wanted); });
    }
    Result<void> keep(const UsualCut& cut) {
        return write([&](Transaction& t) { return keepUsualCut(t, cut); });
    }
    KnownFrame known(FrameModelId id) {
        return read([&](Transaction& t) { return knownFrame(t, id); }).value();
    }
    static UsualCut whole(FrameModelId frame, double cut, std::string route = "plain-2") {
        return {frame, PieceRole::Whole, std::nullopt, std::move(route), metres(cut), std::nullopt};
    }
};
IN_MEMORY_AND_ON_BOTH_ENGINES(Frames);

TEST_P(Frames, OneIsChangedInEverything) {
    FrameModel changed = frame("Aldermoor 110");
    changed.name = " Aldermoor 110 L ";
    changed.hoop.lengthMm = 340;
    changed.hoop.widthMm = 262;
    changed.hoop.headAreaCm2.reset();
    changed.pattern.mains = 16;
    changed.pattern.crosses = 20;
    changed.marked = {lb("46"), lb("56")};
    changed.note.forcedSide = ForcedSide{Side::Right, " groove in the strip "};
    changed.note.mountingMark = "";
    changed.note.crossesFromThroatAllowed = true;
    changed.note.text = "awl for 7H";
    const auto kept = keep(changed);
    ASSERT_TRUE(kept);
    EXPECT_EQ(frame("Aldermoor 110 L"), *kept);
    EXPECT_EQ(kept->name, "Aldermoor 110 L");
    EXPECT_EQ(kept->pattern.crosses, 20);
    EXPECT_EQ(kept->note.forcedSide->reason, "groove in the strip");
    EXPECT_EQ(kept->note.mountingMark, BenchNote().mountingMark) << "left and right must mean something";
}

TEST_P(Frames, ANewOneIsAddedOnce) {
    FrameModel fresh;
    fresh.name = "Fennel Prow 102";
    const auto added = keep(fresh);
    const auto again = keep(fresh);
    ASSERT_TRUE(added && again);
    EXPECT_EQ(added->id, again->id);
    fresh.pattern.mains = 18;
    EXPECT_NE(keep(fresh)->id, added->id) << "the same name with another pattern is another frame";
}

TEST_P(Frames, OfTwoThatChangeOneTheSecondIsTold) {
    FrameModel mine = frame("Aldermoor 98");
    FrameModel theirs = mine;
    theirs.note.text = "tight at 7H";
    ASSERT_TRUE(keep(theirs));
    mine.note.text = "loose at 7H";
    const auto second = keep(mine);
    ASSERT_FALSE(second);
    EXPECT_EQ(second.error().code(), Code::ChangedMeanwhile);
    EXPECT_EQ(frame("Aldermoor 98").note.text, "tight at 7H");
}

TEST_P(Frames, WhatNoFrameCanBeIsRefused) {
    const auto refused = [&](auto spoil) {
        FrameModel changed = frame("Aldermoor 98");
        spoil(changed);
        const auto kept = keep(changed);
        EXPECT_FALSE(kept);
        return kept ? Refusal(Code::NotEnoughString) : kept.error();
    };
    EXPECT_EQ(refused([](FrameModel& f) { f.name = ""; }).text("what"), "frame");
    EXPECT_EQ(refused([](FrameModel& f) { f.name = std::string(81, 'f'); }).code(), Code::TooLong);
    EXPECT_EQ(refused([](FrameModel& f) { f.pattern.mains = 31; }).text("key"), "pattern.mains");
    EXPECT_EQ(refused([](FrameModel& f) { f.hoop.lengthMm = 900; }).text("key"), "hoop.lengthMm");
    EXPECT_EQ(refused([](FrameModel& f) { f.marked = {lb("60"), lb("50")}; }).text("key"), "marked range");
    EXPECT_EQ(refused([](FrameModel& f) { f.note.text = std::string(2001, 'n'); }).text("what"), "bench note");
    EXPECT_EQ(refused([](FrameModel& f) {
                  f.note.forcedSide = ForcedSide{Side::Left, std::string(201, 'r')};
              }).text("what"),
              "reason");
    EXPECT_EQ(refused([](FrameModel& f) { f.id = FrameModelId::of(999'999); }).code(), Code::NotFound);
}

TEST_P(Frames, AJobThatWaitsCanStillBeLaid) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    IntakeDraft draft = draftFor(racket, "K", "K", "52", "52");
    draft.method = Method::OnePiece;
    draft.route = "plain-2";
    const Job job = logged(racket, draft, "laid");
    FrameModel turned = frame("Aldermoor 98");
    turned.pattern.mainsStart = HoopEnd::Throat;
    const auto refused = keep(turned);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().text("key"), "pattern");
    EXPECT_THAT(refused.error().text("expected"), testing::HasSubstr(std::to_string(job.number)));
    turned.pattern.mainsStart = HoopEnd::Head;
    turned.note.text = "anything else";
    EXPECT_TRUE(keep(turned));
    EXPECT_TRUE(read([&](Transaction& t) { return jobCard(t, *job.id, std::nullopt); }));
}

TEST_P(Frames, TheCardOfAStrungJobOpensOnACorrectedFrame) {
    FrameModel fresh; // of which nothing waits
    fresh.name = "Fennel Prow 102";
    const AddRacket add{"hers", *personCalled("Lindobi").customer.id, *keep(fresh)->id, ""};
    ASSERT_TRUE(write([&](Transaction& t) { return addRacket(t, add); }));
    const RacketSummary racket = racketOf("Lindobi", fresh.name);
    IntakeDraft draft = draftFor(racket, "K", "K", "52", "52");
    draft.method = Method::OnePiece;
    draft.route = "plain-2";
    const Job job = logged(racket, draft, "strung before");
    ASSERT_TRUE(take(*job.id));
    ASSERT_TRUE(cut(cutting(*job.id, PieceRole::Whole, metres(11.2))));
    ASSERT_TRUE(finish(*job.id, job.asked));
    FrameModel turned = frame(fresh.name);
    turned.pattern.mainsStart = HoopEnd::Throat;
    ASSERT_TRUE(keep(turned));
    const auto opened = read([&](Transaction& t) { return jobCard(t, *job.id, std::nullopt); });
    ASSERT_TRUE(opened);
    EXPECT_EQ(opened->job.route, "plain-2") << "what was done stays what was done";
    EXPECT_EQ(opened->plan.mainsStart, HoopEnd::Throat);
}

TEST_P(Frames, AUsualCutIsKeptAndForgotten) {
    const auto id = *frame("Aldermoor 98").id;
    const auto before = known(id).usualCuts.size();
    UsualCut cut = whole(id, 11.3);
    cut.material = Material::Aramid;
    cut.shortSide = metres(3.1);
    ASSERT_TRUE(keep(cut));
    EXPECT_EQ(known(id).usualCuts.size(), before + 1);
    cut.cut = metres(11.4);
    ASSERT_TRUE(keep(cut));
    EXPECT_EQ(known(id).usualCuts.size(), before + 1) << "in place of the first";
    ASSERT_TRUE(write([&](Transaction& t) { return dropUsualCut(t, cut); }));
    EXPECT_EQ(known(id).usualCuts.size(), before);
    UsualCut anyMaterial{id, PieceRole::Mains, std::nullopt, "", metres(6.2), std::nullopt};
    ASSERT_TRUE(write([&](Transaction& t) { return dropUsualCut(t, anyMaterial); }));
    EXPECT_EQ(known(id).usualCuts.size(), before - 1);
}

TEST_P(Frames, AUsualCutThatCannotBeIsRefused) {
    const auto id = *frame("Aldermoor 98").id;
    EXPECT_EQ(keep(whole(id, 0.9)).error().text("what"), "cut");
    EXPECT_EQ(keep(whole(id, 30.1)).error().text("what"), "cut");
    EXPECT_EQ(refusalOf(keep(whole(id, 11, "round-about"))), Code::RouteUnknown);
    EXPECT_EQ(refusalOf(keep(whole(id, 11, "wrap-first-2"))), Code::RouteDoesNotFit);
    UsualCut mains{id, PieceRole::Mains, std::nullopt, "plain-2", metres(6), std::nullopt};
    EXPECT_EQ(keep(mains).error().text("key"), "route");
    mains.route = "";
    mains.shortSide = metres(3);
    EXPECT_EQ(keep(mains).error().text("key"), "short side");
    UsualCut allShort = whole(id, 11);
    allShort.shortSide = metres(11);
    EXPECT_EQ(keep(allShort).error().text("key"), "short side");
    EXPECT_EQ(refusalOf(keep(whole(FrameModelId::of(999'999), 11))), Code::NotFound);
}

} // namespace
} // namespace rw::desk::test
