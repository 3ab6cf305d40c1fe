// SPDX-License-Identifier: GPL-3.0-or-later
// A process killed at random moments while it receives reels, logs, takes, cuts, loses, finishes and hands over. Twenty
// kills an engine; two hundred with REELWRIGHT_LONG=1. REELWRIGHT_SEED=N does a run again; every run's seed is printed
// and kept in kill-seeds.txt beside the test.
#include "tests/stories/child.h"
#include "tests/stories/journal.h"
#include "tests/stories/kill_moments.h"
#include "tests/stories/story.h"

#include <gtest/gtest.h>

#include <chrono>
#include <csignal>
#include <cstdlib>
#include <iostream>
#include <optional>
#include <random>

using namespace rw;
using namespace rw::stories;

namespace {

constexpr int kBirths = 10;

int killsToDo() { return std::getenv("REELWRIGHT_LONG") != nullptr ? 200 : 20; }

/// What a kill met.
struct Tally {
    int kills = 0;
    int opening = 0;    ///< the ledger was not open yet
    int between = 0;    ///< no command was given
    int undone = 0;     ///< a command was given and left no trace
    int carriedOut = 0; ///< a command was kept and nobody was told
};

class KilledAtTheBench : public Story {
protected:
    void SetUp() override {
        Story::SetUp();
        write(ledger(), [&](desk::Transaction& open) -> Result<void> {
            (void)racket(open, customer(open, "Petra Lindobi", "0161 496 4417"), shop().aldermoor98, "A");
            return {};
        });
    }

    /// One worker from its start to its death; its lines go into the journal.
    void runAndKill(const std::string& prefix) {
        closeLedger();
        const std::string daySeed = std::to_string(m_moments->number());
        int lines = m_moments->linesToHear();
        Child worker(STORIES_WORKER, {"day", place().address(), prefix, daySeed});
        bool opened = false;
        for (; lines > 0; --lines) {
            const auto line = worker.nextLine();
            ASSERT_TRUE(line) << "the worker ended by itself, with " << worker.wait();
            opened = true;
            m_moments->heard(*line);
            m_journal.hear(*line);
        }
        spinFor(m_moments->timeLeft());
        worker.kill();
        EXPECT_EQ(worker.wait(), -SIGKILL);
        while (const auto line = worker.nextLine()) {
            opened = true;
            m_journal.hear(*line);
        }
        ++m_tally.kills;
        m_tally.opening += opened ? 0 : 1;
        m_tally.between += opened && !m_journal.pending() ? 1 : 0;
    }

    /// The stories of jobs and lots as the ledger tells them. A turn of one's own at the ledger comes only when the
    /// server has let go of the one that died.
    std::vector<std::string> storiesInLedger(const std::vector<std::string>& keys) {
        return write(ledger(), [&](desk::Transaction& open) -> Result<std::vector<std::string>> {
            std::vector<std::string> stories;
            for (const std::string& key : keys) {
                const auto job = open.jobs().byRequestKey(key);
                stories.push_back(job ? storyOf(*open.jobs().get(*job)) : open.lots().byTag(key) ? "on the shelf" : "");
            }
            return stories;
        });
    }
    std::string storyInLedger(const std::string& key) { return storiesInLedger({key}).front(); }

    void expectLedgerAsJournal() {
        std::vector<std::string> keys = m_journal.done().jobKeys();
        std::erase_if(keys,
                      [&](const std::string& key) { return m_journal.pending() && m_journal.pending()->key == key; });
        const std::vector<std::string> found = storiesInLedger(keys);
        for (std::size_t i = 0; i < keys.size(); ++i) {
            ASSERT_EQ(found[i], m_journal.done().storyOf(keys[i])) << keys[i];
        }
    }

    /// The command that nobody knows of was carried out whole or not at all, and giving it again does it exactly once.
    void resolvePending() {
        if (!m_journal.pending()) {
            return;
        }
        const Step step = *m_journal.pending();
        ExpectedBook with = m_journal.done();
        with.apply(step);
        const std::string found = storyInLedger(step.key);
        const bool happened = found == with.storyOf(step.key);
        ASSERT_TRUE(happened || found == m_journal.done().storyOf(step.key))
            << step.text() << "\n  found: " << found << "\n  before: " << m_journal.done().storyOf(step.key)
            << "\n  after: " << with.storyOf(step.key);
        ++(happened ? m_tally.carriedOut : m_tally.undone);
        const std::string before = everything();
        must(perform(ledger(), step));
        if (happened) {
            ASSERT_EQ(everything(), before) << step.text();
        }
        m_journal.settle();
        ASSERT_EQ(storyInLedger(step.key), m_journal.done().storyOf(step.key));
    }

