// SPDX-License-Identifier: GPL-3.0-or-later
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
    EXPECT_EQ(bench.step(), Step::Cut);
    const Length planned = bench.nextToCut()->piece.planned;
    const std::string tag = bench.nextToCut()->lot->tag;
    const Length before = lot(tag).length;
    bench.confirmCut(bench.nextToCut()->piece.role, std::nullopt, planned, std::nullopt);
    EXPECT_EQ(lot(tag).length, before - planned);
    EXPECT_EQ(bench.step(), Step::Finish);
    const JobId job = *bench.card()->job.id;
    bench.finish({lb("52"), lb("50")}, QStringLiteral(" a hard weave "));
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
    const PieceRole role = bench.nextToCut()->piece.role;
    const Length planned = bench.nextToCut()->piece.planned;
    runner.held = true;
    bench.confirmCut(role, std::nullopt, planned, std::nullopt);
    bench.confirmCut(role, std::nullopt, planned, std::nullopt);
    runner.release();
    EXPECT_EQ(lot(tag).length, before - planned);
}

TEST_F(Bench, ACutThatWasKeptThoughNobodyHeardOfItIsNotChargedAgain) {
    const std::string tag = bench.nextToCut()->lot->tag;
    const Length before = lot(tag).length;
    const PieceRole role = bench.nextToCut()->piece.role;
    const Length planned = bench.nextToCut()->piece.planned;
    runner.world = HeldDeskRunner::World::LostAfter;
    bench.confirmCut(role, std::nullopt, planned, std::nullopt);
    EXPECT_FALSE(bench.trouble().isEmpty());
    runner.world = HeldDeskRunner::World::Whole;
    std::optional<desk::CutDone> again;
    QObject::connect(&bench, &BenchPresenter::cut, [&](const desk::CutDone& done) { again = done; });
    bench.confirmCut(role, std::nullopt, planned, std::nullopt);
    ASSERT_TRUE(again);
    EXPECT_TRUE(again->already);
    EXPECT_EQ(lot(tag).length, before - planned);
}

TEST_F(Bench, LongerThanTheBookSaysAsksForTheTape) {
    const auto* next = bench.nextToCut();
    const Length tooLong = next->lot->length + metres(1);
    bench.confirmCut(next->piece.role, std::nullopt, tooLong, std::nullopt);
    ASSERT_TRUE(why);
    EXPECT_EQ(why->code(), Code::MeasureFirst);
    EXPECT_EQ(bench.step(), Step::Cut);
}

TEST_F(Bench, ALostLengthOpensTheNextAttempt) {
    const PieceRole role = bench.nextToCut()->piece.role;
    EXPECT_TRUE(bench.cutPieces().empty());
    bench.confirmCut(role, std::nullopt, bench.nextToCut()->piece.planned, std::nullopt);
    ASSERT_EQ(bench.cutPieces().size(), 1U);
    const Length planned = piece(role).piece.planned;
    bench.lose(role, LostReason::CameShort);
    EXPECT_FALSE(why);
    EXPECT_EQ(bench.step(), Step::Cut);
    EXPECT_GT(bench.nextToCut()->piece.planned, planned);
    EXPECT_EQ(bench.nextToCut()->piece.current().number, 2);
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
    bench.confirmCut(bench.nextToCut()->piece.role, std::nullopt, bench.nextToCut()->piece.planned, std::nullopt);
    bench.finish({lb("52"), lb("50")}, {});
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
    other.confirmCut(other.nextToCut()->piece.role, std::nullopt, other.nextToCut()->piece.planned, std::nullopt);
    other.finish({lb("55"), lb("53")}, {});
    bench.refresh();
    EXPECT_NE(bench.selected(), job);
}

} // namespace
} // namespace rw::ui::test
