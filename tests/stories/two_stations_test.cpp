// SPDX-License-Identifier: GPL-3.0-or-later
// Two processes work on one ledger at once: each at its own jobs off the same shelf, and both at the very same jobs.
#include "tests/stories/child.h"
#include "tests/stories/journal.h"
#include "tests/stories/story.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <iostream>
#include <memory>
#include <string>
#include <vector>

using namespace rw;
using namespace rw::stories;

namespace {

constexpr int kJobs = 10;

class TwoStations : public Story {
protected:
    void SetUp() override {
        Story::SetUp();
        write(ledger(), [&](desk::Transaction& open) -> Result<void> {
            (void)racket(open, customer(open, "Petra Lindobi"), shop().aldermoor98, "A");
            return {};
        });
    }

    using Lines = std::vector<std::string>;

    /// Two workers that have the ledger open and wait.
    struct Pair {
        Pair(const Lines& east, const Lines& west)
            : children{std::make_unique<Child>(STORIES_WORKER, east), std::make_unique<Child>(STORIES_WORKER, west)} {
            for (const auto& child : children) {
                EXPECT_EQ(child->nextLine(), "open");
            }
        }
        void go() const {
            for (const auto& child : children) {
                child->say("go");
            }
        }
        std::array<std::unique_ptr<Child>, 2> children;
    };

    [[nodiscard]] std::string storyInLedger(const std::string& key) {
        return read(ledger(), [&](desk::Transaction& open) { return Result<std::string>(storyOf(jobOf(open, key))); });
    }

    void expectChargedOnce() {
        const auto raw = place().connect();
        EXPECT_EQ(raw->scalar("SELECT COUNT(*) FROM (SELECT attempt_id FROM movement WHERE reason = 'cut' "
                              "GROUP BY attempt_id HAVING COUNT(*) > 1) AS twice"),
                  "0");
        EXPECT_EQ(raw->scalar("SELECT SUM(length_mm) FROM lot"), raw->scalar("SELECT SUM(change_mm) FROM movement"));
        EXPECT_EQ(findingsOf(ledger()), "");
    }
};

TEST_P(TwoStations, EachAtItsOwnJobsNeverGetInEachOthersWay) {
    const std::string jobs = std::to_string(kJobs);
    const Pair pair({"day", place().address(), "east", "1", jobs}, {"day", place().address(), "west", "2", jobs});
    pair.go();
    for (const auto& child : pair.children) {
        Journal journal;
        while (const auto line = child->nextLine()) {
            journal.hear(*line);
        }
        EXPECT_EQ(child->wait(), 0);
        EXPECT_FALSE(journal.pending());
        ASSERT_EQ(journal.done().jobKeys().size(), static_cast<std::size_t>(kJobs));
        for (const std::string& key : journal.done().jobKeys()) {
            EXPECT_EQ(storyInLedger(key), journal.done().storyOf(key)) << key;
        }
    }
    expectChargedOnce();
}

TEST_P(TwoStations, BothAtTheSameJobsDoEachOnce) {
    const Lines station{"together", place().address(), std::to_string(kJobs)};
    Pair pair(station, station);
    int given = 0;
    int refused = 0;
    // Each tells what it is about to do, both are let go at the same moment, and each says what came of it.
    std::vector<Child*> running{pair.children[0].get(), pair.children[1].get()};
    while (!running.empty()) {
        std::erase_if(running, [](Child* child) { return !child->nextLine(); });
        for (Child* child : running) {
            child->say("go");
        }
        for (Child* child : running) {
            const auto result = child->nextLine();
            ++given;
            refused += result && result->starts_with("refused") ? 1 : 0;
        }
    }
    for (const auto& child : pair.children) {
        EXPECT_EQ(child->wait(), 0);
    }
    EXPECT_EQ(place().connect()->scalar("SELECT COUNT(*) FROM job"), std::to_string(kJobs));
    EXPECT_EQ(place().connect()->scalar("SELECT COUNT(*) FROM job_event WHERE kind = 'logged'"), std::to_string(kJobs));
    EXPECT_EQ(place().connect()->scalar("SELECT COUNT(*) FROM job_event WHERE kind = 'strung'"), std::to_string(kJobs));
    for (int job = 1; job <= kJobs; ++job) {
        const std::string story = storyInLedger("both-" + std::to_string(job));
        EXPECT_TRUE(story.starts_with("strung") || story.starts_with("collected")) << story;
        EXPECT_EQ(story.find(":-"), std::string::npos) << story;
    }
    expectChargedOnce();
    std::cout << given << " commands, " << refused << " of them refused\n";
}

ON_BOTH_ENGINES(TwoStations);

} // namespace
