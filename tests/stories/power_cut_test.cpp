// SPDX-License-Identifier: GPL-3.0-or-later
// Job 2120 wants 11.2 m of K from K-7, which holds 60.0 m. The power goes as the cut is confirmed, and again as the
// job is finished: the process dies at its commit, an instant before or an instant after.
#include "tests/stories/child.h"
#include "tests/stories/dying_ledger.h"
#include "tests/stories/step.h"
#include "tests/stories/story.h"

#include "core/desk/bench.h"

#include <gtest/gtest.h>

#include <csignal>

using namespace rw;
using namespace rw::stories;
using namespace std::chrono_literals;

namespace {

constexpr CivilDate kToday = std::chrono::year(2026) / 5 / 14;

class PowerCut : public Story {
protected:
    void SetUp() override {
        Story::SetUp();
        write(ledger(), [&](desk::Transaction& open) -> Result<void> {
            (void)putOnShelf(open, shop(), "K-7", shop().kestrelline, mm(200'000), mm(60'000), at(kToday, 10h));
            (void)racket(open, customer(open, "Petra Lindobi"), shop().aldermoor98, "A");
            return {};
        });
        must(perform(ledger(), {.kind = Step::Kind::Log, .key = kKey, .what = "whole"}));
        must(perform(ledger(), {.kind = Step::Kind::Take, .key = kKey}));
    }

    /// The command is given in another process, which dies; then the ledger is opened again.
    void powerGoes(const Step& step, const std::string& when) {
        closeLedger();
        Child worker(STORIES_WORKER, {"die", when, place().address(), step.text()});
        ASSERT_EQ(worker.wait(), -SIGKILL);
        openLedger();
        // On a server the dead one's turn must have ended before anybody can say what it left.
        write(ledger(), [](desk::Transaction&) { return Result<void>(); });
    }

    [[nodiscard]] desk::JobCard card() {
        return read(ledger(),
                    [&](desk::Transaction& open) { return desk::jobCard(open, *jobOf(open, kKey).id, std::nullopt); });
    }

    [[nodiscard]] Length onK7() {
        return read(ledger(), [](desk::Transaction& open) { return Result<Lot>(lotTagged(open, "K-7")); }).length;
    }

    void expectDone(const Step& step) {
        const std::string before = everything();
        must(perform(ledger(), step));
        EXPECT_EQ(everything(), before) << "given again, it changed something";
    }

    static constexpr const char* kKey = "job-2120";
    const Step m_cut{.kind = Step::Kind::Cut, .key = kKey, .length = mm(11'200)};
    const Step m_finish{.kind = Step::Kind::Finish, .key = kKey};
};

TEST_P(PowerCut, BeforeTheCutIsKeptItIsNotCut) {
    powerGoes(m_cut, "before");
    EXPECT_FALSE(card().job.pieces.at(0).isCut());
    EXPECT_EQ(onK7(), mm(60'000));
    must(perform(ledger(), m_cut));
    EXPECT_EQ(onK7(), mm(48'800));
    expectDone(m_cut);
}

TEST_P(PowerCut, AfterTheCutIsKeptItIsCutAndConfirmingAgainChangesNothing) {
    powerGoes(m_cut, "after");
    EXPECT_TRUE(card().job.pieces.at(0).isCut());
    EXPECT_EQ(card().pieces.at(0).lot->tag, "K-7");
    EXPECT_EQ(onK7(), mm(48'800));
    expectDone(m_cut);
    EXPECT_EQ(onK7(), mm(48'800));
}

TEST_P(PowerCut, BeforeTheFinishIsKeptItIsOnTheMachine) {
    must(perform(ledger(), m_cut));
    powerGoes(m_finish, "before");
    EXPECT_EQ(card().job.state, JobState::OnTheMachine);
    EXPECT_FALSE(card().job.strung);
    EXPECT_EQ(onK7(), mm(48'800));
    must(perform(ledger(), m_finish));
    expectDone(m_finish);
}

TEST_P(PowerCut, AfterTheFinishIsKeptItIsStrung) {
    must(perform(ledger(), m_cut));
    powerGoes(m_finish, "after");
    EXPECT_EQ(card().job.state, JobState::Strung);
    EXPECT_EQ(card().job.strung->tensions, (TensionPair{lb(52), lb(50)}));
    EXPECT_EQ(onK7(), mm(48'800));
    expectDone(m_finish);
}

ON_BOTH_ENGINES(PowerCut);

} // namespace
