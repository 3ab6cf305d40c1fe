// SPDX-License-Identifier: GPL-3.0-or-later
// Petra Lindobi has two Aldermoor 98s. She brings A: same as last time, two pounds looser.
#include "tests/stories/story.h"

#include "core/desk/bench.h"
#include "core/desk/counter.h"
#include "core/desk/intake.h"
#include "core/desk/stockroom.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace rw;
using namespace rw::stories;
using namespace std::chrono_literals;

namespace {

constexpr CivilDate kJanuary = std::chrono::year(2026) / 1 / 20; // a Tuesday
constexpr CivilDate kToday = std::chrono::year(2026) / 5 / 14;   // a Thursday

class SameAsLastTime : public Story {
protected:
    void SetUp() override {
        Story::SetUp();
        write(ledger(), [&](desk::Transaction& open) -> Result<void> {
            m_petra = customer(open, "Petra Lindobi", "0161 496 4417");
            m_racketA = racket(open, *m_petra, shop().aldermoor98, "A");
            m_racketB = racket(open, *m_petra, shop().aldermoor98, "B");
            // 48.7 m are on the reel today; these two jobs took 21.6 m in January.
            (void)putOnShelf(open, shop(), "L-3", shop().larkspun, mm(200'000), mm(70'300), at(kJanuary, 10h));
            stringInJanuary(open, *m_racketA, {lb(54), lb(52)}, "felt a touch stiff");
            stringInJanuary(open, *m_racketB, {lb(56), lb(54)}, "");
            logForOthers(open);
            return {};
        });
    }

    [[nodiscard]] desk::LogJob request(desk::Transaction&, RacketId which, TensionPair tensions, std::string key,
                                       CustomerId owner, Instant when) const {
        return {.requestKey = std::move(key),
                .customer = owner,
                .racket = which,
                .draft = draft(which, tensions),
                .note = "",
                .promised = std::nullopt,
                .by = shop().counter(when)};
    }

    [[nodiscard]] desk::IntakeDraft draft(RacketId which, TensionPair tensions) const {
        return {.frame = shop().aldermoor98,
                .racket = which,
                .method = std::nullopt,
                .route = std::nullopt,
                .shortSide = std::nullopt,
                .mains = {.article = shop().larkspun, .lot = std::nullopt},
                .crosses = std::nullopt,
                .tensions = tensions,
                .extras = {}};
    }

