// SPDX-License-Identifier: GPL-3.0-or-later
// The shop does whatever it can in any order, and after each thousand commands the ledger must be whole. Two thousand
// commands an engine, more would take longer than all other stories; a hundred thousand with REELWRIGHT_LONG=1, then
// with a seed of its own (REELWRIGHT_SEED=N does a run again).
#include "tests/stories/kill_moments.h"
#include "tests/stories/random_work.h"
#include "tests/stories/story.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <iostream>

using namespace rw;
using namespace rw::stories;

namespace {

constexpr int kEach = 1'000;

bool longForm() { return std::getenv("REELWRIGHT_LONG") != nullptr; }

class AnyOrder : public Story {
protected:
    /// Every lot as the commands said, and never below nothing.
    void expectLotsAsDone(const RandomWork& work) {
        const auto raw = place().connect();
        std::map<std::string, Length> found;
        for (const auto& row :
             raw->rows("SELECT lot.tag, lot.length_mm, COALESCE(SUM(movement.change_mm), 0) FROM lot "
                       "LEFT JOIN movement ON movement.lot_id = lot.id GROUP BY lot.tag, lot.length_mm")) {
            EXPECT_EQ(row[1], row[2]) << row[0] << " is the sum of its movements";
            const Length length = mm(std::stoll(row[1]));
            EXPECT_FALSE(length.isNegative()) << row[0];
            found.emplace(row[0], length);
        }
        EXPECT_EQ(found, work.lots()) << "as the commands said";
    }

    /// Each cut once, by somebody, for an attempt; each lost length closed one and another was begun.
    void expectEveryAttemptChargedOnce() {
        const auto raw = place().connect();
        const auto none = [&](std::string_view what, const std::string& query) {
            EXPECT_EQ(raw->scalar(query), "0") << what;
        };
        none("an attempt charged twice", "SELECT COUNT(*) FROM (SELECT attempt_id FROM movement WHERE reason = 'cut' "
                                         "GROUP BY attempt_id HAVING COUNT(*) > 1) AS twice");
        none("a cut for nobody", "SELECT COUNT(*) FROM movement WHERE (reason = 'cut') <> (attempt_id IS NOT NULL)");
        none("a piece without an attempt to go on with",
             "SELECT COUNT(*) FROM job_piece WHERE (SELECT COUNT(*) FROM attempt WHERE attempt.job_piece_id = "
             "job_piece.id AND attempt.lost_at IS NULL) <> 1");
    }

    /// What is promised is what jobs have planned and not cut, whoever adds it up; and no lot that holds too little for
    /// it keeps a job that nobody insisted on.
    void expectPromisesAreWhatIsPlanned() {
        read(ledger(), [&](desk::Transaction& open) -> Result<bool> {
            const auto planned = open.lots().plannedCuts();
            for (const StringArticle& article : open.strings().all()) {
                Length byJobs = mm(0);
                for (const desk::JobLine& line :
                     open.jobs().inStates({JobState::Logged, JobState::OnTheMachine, JobState::Waiting})) {
                    const Job job = *open.jobs().get(line.id);
                    for (const JobPiece& piece : job.pieces) {
                        const bool counts = piece.article == *article.id && piece.source != PieceSource::CustomersSet;
                        byJobs += counts && !piece.isCut() ? piece.planned : mm(0);
                    }
                }
                Length promised = mm(0);
                for (const PlannedCut& cut : planned) {
                    promised += cut.article == *article.id ? cut.length : mm(0);
                }
                EXPECT_EQ(promised, byJobs) << article.code;
                expectRoom(open, *article.id);
            }
            return true;
        });
    }

    static void expectRoom(desk::Transaction& open, StringArticleId article) {
        const auto waiting = open.lots().waitingCuts(article);
        for (const Lot& lot : open.lots().open(article)) {
            Length pinned = mm(0);
            Length free = mm(0);
            for (const WaitingCut& cut : waiting) {
                if (cut.lot == lot.id) {
                    (cut.pinned ? pinned : free) += cut.length;
                    EXPECT_TRUE(cut.pinned || cut.owner == lot.owner) << "off somebody else's " << lot.tag;
                }
            }
            EXPECT_TRUE(free == mm(0) || pinned + free <= lot.length) << lot.tag;
        }
        for (const WaitingCut& cut : waiting) {
            const auto lot = cut.lot ? open.lots().get(*cut.lot) : std::nullopt;
            EXPECT_TRUE(!lot || lot->isOpen() || cut.pinned) << "planned off a closed lot: " << cut.jobNumber;
        }
    }
};

TEST_P(AnyOrder, TheLedgerStaysWhole) {
    const std::uint64_t seed = longForm() ? seedFor("any order") : 20'260'301;
    RandomWork work(ledger(), shop(), seed);
    const int commands = longForm() ? 100'000 : 2'000;
    for (int i = 1; i <= commands; ++i) {
        ASSERT_NO_THROW(work.next()) << "command " << i << " of seed " << seed;
        if (i % kEach == 0) {
            SCOPED_TRACE("after " + std::to_string(i) + " commands of seed " + std::to_string(seed));
            ASSERT_EQ(findingsOf(ledger()), "");
            expectLotsAsDone(work);
            expectEveryAttemptChargedOnce();
            expectPromisesAreWhatIsPlanned();
            ASSERT_FALSE(HasFailure());
        }
    }
    for (const char* kind : {"received", "promised", "taken", "cut", "lost", "corrected", "given back", "cancelled",
                             "resumed", "cut taken back", "strung", "collected"}) {
        ASSERT_TRUE(work.done().contains(kind)) << kind << " never happened";
        std::cout << work.done().at(kind) << " " << kind << "; ";
    }
    std::cout << work.jobs() << " jobs\n";
}

ON_BOTH_ENGINES(AnyOrder);

} // namespace
