// SPDX-License-Identifier: GPL-3.0-or-later
// Dario Penhallow brings two Corran Drop 500s and then a Tarn Ridge 100, whose side is forced.
#include "tests/stories/story.h"

#include "core/desk/bench.h"
#include "core/desk/counter.h"
#include "core/desk/intake.h"
#include "core/desk/running_short.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

using namespace rw;
using namespace rw::stories;
using namespace std::chrono_literals;

namespace {

constexpr CivilDate kToday = std::chrono::year(2026) / 5 / 14;

class Squash : public Story {
protected:
    void SetUp() override {
        Story::SetUp();
        write(ledger(), [&](desk::Transaction& open) -> Result<void> {
            const Instant morning = at(kToday, 10h);
            // What T usually takes is known from a job that is done.
            (void)putOnShelf(open, shop(), "T-1", shop().tarnweave, mm(100'000), mm(36'900), morning);
            (void)putOnShelf(open, shop(), "K-7", shop().kestrelline, mm(200'000), mm(60'000), morning);
            const CustomerId somebody = customer(open, "Marisa Oakenfold");
            const Job before = must(desk::logJob(
                open, request(racket(open, somebody, shop().corranDrop), somebody, shop().corranDrop, std::nullopt)));
            string(open, before, mm(9'300));
            m_dario = customer(open, "Dario Penhallow");
            m_first = racket(open, *m_dario, shop().corranDrop, "A");
            m_second = racket(open, *m_dario, shop().corranDrop, "B");
            m_ridge = racket(open, *m_dario, shop().tarnRidge);
            return {};
        });
    }

    [[nodiscard]] desk::LogJob request(RacketId which, CustomerId owner, FrameModelId frame,
                                       std::optional<Side> side) const {
        const bool ridge = frame == shop().tarnRidge;
        return {.requestKey = "job-" + std::to_string(which.value()),
                .customer = owner,
                .racket = which,
                .draft = {.frame = frame,
                          .racket = which,
                          .method = Method::OnePiece,
                          .route = std::nullopt,
                          .shortSide = side,
                          .mains = {.article = ridge ? shop().kestrelline : shop().tarnweave, .lot = std::nullopt},
                          .crosses = std::nullopt,
                          .tensions = ridge ? TensionPair{lb(55), lb(55)} : TensionPair{lb(26), lb(26)},
                          .extras = {}},
                .note = "",
                .promised = std::nullopt,
                .by = shop().counter(at(kToday, 11h))};
    }

    void string(desk::Transaction& open, const Job& job, Length cut) const {
        const By by = shop().bench(at(kToday, 12h));
        (void)must(desk::takeJob(open, {*job.id, shop().benchA, by}));
        (void)must(desk::confirmCut(open, {*job.id, PieceRole::Whole, 1, std::nullopt, cut, std::nullopt, by}));
        (void)must(desk::finishJob(open, {*job.id, job.asked, shop().benchA, "", by}));
    }

    [[nodiscard]] Job log(RacketId which, FrameModelId frame, std::optional<Side> side = std::nullopt) {
        return write(ledger(), [&](desk::Transaction& open) {
            return desk::logJob(open, request(which, *m_dario, frame, side));
        });
    }

    [[nodiscard]] desk::JobCard card(const Job& job) {
        return read(ledger(), [&](desk::Transaction& open) { return desk::jobCard(open, *job.id, shop().benchA); });
    }

    [[nodiscard]] desk::ShelfString shelfOf(StringArticleId article) {
        const auto strings = read(ledger(), [](desk::Transaction& open) { return desk::shelfAhead(open, at(kToday, 13h)); });
        return *std::ranges::find(strings, std::optional(article),
                                  [](const desk::ShelfString& each) { return each.article.id; });
    }

    std::optional<CustomerId> m_dario;
    std::optional<RacketId> m_first;
    std::optional<RacketId> m_second;
    std::optional<RacketId> m_ridge;
};

TEST_P(Squash, TwoJobsAreOnTheReelAndAThirdWouldBeShort) {
    const auto tarnweave = shelfOf(shop().tarnweave);
    EXPECT_EQ(tarnweave.perJob, mm(9'300));
    ASSERT_EQ(tarnweave.lots.size(), 1U);
    EXPECT_EQ(tarnweave.lots[0].lot.length, mm(27'600));
    EXPECT_EQ(tarnweave.lots[0].whole.jobs, 2);
    EXPECT_EQ(tarnweave.lots[0].whole.nextShortBy, mm(300));
    EXPECT_EQ(tarnweave.wholeJobsFree, 2);
    EXPECT_FALSE(tarnweave.runningShort());
    (void)log(*m_first, shop().corranDrop);
    EXPECT_TRUE(shelfOf(shop().tarnweave).runningShort()); // one job is free, the shop wants two
    EXPECT_EQ(shelfOf(shop().tarnweave).lots[0].whole.jobs, 1) << "what is promised is nobody else's";
}

TEST_P(Squash, TheCardGivesTheCutAndTheShortSide) {
    const auto first = card(log(*m_first, shop().corranDrop));
    EXPECT_EQ(first.job.route, "plain-2");
    EXPECT_EQ(first.job.asked, (TensionPair{lb(26), lb(26)}));
    EXPECT_EQ(first.pieces.at(0).piece.planned, mm(9'300));
    EXPECT_EQ(first.pieces.at(0).lot->tag, "T-1");
    EXPECT_EQ(first.pieces.at(0).leavesOnLot, mm(18'300));
    ASSERT_TRUE(first.shortSide);
    EXPECT_EQ(first.shortSide->measure, mm(2'900));
    EXPECT_EQ(first.shortSide->topCrosses, 2);
    EXPECT_EQ(std::lround(first.shortSide->headLengths), 8);
}

TEST_P(Squash, TheTwinGetsTheSideOfTheFirst) {
    EXPECT_EQ(log(*m_first, shop().corranDrop, Side::Right).shortSide, Side::Right);
    const auto second = card(log(*m_second, shop().corranDrop));
    EXPECT_EQ(second.shortSide->side, Side::Right);
    EXPECT_EQ(second.shortSide->from, desk::SideFrom::Twin);
    EXPECT_EQ(second.shortSide->because, "A");
    EXPECT_EQ(second.job.route, "plain-2");
}

TEST_P(Squash, AFrameThatForcesItsSideSaysWhyAndByWhichMark) {
    (void)log(*m_first, shop().corranDrop, Side::Left);
    const Job job = log(*m_ridge, shop().tarnRidge);
    const auto ridge = card(job);
    EXPECT_EQ(ridge.pieces.at(0).piece.planned, mm(11'700));
    EXPECT_EQ(ridge.shortSide->side, Side::Right);
    EXPECT_EQ(ridge.shortSide->from, desk::SideFrom::Frame);
    EXPECT_EQ(ridge.shortSide->because, "groove in the strip");
    EXPECT_EQ(ridge.shortSide->mountingMark, "butt-cap logo up");
    EXPECT_FALSE(ridge.shortSide->againstChoice);
}

TEST_P(Squash, ASideChosenAgainstTheFrameIsTheOneThingToWarnOf) {
    const auto warned = read(ledger(), [&](desk::Transaction& open) {
        return desk::previewIntake(open, request(*m_ridge, *m_dario, shop().tarnRidge, Side::Left).draft,
                                   at(kToday, 11h));
    });
    EXPECT_EQ(warned.shortSide->side, Side::Right);
    EXPECT_TRUE(warned.shortSide->againstChoice);
}

ON_BOTH_ENGINES(Squash);

} // namespace