    /// Any command that was done changes nothing when it is given again.
    void giveOneAgain() {
        if (m_journal.doneSteps().empty()) {
            return;
        }
        const Step step = m_journal.doneSteps()[m_moments->number() % m_journal.doneSteps().size()];
        const std::string before = everything();
        (void)perform(ledger(), step);
        ASSERT_EQ(everything(), before) << step.text();
    }

    /// Proved from the rows themselves, beside what `check` proves.
    void expectNothingTwice() {
        const auto raw = place().connect();
        EXPECT_EQ(raw->scalar("SELECT COUNT(*) FROM (SELECT attempt_id FROM movement WHERE reason = 'cut' "
                              "GROUP BY attempt_id HAVING COUNT(*) > 1) AS twice"),
                  "0");
        EXPECT_EQ(raw->scalar("SELECT COUNT(*) FROM job"), std::to_string(m_journal.done().jobKeys().size()));
        EXPECT_EQ(raw->scalar("SELECT SUM(length_mm) FROM lot"), raw->scalar("SELECT SUM(change_mm) FROM movement"));
        EXPECT_EQ(raw->scalar("SELECT COUNT(*) FROM attempt AS a WHERE a.lost_at IS NOT NULL AND NOT EXISTS "
                              "(SELECT 1 FROM movement AS m WHERE m.attempt_id = a.id)"),
                  "0");
    }

    void oneKill(const std::string& prefix) {
        ASSERT_NO_FATAL_FAILURE(runAndKill(prefix));
        openLedger();
        ASSERT_NO_FATAL_FAILURE(expectLedgerAsJournal());
        ASSERT_EQ(findingsOf(ledger()), "");
        ASSERT_NO_FATAL_FAILURE(resolvePending());
        ASSERT_NO_FATAL_FAILURE(giveOneAgain());
        ASSERT_EQ(findingsOf(ledger()), "");
        expectNothingTwice();
    }

    void killings(std::uint64_t seed) {
        m_moments.emplace(seed);
        for (int kill = 1; kill <= killsToDo(); ++kill) {
            SCOPED_TRACE("kill " + std::to_string(kill) + " of seed " + std::to_string(seed));
            ASSERT_NO_FATAL_FAILURE(oneKill("k" + std::to_string(kill) + "-"));
        }
        std::cout << m_tally.kills << " kills: " << m_tally.opening << " before the ledger was open, "
                  << m_tally.between << " between commands, " << m_tally.undone << " left a command undone, "
                  << m_tally.carriedOut << " came after it was kept; " << m_journal.doneSteps().size()
                  << " commands done\n";
    }

private:
    std::optional<KillMoments> m_moments;
    Journal m_journal;
    Tally m_tally;
};

TEST_P(KilledAtTheBench, TheLedgerIsWholeAndNothingIsDoneTwice) { killings(seedFor("bench")); }

/// A process killed while it makes a ledger where none is.
class KilledAtBirth : public sql::test::OnEngine {
protected:
    /// From the first line of the worker to its second, undisturbed.
    static std::chrono::microseconds timeToMake(const std::string& address) {
        Child worker(STORIES_WORKER, {"create", address});
        EXPECT_EQ(worker.nextLine(), "begin");
        const auto begun = std::chrono::steady_clock::now();
        EXPECT_EQ(worker.nextLine(), "open");
        return std::chrono::duration_cast<std::chrono::microseconds>(std::chrono::steady_clock::now() - begun);
    }
};

TEST_P(KilledAtBirth, TheNextOneToOpenItFindsOrMakesAWholeLedger) {
    std::mt19937_64 random(seedFor("birth"));
    const std::chrono::microseconds whole = timeToMake(place().address());
    for (int birth = 0; birth < kBirths; ++birth) {
        const auto spot = sql::test::makePlace(GetParam());
        Child worker(STORIES_WORKER, {"create", spot->address()});
        ASSERT_EQ(worker.nextLine(), "begin");
        spinFor(std::chrono::microseconds(random() % static_cast<std::uint64_t>(whole.count())));
        worker.kill();
        worker.wait();
        const auto ledger = openAt(spot->address());
        EXPECT_EQ(findingsOf(*ledger), "");
        (void)write(*ledger, [](desk::Transaction& open) { return Result<HarbourLane>(settle(open)); });
    }
}

ON_BOTH_ENGINES(KilledAtTheBench);
ON_BOTH_ENGINES(KilledAtBirth);

} // namespace
