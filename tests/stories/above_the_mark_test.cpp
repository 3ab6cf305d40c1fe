// SPDX-License-Identifier: GPL-3.0-or-later
// Jun Hallerby wants 28 lb on a frame that is marked 26 lb at most.
#include "tests/stories/story.h"

#include "core/desk/bench.h"
#include "core/desk/change_asked.h"
#include "core/desk/consent.h"
#include "core/desk/counter.h"
#include "core/desk/intake.h"
#include "core/desk/job_course.h"
#include "core/desk/shop_facts.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace rw;
using namespace rw::stories;
using namespace std::chrono_literals;

namespace {

constexpr CivilDate kToday = std::chrono::year(2026) / 5 / 14;

class AboveTheMark : public Story {
protected:
    void SetUp() override {
        Story::SetUp();
        write(ledger(), [&](desk::Transaction& open) -> Result<void> {
            (void)putOnShelf(open, shop(), "W-1", shop().swiftlet, mm(200'000), mm(120'000), at(kToday, 10h));
            m_jun = customer(open, "Jun Hallerby");
            m_feather = racket(open, *m_jun, shop().pellowFeather);
            return {};
        });
    }

    /// "28 please": what the shop makes of one number.
    [[nodiscard]] TensionPair please(double number) {
        const auto facts =
            read(ledger(), [](desk::Transaction& open) { return desk::shopFacts(open, at(kToday, 11h)); });
        return {lb(number), crossesOfOneNumber(lb(number), Sport::Badminton, facts.badmintonCrosses)};
    }

    [[nodiscard]] desk::LogJob request(const TensionPair& tensions, std::string key,
                                       std::optional<desk::InformedYes> yes = std::nullopt) const {
        return {.requestKey = std::move(key),
                .customer = *m_jun,
                .racket = *m_feather,
                .draft = {.frame = shop().pellowFeather,
                          .racket = *m_feather,
                          .method = std::nullopt,
                          .route = std::nullopt,
                          .shortSide = std::nullopt,
                          .mains = {.article = shop().swiftlet, .lot = std::nullopt},
                          .crosses = std::nullopt,
                          .tensions = tensions,
                          .extras = {}},
                .note = "",
                .promised = std::nullopt,
                .by = shop().counter(at(kToday, 11h)),
                .inspection = {},
                .yes = std::move(yes)};
    }
    [[nodiscard]] Job log(const TensionPair& tensions, std::string key,
                          std::optional<desk::InformedYes> yes = std::nullopt) {
        return write(ledger(), [&](desk::Transaction& open) {
            return desk::logJob(open, request(tensions, std::move(key), std::move(yes)));
        });
    }

    [[nodiscard]] bool benchSeesNotAgreed(const Job& job) {
        const auto queue = read(ledger(), [](desk::Transaction& open) { return desk::benchQueue(open); });
        return std::ranges::find(queue, *job.id, &desk::JobLine::id)->notAgreed;
    }
    [[nodiscard]] std::optional<Consent> consent(const Job& job) {
        return read(ledger(), [&](desk::Transaction& open) -> Result<std::optional<Consent>> {
            return desk::consentTo(open, *job.id, highestPull(job.asked));
        });
    }

    std::optional<CustomerId> m_jun;
    std::optional<RacketId> m_feather;
};

TEST_P(AboveTheMark, OneNumberIsReadBackAsAPairAndHeldAgainstTheMark) {
    const TensionPair pair = please(28);
    EXPECT_EQ(pair, (TensionPair{lb(28), lb(30)}));
    const auto shown = read(ledger(), [&](desk::Transaction& open) {
        return desk::previewIntake(open, request(pair, "shown").draft, at(kToday, 11h));
    });
    EXPECT_TRUE(shown.aboveMarked);
    EXPECT_EQ(shown.highestMarked, lb(26));
    const auto above = aboveMarked({.lowest = std::nullopt, .highest = shown.highestMarked}, pair);
    ASSERT_TRUE(above);
    EXPECT_EQ(above->pull, lb(30));
    EXPECT_DOUBLE_EQ(above->pull.in(TensionUnit::Pound) - above->marked.in(TensionUnit::Pound), 4);
}

TEST_P(AboveTheMark, TheYesIsOfThisJobAndNamesWhoToldAndWhoAgreed) {
    const Job job = log(please(28), "agreed", desk::InformedYes{"", "It may break, and that is my risk."});
    EXPECT_FALSE(benchSeesNotAgreed(job));
    const auto yes = consent(job);
    ASSERT_TRUE(yes);
    EXPECT_EQ(yes->above, (AboveMarked{lb(30), lb(26)}));
    EXPECT_EQ(yes->agreedBy, "") << "himself";
    EXPECT_EQ(yes->words, "It may break, and that is my risk.");
    EXPECT_EQ(yes->by.staff, shop().oriel);
    EXPECT_EQ(yes->by.at, at(kToday, 11h));

    const Job next = log(please(28), "next time");
    EXPECT_FALSE(consent(next)) << "it never carries over";
    EXPECT_TRUE(benchSeesNotAgreed(next));
}

TEST_P(AboveTheMark, WithoutAYesItIsLoggedAndTheBenchSeesIt) {
    const Job job = log(please(28), "not agreed");
    EXPECT_EQ(job.asked, (TensionPair{lb(28), lb(30)}));
    EXPECT_TRUE(benchSeesNotAgreed(job));
    // He agrees on the phone, an hour later.
    const desk::Agree yes{*job.id, "Jun, on the phone", "It may break.", shop().counter(at(kToday, 12h))};
    (void)write(ledger(), [&](desk::Transaction& open) { return desk::agreeAboveMarked(open, yes); });
    EXPECT_FALSE(benchSeesNotAgreed(job));
    EXPECT_EQ(consent(job)->agreedBy, "Jun, on the phone");
    // Then he wants a pound more, to which nobody has said yes.
    const desk::ChangeAsked more{*job.id, job.asked, {lb(29), lb(31)}, shop().counter(at(kToday, 13h))};
    const Job changed = write(ledger(), [&](desk::Transaction& open) { return desk::changeAsked(open, more); });
    EXPECT_TRUE(benchSeesNotAgreed(changed));
}

TEST_P(AboveTheMark, TheStringerMayRefuseAllTheSame) {
    const Job job = log(please(28), "refused", desk::InformedYes{"", "It may break."});
    const By bench = shop().bench(at(kToday, 12h));
    (void)write(ledger(), [&](desk::Transaction& open) { return desk::takeJob(open, {*job.id, shop().benchA, bench}); });
    const Job refused = write(ledger(), [&](desk::Transaction& open) {
        return desk::letJobWait(open, {*job.id, "not on this frame: lower, or another racket", bench});
    });
    EXPECT_EQ(refused.state, JobState::Waiting);
    const auto waiting = read(ledger(), [](desk::Transaction& open) { return desk::toBeStrung(open); });
    const auto line = std::ranges::find(waiting, *job.id, &desk::JobLine::id);
    ASSERT_NE(line, waiting.end());
    EXPECT_FALSE(line->notAgreed);
    EXPECT_TRUE(consent(job)) << "the yes was given, and stays a fact";
}

ON_BOTH_ENGINES(AboveTheMark);

} // namespace
