// SPDX-License-Identifier: GPL-3.0-or-later
// Two stations have one job on their screens, each over its own connection, and each changes something.
#include "tests/stories/story.h"

#include "core/desk/bench.h"
#include "core/desk/change_asked.h"
#include "core/desk/intake.h"

#include <gtest/gtest.h>

using namespace rw;
using namespace rw::stories;
using namespace std::chrono_literals;

namespace {

constexpr CivilDate kToday = std::chrono::year(2026) / 5 / 14;

class OneJob : public Story {
protected:
    void SetUp() override {
        Story::SetUp();
        const Job job = write(ledger(), [&](desk::Transaction& open) {
            (void)putOnShelf(open, shop(), "L-3", shop().larkspun, mm(200'000), mm(48'700), at(kToday, 10h));
            const CustomerId petra = customer(open, "Petra Lindobi");
            const RacketId hers = racket(open, petra, shop().aldermoor98, "A");
            return desk::logJob(open, {.requestKey = "petra",
                                       .customer = petra,
                                       .racket = hers,
                                       .draft = {.frame = shop().aldermoor98,
                                                 .racket = hers,
                                                 .method = Method::OnePiece,
                                                 .route = std::nullopt,
                                                 .shortSide = std::nullopt,
                                                 .mains = {.article = shop().larkspun, .lot = std::nullopt},
                                                 .crosses = std::nullopt,
                                                 .tensions = {lb(52), lb(50)},
                                                 .extras = {}},
                                       .note = "",
                                       .promised = std::nullopt,
                                       .by = shop().counter(at(kToday, 11h))});
        });
        m_job = job.id;
        (void)write(ledger(), [&](desk::Transaction& open) {
            return desk::takeJob(open, {*job.id, shop().benchA, shop().bench(at(kToday, 12h))});
        });
        m_counter = openAt(place().address());
    }
    void TearDown() override {
        m_counter.reset();
        Story::TearDown();
    }
    [[nodiscard]] desk::Ledger& bench() { return ledger(); }
    [[nodiscard]] desk::Ledger& counter() { return *m_counter; }
    [[nodiscard]] desk::JobCard cardAt(desk::Ledger& station) {
        return read(station, [&](desk::Transaction& open) { return desk::jobCard(open, *m_job, std::nullopt); });
    }
    Result<Job> ask(desk::Ledger& station, const TensionPair& seen, const TensionPair& wanted) {
        return tryWrite(station, [&](desk::Transaction& open) {
            return desk::changeAsked(open, {*m_job, seen, wanted, shop().counter(at(kToday, 12h + 5min))});
        });
    }
    Result<Job> step(desk::Ledger& station, BenchStep seen, BenchStep wanted) {
        return tryWrite(station, [&](desk::Transaction& open) {
            return desk::moveStep(open, {*m_job, seen, wanted, shop().bench(at(kToday, 12h + 6min))});
        });
    }

    std::optional<JobId> m_job;
    std::unique_ptr<desk::Ledger> m_counter;
};

TEST_P(OneJob, DifferentFactsBothSucceed) {
    const desk::JobCard seenAtTheBench = cardAt(bench());
    const desk::JobCard seenAtTheCounter = cardAt(counter());
    ASSERT_TRUE(ask(counter(), seenAtTheCounter.job.asked, {lb(51), lb(49)}));
    ASSERT_TRUE(step(bench(), seenAtTheBench.job.benchStep, BenchStep::Mains));
    ASSERT_TRUE(tryWrite(bench(), [&](desk::Transaction& open) {
        return desk::confirmCut(open, {*m_job, PieceRole::Whole, 1, std::nullopt, mm(10'800), std::nullopt,
                                       shop().bench(at(kToday, 12h + 7min))});
    }));
    for (desk::Ledger* station : {&bench(), &counter()}) {
        const desk::JobCard now = cardAt(*station);
        EXPECT_EQ(now.job.asked, (TensionPair{lb(51), lb(49)}));
        EXPECT_EQ(now.job.benchStep, BenchStep::Mains);
        EXPECT_TRUE(now.job.pieces.front().isCut());
        ASSERT_TRUE(now.change);
        EXPECT_EQ(now.change->before, (TensionPair{lb(52), lb(50)}));
        EXPECT_EQ(now.change->by, "Oriel Tamm");
    }
}

TEST_P(OneJob, OfTheSameFactTheSecondSeesBothValues) {
    const TensionPair seen = cardAt(counter()).job.asked;
    ASSERT_TRUE(ask(counter(), seen, {lb(51), lb(49)}));
    const auto second = ask(bench(), seen, {lb(50), lb(50)});
    ASSERT_FALSE(second);
    EXPECT_EQ(second.error().code(), Code::ChangedMeanwhile);
    EXPECT_EQ(second.error().text("mine"), "50 lb / 50 lb");
    EXPECT_EQ(second.error().text("theirs"), "51 lb / 49 lb");
    EXPECT_TRUE(ask(bench(), {lb(51), lb(49)}, {lb(50), lb(50)})) << "and chooses";

    ASSERT_TRUE(step(bench(), BenchStep::LookOver, BenchStep::Mains));
    const auto elsewhere = step(counter(), BenchStep::LookOver, BenchStep::Crosses);
    ASSERT_FALSE(elsewhere);
    EXPECT_EQ(elsewhere.error().text("mine"), "crosses");
    EXPECT_EQ(elsewhere.error().text("theirs"), "mains");
    EXPECT_EQ(cardAt(counter()).job.benchStep, BenchStep::Mains);
}

ON_BOTH_ENGINES(OneJob);

} // namespace
