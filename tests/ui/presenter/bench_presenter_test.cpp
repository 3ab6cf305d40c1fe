// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/change_asked.h"
#include "tests/ui/support/at_work.h"
#include "ui/presenter/bench_presenter.h"
#include "ui/text/bench_words.h"

#include <algorithm>

namespace rw::ui::test {
namespace {

using Step = BenchPresenter::Step;

class Bench : public AtWork {
protected:
    Bench() {
        QObject::connect(&bench, &BenchPresenter::refused, [this](const Refusal& refusal) { why = refusal; });
        bench.refresh();
    }
    /// A queued job, on no machine.
    void selectLogged(std::string_view strings) {
        for (const auto& line : bench.queue()) {
            if (line.state == JobState::Logged && line.strings == strings) {
                bench.select(line.id);
                return;
            }
        }
        FAIL() << "no job of " << strings << " is queued";
    }
    const desk::CardPiece& piece(PieceRole role) {
        return *std::ranges::find_if(bench.card()->pieces, [role](const auto& p) { return p.piece.role == role; });
    }
    void cutNext(Length length) {
        bench.confirmCut(bench.inHand(*bench.nextToCut()), std::nullopt, length, std::nullopt);
    }

    BenchPresenter bench{runner, shift};
    std::optional<Refusal> why;
};

TEST_F(Bench, ARacketOnAMachineComesFirst) {
    ASSERT_TRUE(bench.card());
    EXPECT_EQ(bench.card()->job.state, JobState::OnTheMachine);
    EXPECT_EQ(bench.step(), Step::Cut);
    EXPECT_TRUE(bench.canPutDown());
}

TEST_F(Bench, EnterByEnterFromTakingToTheRack) {
    selectLogged("K");
    EXPECT_EQ(bench.step(), Step::Take);
    bench.take();
    bench.take(); // 2122 lies there: it is meant
    EXPECT_EQ(bench.step(), Step::Cut);
    const Length planned = bench.nextToCut()->piece.planned;
    const std::string tag = bench.nextToCut()->lot->tag;
    const Length before = lot(tag).length;
    cutNext(planned);
    EXPECT_EQ(lot(tag).length, before - planned);
    EXPECT_EQ(bench.step(), Step::Finish);
    const JobId job = *bench.card()->job.id;
    bench.finish(*bench.card()->job.id, {lb("52"), lb("50")}, QStringLiteral(" a hard weave "));
    EXPECT_FALSE(why);
    const auto done = look([&](desk::Transaction& t) { return t.jobs().get(job); });
    EXPECT_EQ(done->state, JobState::Strung);
    EXPECT_EQ(done->strung->tensions, (TensionPair{lb("52"), lb("50")}));
    EXPECT_TRUE(std::ranges::none_of(bench.queue(), [&](const auto& line) { return line.id == job; }));
}

// Scenario 6: pressing again changes nothing.
TEST_F(Bench, ACutThatIsConfirmedTwiceIsChargedOnce) {
    const std::string tag = bench.nextToCut()->lot->tag;
    const Length before = lot(tag).length;
    const PieceInHand next = bench.inHand(*bench.nextToCut());
    const Length planned = bench.nextToCut()->piece.planned;
    runner.held = true;
    bench.confirmCut(next, std::nullopt, planned, std::nullopt);
    bench.confirmCut(next, std::nullopt, planned, std::nullopt);
    runner.release();
    EXPECT_EQ(lot(tag).length, before - planned);
}

TEST_F(Bench, ACutThatWasKeptThoughNobodyHeardOfItIsNotChargedAgain) {
    const std::string tag = bench.nextToCut()->lot->tag;
    const Length before = lot(tag).length;
    const PieceInHand next = bench.inHand(*bench.nextToCut());
    const Length planned = bench.nextToCut()->piece.planned;
    runner.world = HeldDeskRunner::World::LostAfter;
    bench.confirmCut(next, std::nullopt, planned, std::nullopt);
    EXPECT_FALSE(bench.trouble().isEmpty());
    runner.world = HeldDeskRunner::World::Whole;
    std::optional<desk::CutDone> again;
    QObject::connect(&bench, &BenchPresenter::cut, [&](const desk::CutDone& done) { again = done; });
    bench.confirmCut(next, std::nullopt, planned, std::nullopt);
    ASSERT_TRUE(again);
    EXPECT_TRUE(again->already);
    EXPECT_EQ(lot(tag).length, before - planned);
}

TEST_F(Bench, LongerThanTheBookSaysAsksForTheTape) {
    cutNext(bench.nextToCut()->lot->length + metres(1));
    ASSERT_TRUE(why);
    EXPECT_EQ(why->code(), Code::MeasureFirst);
    EXPECT_EQ(bench.step(), Step::Cut);
}

TEST_F(Bench, ALostLengthOpensTheNextAttempt) {
    const PieceRole role = bench.nextToCut()->piece.role;
    EXPECT_TRUE(bench.cutPieces().empty());
    cutNext(bench.nextToCut()->piece.planned);
    ASSERT_EQ(bench.cutPieces().size(), 1U);
    const Length planned = piece(role).piece.planned;
    bench.lose(bench.inHand(piece(role)), LostReason::CameShort);
    EXPECT_FALSE(why);
    EXPECT_EQ(bench.step(), Step::Cut);
    EXPECT_GT(bench.nextToCut()->piece.planned, planned);
    EXPECT_EQ(bench.nextToCut()->piece.current().number, 2);
}

TEST_F(Bench, StepsGoOnAndBackAndStayWithTheJob) {
    EXPECT_EQ(bench.card()->job.benchStep, BenchStep::LookOver);
    EXPECT_FALSE(bench.canGoBack());
    bench.goOn();
    bench.goOn();
    EXPECT_EQ(bench.card()->job.benchStep, BenchStep::Crosses);
    bench.goBack();
    EXPECT_EQ(bench.card()->job.benchStep, BenchStep::Mains);
    const JobId job = *bench.selected();
    bench.putDown();
    EXPECT_FALSE(bench.canGoOn()) << "it lies on no machine";
    BenchPresenter other{runner, shift};
    other.refresh();
    other.select(job);
    other.take();
    EXPECT_EQ(other.card()->job.benchStep, BenchStep::Mains);
    other.goOn();
    other.goOn();
    EXPECT_EQ(other.card()->job.benchStep, BenchStep::Finish);
    EXPECT_FALSE(other.canGoOn());
}

TEST_F(Bench, ASecondPressOfAStepWaitsForTheFirst) {
    runner.held = true;
    bench.goOn();
    bench.goOn();
    runner.release();
    EXPECT_EQ(bench.card()->job.benchStep, BenchStep::Mains);
    EXPECT_EQ(runner.writes, 1);
}

TEST_F(Bench, AChangeFromTheCounterWaitsForANod) {
    EXPECT_FALSE(bench.canNod());
    const Job& job = bench.card()->job;
    const desk::ChangeAsked command{*job.id, job.asked, {lb("54"), lb("52")}, shift.by("counter")};
    ASSERT_TRUE(desk::inTransaction(ledger, desk::Access::Write, [&](desk::Transaction& t) {
                    return desk::changeAsked(t, command);
                }).has_value());
    bench.refresh();
    ASSERT_TRUE(bench.canNod());
    EXPECT_EQ(bench.card()->change->before, (TensionPair{lb("55"), lb("53")}));
    cutNext(bench.nextToCut()->piece.planned);
    bench.finish(*bench.card()->job.id, {lb("55"), lb("53")}, {});
    ASSERT_TRUE(why);
    EXPECT_EQ(why->code(), Code::ChangedMeanwhile);
    bench.nod();
    EXPECT_FALSE(bench.canNod());
    EXPECT_FALSE(bench.card()->change);
}

TEST_F(Bench, WhatWasDoneLastIsAskedBeforeItIsTakenBack) {
    std::optional<desk::LastDone> last;
    int answers = 0;
    QObject::connect(&bench, &BenchPresenter::lastDoneKnown, [&](const std::optional<desk::LastDone>& known) {
        last = known;
        ++answers;
    });
    bench.askLastDone();
    EXPECT_EQ(answers, 1);
    EXPECT_FALSE(last) << "nothing was cut yet";
    const JobId job = *bench.selected();
    const std::string tag = bench.nextToCut()->lot->tag;
    const Length before = lot(tag).length;
    cutNext(bench.nextToCut()->piece.planned);
    bench.finish(job, {lb("55"), lb("53")}, {});
    ASSERT_NE(bench.selected(), job) << "the next one is up";

    const int writes = runner.writes;
    bench.askLastDone();
    ASSERT_TRUE(last);
    EXPECT_EQ(last->job.id, job);
    EXPECT_FALSE(last->cut);
    EXPECT_EQ(runner.writes, writes) << "asking takes nothing back";
    bench.takeBack(*last);
    EXPECT_FALSE(why);
    EXPECT_EQ(bench.selected(), job) << "it is at hand again";
    EXPECT_EQ(bench.card()->job.state, JobState::OnTheMachine);
    EXPECT_EQ(lot(tag).length, before - bench.card()->pieces.front().piece.planned);

    bench.askLastDone();
    ASSERT_TRUE(last && last->cut);
    bench.takeBack(*last);
    EXPECT_EQ(lot(tag).length, before);
    EXPECT_EQ(bench.step(), Step::Cut);
    EXPECT_EQ(bench.nextToCut()->piece.current().number, 2);
}

TEST_F(Bench, AnEndThatIsTooShortIsSetAsideAndAnotherReelIsNext) {
    const PieceInHand inHand = bench.inHand(*bench.nextToCut());
    const Lot end = *bench.nextToCut()->lot;
    std::optional<desk::EndSetAside> aside;
    QObject::connect(&bench, &BenchPresenter::endSetAside,
                     [&](const desk::EndSetAside& done, PieceRole) { aside = done; });
    bench.setEndAside(inHand, *end.id, metres(6.05), metres(10.8));
    ASSERT_TRUE(aside);
    EXPECT_EQ(lot(end.tag).kind, LotKind::Remnant);
    EXPECT_EQ(lot(end.tag).length, metres(6.05));
    EXPECT_FALSE(bench.nextToCut()->lot) << "no other reel of it holds so much";
}

TEST_F(Bench, WhatLiesOnTheMachineAlreadyIsKnownBeforeAnotherIsTaken) {
    EXPECT_FALSE(bench.lyingThere()) << "it lies there itself";
    selectLogged("K");
    EXPECT_EQ(bench.lyingThere(), 2122);
    shift.setMachine(machine("Bench B"));
    EXPECT_FALSE(bench.lyingThere());
}

TEST_F(Bench, TakingBesideAnotherRacketIsMeantTheSecondTime) {
    std::vector<std::int64_t> asked;
    QObject::connect(&bench, &BenchPresenter::otherLies, [&](std::int64_t number) { asked.push_back(number); });
    selectLogged("K");
    const JobId mine = *bench.selected();
    bench.take();
    EXPECT_EQ(asked, std::vector<std::int64_t>{2122});
    EXPECT_TRUE(bench.isAskedAboutOther());
    EXPECT_EQ(bench.step(), Step::Take) << "nothing was taken";

    bench.select(bench.queue().front().id == mine ? bench.queue().back().id : bench.queue().front().id);
    bench.select(mine);
    EXPECT_FALSE(bench.isAskedAboutOther()) << "whoever comes back is asked again";
    bench.take();
    EXPECT_EQ(asked.size(), 2U);
    bench.take();
    EXPECT_EQ(bench.step(), Step::Cut);
    cutNext(bench.nextToCut()->piece.planned);
    EXPECT_EQ(asked.size(), 2U) << "it was meant";
    EXPECT_EQ(bench.step(), Step::Finish);
}

TEST_F(Bench, CuttingForTheWrongOneOfTwoIsMeantTheSecondTime) {
    selectLogged("K");
    const JobId mine = *bench.selected();
    bench.take();
    bench.take();
    const auto other = std::ranges::find(bench.queue(), 2122, &desk::JobLine::number);
    ASSERT_NE(other, bench.queue().end());
    bench.select(other->id);
    EXPECT_EQ(bench.lyingThere(), look([&](desk::Transaction& t) { return t.jobs().get(mine)->number; }));
    const std::string tag = bench.nextToCut()->lot->tag;
    const Length before = lot(tag).length;
    const Length planned = bench.nextToCut()->piece.planned;
    cutNext(planned);
    EXPECT_EQ(lot(tag).length, before) << "the first press only says what lies there too";
    cutNext(planned);
    EXPECT_EQ(lot(tag).length, before - planned);
}

TEST_F(Bench, PutDownGoesBackToTheQueue) {
    const JobId job = *bench.selected();
    bench.putDown();
    EXPECT_EQ(bench.selected(), job);
    EXPECT_EQ(bench.step(), Step::Take);
}

TEST_F(Bench, AfterARacketIsDoneThePromisedOneIsNextAndNotWhatLiesOnTheOtherMachine) {
    const JobId other = *bench.selected(); // 2122, on Bench A
    selectLogged("K");
    bench.take();
    bench.take(); // beside it, and meant
    cutNext(bench.nextToCut()->piece.planned);
    bench.finish(*bench.card()->job.id, {lb("52"), lb("50")}, {});
    EXPECT_NE(bench.selected(), other);
    EXPECT_EQ(bench.step(), Step::Take);
}

// Scenario 1: 52 lb = 23.59 kg on Bench B, steps of 0.5 either side.
TEST_F(Bench, TheChosenMachinesDialIsOnTheCard) {
    selectLogged("K"); // 52/50 lb
    shift.setMachine(machine("Bench B"));
    ASSERT_TRUE(bench.card()->mains);
    EXPECT_NEAR(bench.card()->mains->exact, 23.587, 0.001);
    EXPECT_EQ(bench.card()->mains->below.text(), "23.5 kg");
    EXPECT_EQ(bench.card()->mains->above.text(), "24 kg");
    EXPECT_EQ(bench.card()->mains->nearest().text(), "23.5 kg");
    EXPECT_EQ(bench.card()->crosses->nearest().text(), "22.5 kg");
}

TEST_F(Bench, LotsOfTheStringAreOfferedThePlannedOneFirst) {
    selectLogged("K");
    const auto lots = bench.lotsFor(*bench.nextToCut());
    ASSERT_EQ(lots.size(), 3U); // K-2, K-4, K-7
    EXPECT_EQ(lots.front().id, bench.nextToCut()->lot->id);
}

TEST_F(Bench, AnotherStationsFinishTakesTheJobOffTheQueueHere) {
    const JobId job = *bench.selected();
    BenchPresenter other{runner, shift};
    other.refresh();
    other.confirmCut(other.inHand(*other.nextToCut()), std::nullopt, other.nextToCut()->piece.planned, std::nullopt);
    other.finish(*other.card()->job.id, {lb("55"), lb("53")}, {});
    bench.refresh();
    EXPECT_NE(bench.selected(), job);
}

TEST_F(Bench, AnotherRowTakesTheOldCardAwayAtOnce) {
    runner.held = true;
    selectLogged("K");
    const JobId chosen = *bench.selected();
    EXPECT_FALSE(bench.card());
    EXPECT_EQ(bench.step(), Step::Nothing);
    EXPECT_FALSE(bench.canPutDown());
    runner.release();
    ASSERT_TRUE(bench.card());
    EXPECT_EQ(bench.card()->job.id, chosen);
}

TEST_F(Bench, ALateCardOfARacketThatIsNotChosenAnyMoreIsDropped) {
    const JobId first = *bench.selected();
    runner.held = true;
    selectLogged("K");
    bench.select(first);
    std::vector<JobId> shown;
    QObject::connect(&bench, &BenchPresenter::cardChanged, [&] {
        if (bench.card()) {
            shown.push_back(*bench.card()->job.id);
        }
    });
    runner.release();
    EXPECT_EQ(shown, std::vector{first});
}

TEST_F(Bench, WhatWasBegunOnOneCardIsNotDoneToAnother) {
    const std::string tag = bench.nextToCut()->lot->tag;
    const Length before = lot(tag).length;
    const PieceInHand inHand = bench.inHand(*bench.nextToCut());
    selectLogged("K");
    bench.confirmCut(inHand, std::nullopt, metres(10.8), std::nullopt);
    bench.lose(inHand, LostReason::Kinked);
    bench.finish(inHand.job, {lb("52"), lb("50")}, {});
    EXPECT_EQ(runner.writes, 0);
    EXPECT_EQ(lot(tag).length, before);
}

TEST_F(Bench, ACommandOnItsWayStaysWithItsJobWhateverIsChosenNext) {
    const JobId first = *bench.selected();
    runner.held = true;
    cutNext(metres(10.8));
    selectLogged("K");
    const JobId second = *bench.selected();
    runner.release();
    const auto pieces = [&](JobId id) { return look([&](desk::Transaction& t) { return t.jobs().get(id)->pieces; }); };
    EXPECT_TRUE(std::ranges::all_of(pieces(first), &JobPiece::isCut));
    EXPECT_TRUE(std::ranges::none_of(pieces(second), &JobPiece::isCut));
    EXPECT_EQ(bench.card()->job.id, second);
}

TEST_F(Bench, AfterACommandNothingComesNextUntilTheCardShowsIt) {
    runner.held = true;
    cutNext(bench.nextToCut()->piece.planned);
    EXPECT_EQ(bench.step(), Step::Nothing);
    runner.releaseOne(); // it was cut; the card is still the old one
    EXPECT_EQ(bench.step(), Step::Nothing);
    runner.release();
    EXPECT_EQ(bench.step(), Step::Finish);
}

TEST_F(Bench, OneCommandIsOneRefresh) {
    const int before = runner.reads;
    cutNext(bench.nextToCut()->piece.planned);
    EXPECT_EQ(runner.reads - before, 3) << "the queue, the shelf and the card, once each";
}

TEST_F(Bench, BeforeAnythingIsWrittenSomebodyMustBeWorking) {
    Shift nobody{clock};
    nobody.setShop(facts());
    EXPECT_FALSE(nobody.staff()) << "among several nobody is guessed";
    BenchPresenter other{runner, nobody};
    other.refresh();
    int asked = 0;
    QObject::connect(&nobody, &Shift::staffWanted, [&] { ++asked; });
    other.putDown();
    EXPECT_EQ(asked, 1);
    EXPECT_EQ(runner.writes, 0);
    nobody.setStaff(*nobody.shop().staff.back().id);
    other.putDown();
    EXPECT_EQ(asked, 1);
    EXPECT_EQ(runner.writes, 1);
}

} // namespace
} // namespace rw::ui::test