    void stringInJanuary(desk::Transaction& open, RacketId which, TensionPair tensions, std::string note) const {
        const Instant when = at(kJanuary, 11h);
        desk::LogJob command =
            request(open, which, tensions, "january-" + std::to_string(which.value()), *m_petra, when);
        command.draft.method = Method::OnePiece;
        const JobId job = *must(desk::logJob(open, command)).id;
        (void)must(desk::takeJob(open, {job, shop().benchA, shop().bench(when)}));
        (void)must(desk::confirmCut(
            open, {job, PieceRole::Whole, 1, std::nullopt, mm(10'800), std::nullopt, shop().bench(when)}));
        (void)must(desk::finishJob(open, {job, tensions, shop().benchA, std::move(note), shop().bench(when + 25min)}));
        (void)must(desk::handOver(open, {job, "", pounds(3'000), "cash", shop().counter(when + 60min)}));
    }

    /// Three open jobs of other people that will take 10.8 m of L each.
    void logForOthers(desk::Transaction& open) const {
        for (const char* name : {"Tomas Ferreday", "Jun Hallerby", "Dario Penhallow"}) {
            const CustomerId owner = customer(open, name);
            const RacketId theirs = racket(open, owner, shop().aldermoor98);
            desk::LogJob command = request(open, theirs, {lb(55), lb(55)}, name, owner, at(kToday, 10h));
            command.draft.method = Method::OnePiece;
            (void)must(desk::logJob(open, command));
        }
    }

    /// Her racket A as the counter finds it by the last digits of her phone.
    [[nodiscard]] desk::RacketSummary foundByPhone(const std::string& digits, const std::string& mark) {
        const auto people = read(ledger(), [&](desk::Transaction& open) { return desk::findPeople(open, digits); });
        EXPECT_EQ(people.size(), 1U);
        const auto& rackets = people.at(0).rackets;
        return *std::ranges::find(rackets, mark, [](const desk::RacketSummary& each) { return each.racket.mark; });
    }

    /// "-2 lb" typed into both fields of her last job.
    [[nodiscard]] static TensionPair looser(const TensionPair& last) {
        return {must(Tension::tryParse("-2 lb", TensionUnit::Pound, last.mains)),
                must(Tension::tryParse("-2 lb", TensionUnit::Pound, last.crosses))};
    }

    std::optional<CustomerId> m_petra;
    std::optional<RacketId> m_racketA;
    std::optional<RacketId> m_racketB;
};

TEST_P(SameAsLastTime, IsFoundByTheLastDigitsAndShowsWhatWasStrungOnThisVeryFrame) {
    const auto foundA = foundByPhone("4417", "A");
    ASSERT_TRUE(foundA.lastJob);
    EXPECT_EQ(foundA.lastJob->asked, (TensionPair{lb(54), lb(52)}));
    EXPECT_EQ(foundA.lastJob->strung->tensions, (TensionPair{lb(54), lb(52)}));
    EXPECT_EQ(foundA.lastJob->pieces.front().current().cut->length, mm(10'800));
    EXPECT_EQ(foundA.lastJob->strung->machine, shop().benchA);
    EXPECT_EQ(foundA.lastJob->note, "felt a touch stiff");
    EXPECT_EQ(foundByPhone("4417", "B").lastJob->asked, (TensionPair{lb(56), lb(54)}));
}

TEST_P(SameAsLastTime, TwoPoundsLooserIsSaidWithStringPriceAndPromise) {
    const TensionPair wanted = looser(foundByPhone("4417", "A").lastJob->asked);
    EXPECT_EQ(wanted, (TensionPair{lb(52), lb(50)}));

    const auto preview = read(ledger(), [&](desk::Transaction& open) {
        return desk::previewIntake(open, draft(*m_racketA, wanted), at(kToday, 11h));
    });
    ASSERT_EQ(preview.pieces.size(), 1U); // the method of last time came along
    const desk::PieceProposal& piece = preview.pieces.front();
    EXPECT_EQ(piece.cutFrom, desk::CutFrom::LastTime);
    EXPECT_EQ(piece.cut, mm(10'800));
    EXPECT_EQ(piece.lot->tag, "L-3");
    EXPECT_EQ(piece.holding.left, mm(48'700));
    EXPECT_EQ(piece.holding.promised, mm(32'400));
    EXPECT_EQ(piece.holding.free(), mm(16'300));
    EXPECT_EQ(piece.leavesOnLot, mm(5'500));
    EXPECT_EQ(piece.freeAfter, mm(5'500));
    EXPECT_EQ(preview.quote.total, pounds(3'000));
    EXPECT_EQ(preview.quote.charges.at(0).amount, pounds(1'400));
    EXPECT_EQ(preview.quote.charges.at(1).amount, pounds(1'600));
    EXPECT_FALSE(preview.aboveMarked);
    // Three jobs ahead of 25 minutes, two machines, 15 % margin: 11:50 and 7.5 minutes, in steps of 15.
    EXPECT_EQ(preview.promise, at(kToday, 12h));
}

TEST_P(SameAsLastTime, IsStrungOnAMachineInKilogramsAndHistoryKeepsAskedAndStrung) {
    const TensionPair wanted{lb(52), lb(50)};
    const TensionPair strung{kg(23.5), kg(22.5)};
    const Job logged = write(ledger(), [&](desk::Transaction& open) {
        return desk::logJob(open, request(open, *m_racketA, wanted, "petra-today", *m_petra, at(kToday, 11h)));
    });
    EXPECT_EQ(logged.total, pounds(3'000));

    const auto card =
        read(ledger(), [&](desk::Transaction& open) { return desk::jobCard(open, *logged.id, shop().benchB); });
    // 1 lb = 0.45359237 kg (NIST SP 811, Appendix B.8): 52 lb are 23.587 kg
    EXPECT_NEAR(card.mains->exact, 23.587, 0.001);
    EXPECT_EQ(card.mains->below, kg(23.5));
    EXPECT_EQ(card.mains->above, kg(24));
    EXPECT_NEAR(card.mains->below.in(TensionUnit::Pound), 51.8, 0.05);
    EXPECT_NEAR(card.mains->above.in(TensionUnit::Pound), 52.9, 0.05);
    EXPECT_EQ(card.mains->asked, lb(52));

    write(ledger(), [&](desk::Transaction& open) {
        const By by = shop().bench(at(kToday, 11h + 5min));
        (void)must(desk::takeJob(open, {*logged.id, shop().benchB, by}));
        (void)must(
            desk::confirmCut(open, {*logged.id, PieceRole::Whole, 1, std::nullopt, mm(10'800), std::nullopt, by}));
        return desk::finishJob(open, {*logged.id, strung, shop().benchB, "", by});
    });
    EXPECT_EQ(read(ledger(), [](desk::Transaction& open) { return Result<Lot>(lotTagged(open, "L-3")); }).length,
              mm(37'900));

    const auto history =
        read(ledger(), [&](desk::Transaction& open) { return desk::historyOfRacket(open, *m_racketA); });
    ASSERT_EQ(history.size(), 2U);
    EXPECT_EQ(history.front().job.asked, wanted);
    EXPECT_EQ(history.front().job.strung->tensions, strung);
    EXPECT_EQ(history.front().machine, "Bench B");
    EXPECT_EQ(history.front().mark, "A");
    EXPECT_EQ(history.back().job.asked, (TensionPair{lb(54), lb(52)}));
    EXPECT_EQ(foundByPhone("4417", "B").lastJob->asked, (TensionPair{lb(56), lb(54)}));
}

TEST_P(SameAsLastTime, PressedTwiceIsLoggedOnce) {
    const auto log = [&](desk::Transaction& open) {
        return desk::logJob(open,
                            request(open, *m_racketA, {lb(52), lb(50)}, "petra-today", *m_petra, at(kToday, 11h)));
    };
    const Job once = write(ledger(), log);
    const std::string before = everything();
    EXPECT_EQ(write(ledger(), log).id, once.id);
    EXPECT_EQ(everything(), before);
}

ON_BOTH_ENGINES(SameAsLastTime);

} // namespace
