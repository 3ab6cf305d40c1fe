// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/counter.h"
#include "core/desk/intake.h"
#include "tests/stories/windows/slow_ledger.h"
#include "ui/bench/bench_station.h"
#include "ui/bench/cut_strip.h"
#include "ui/presenter/bench_presenter.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/margin_note.h"

#include <QListView>

#include <gmock/gmock.h>

#include <algorithm>

namespace rw::ui::test {
namespace {

using testing::HasSubstr;

/// Tomas Ferreday's hybrid is logged, K mains at 50 lb off the end K-2 and L crosses at 52 lb, and lies on Bench A.
class TomasAtTheBench : public SlowLedger {
protected:
    TomasAtTheBench() {
        log();
        openWindow();
        somebodyWorks();
        press(Qt::Key_2, Qt::ControlModifier);
        press(Qt::Key_Home);
        for (std::size_t row = 0; row < presenter().queue().size() && presenter().selected() != m_job; ++row) {
            press(Qt::Key_Down);
        }
        EXPECT_EQ(presenter().selected(), m_job);
        press(Qt::Key_T);
        press(Qt::Key_T); // beside 2122, and meant
        EXPECT_EQ(presenter().step(), BenchPresenter::Step::Cut);
    }
    template<class Work>
    auto look(Work work) {
        return desk::inTransaction(*ledger, desk::Access::Read, work).value();
    }
    desk::IntakeDraft draft(std::string_view person, std::string_view mains, std::string_view crosses) {
        return look([&](desk::Transaction& t) -> Result<desk::IntakeDraft> {
            const auto people = desk::findPeople(t, person);
            const auto strings = t.strings().all();
            const auto string = [&](std::string_view code) {
                return desk::WantedString{.article = *std::ranges::find(strings, code, &StringArticle::code)->id,
                                          .lot = std::nullopt};
            };
            const auto& racket = people->front().rackets.front();
            return desk::IntakeDraft{.frame = *racket.frame.id,
                                     .racket = racket.racket.id,
                                     .method = Method::TwoPiece,
                                     .route = std::nullopt,
                                     .shortSide = std::nullopt,
                                     .mains = string(mains),
                                     .crosses = string(crosses),
                                     .tensions = {pull("50"), pull("52")},
                                     .extras = {}};
        });
    }
    desk::IntakePreview preview(const desk::IntakeDraft& wish) {
        return look([&](desk::Transaction& t) { return desk::previewIntake(t, wish, kThursday); });
    }
    static Tension pull(std::string_view text) { return *Tension::tryParse(text, TensionUnit::Pound); }
    BenchStation& bench() { return *window->bench(); }
    BenchPresenter& presenter() { return bench().presenter(); }
    Job job() { return *ledger->begin(desk::Access::Read)->jobs().get(*m_job); }
    std::string note() { return bench().cutStrip()->note()->text().toStdString(); }
    void finish() {
        press(Qt::Key_Return);
        press(Qt::Key_Return);
        ASSERT_EQ(job().state, JobState::Strung);
    }

private:
    void log() {
        const desk::IntakeDraft wish = draft("Ferreday", "K", "L");
        const auto logged = desk::inTransaction(*ledger, desk::Access::Write, [&](desk::Transaction& t) {
            const auto people = desk::findPeople(t, "Ferreday");
            return desk::logJob(t, {.requestKey = "tomas",
                                    .customer = *people->front().customer.id,
                                    .racket = *wish.racket,
                                    .draft = wish,
                                    .note = "",
                                    .promised = std::nullopt,
                                    .by = {*t.shop().staff().front().id, "counter", kThursday}});
        });
        ASSERT_TRUE(logged.has_value());
        m_job = logged->id;
    }

    std::optional<JobId> m_job;
};

// Scenario 2, by keyboard alone.
TEST_F(TomasAtTheBench, MeasuresTheEndAndCutsItAll) {
    press(Qt::Key_Return);
    ASSERT_TRUE(bench().cutStrip()->isVisible());
    EXPECT_THAT(note(), HasSubstr("fits by 0.2 m if the book is right, measure before cutting"));
    type("6.35");
    press(Qt::Key_Tab);
    press(Qt::Key_Tab);
    type("6.35");
    press(Qt::Key_Return);
    EXPECT_THAT(message(), HasSubstr("Cut 6.35 m off K-2"));
    EXPECT_THAT(message(), HasSubstr("corrected by -0.05 m"));
    EXPECT_THAT(message(), HasSubstr("used up and closed"));
    EXPECT_FALSE(lot("K-2").isOpen());
    EXPECT_TRUE(job().pieces.front().current().cut->allThereWas);

    press(Qt::Key_Return);
    press(Qt::Key_Return);
    EXPECT_EQ(lot("L-3").length, metres(43.1));
    finish();
    EXPECT_EQ(job().total.minor(), 2850);
    const auto next = preview(draft("Ferreday", "K", "L"));
    EXPECT_EQ(next.pieces[0].cut, metres(6.2)) << "all there was is no usual cut";
    EXPECT_EQ(next.pieces[0].lot->tag, "K-4");
}

TEST_F(TomasAtTheBench, KeepsAnEndThatIsTooShortAsARemnant) {
    press(Qt::Key_Return);
    press(Qt::Key_R, Qt::ControlModifier);
    EXPECT_THAT(note(), HasSubstr("Measure the end first"));
    EXPECT_EQ(lot("K-2").length, metres(6.4));
    type("6.05");
    press(Qt::Key_Return);
    EXPECT_THAT(note(), HasSubstr("0.15 m too little"));
    EXPECT_EQ(bench().cutStrip()->measuredNote()->text(), QStringLiteral("▲ Ctrl+R keeps it as a remnant."));
    ASSERT_TRUE(bench().cutStrip()->isVisible());
    press(Qt::Key_R, Qt::ControlModifier);
    EXPECT_FALSE(bench().cutStrip()->isVisible());
    EXPECT_THAT(message(), HasSubstr("K-2 is kept as a remnant of 6.05 m. Next is K-4: mains."));
    EXPECT_EQ(lot("K-2").kind, LotKind::Remnant);

    press(Qt::Key_Return);
    press(Qt::Key_Return);
    EXPECT_EQ(lot("K-4").length, metres(193.8));
    EXPECT_EQ(lot("K-2").length, metres(6.05));
    const auto cosmos = preview(draft("Arberley", "L", "K"));
    EXPECT_EQ(cosmos.pieces[1].lot->tag, "K-2") << "somebody's crosses";
    EXPECT_EQ(cosmos.pieces[1].leavesOnLot, metres(0.45));
}

// Scenario 5, by keyboard alone.
TEST_F(TomasAtTheBench, ComesUpShortAndPaysOnce) {
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    ASSERT_TRUE(job().pieces.back().isCut());
    press(Qt::Key_L);
    press(Qt::Key_1);
    EXPECT_THAT(message(), HasSubstr("Lost 5.6 m, crosses: came short."));
    EXPECT_THAT(message(), HasSubstr("The next cut is 5.75 m."));
    press(Qt::Key_Return);
    EXPECT_EQ(bench().cutStrip()->lengthEdit()->readable(), metres(5.75));
    type("5.75");
    press(Qt::Key_Return);
    EXPECT_EQ(lot("L-3").length, metres(48.7) - metres(5.6) - metres(5.75));
    finish();
    EXPECT_EQ(job().total.minor(), 2850) << "the customer pays once";
    EXPECT_EQ(preview(draft("Ferreday", "K", "L")).pieces[1].cut, metres(5.75));
    auto petras = draft("Lindobi", "K", "L");
    const auto longer = preview(petras);
    EXPECT_EQ(longer.pieces[1].cut, metres(5.75)) << "longer for this frame, whoever's it is";
    EXPECT_EQ(longer.pieces[1].cameShortAt, metres(5.6));
}

} // namespace
} // namespace rw::ui::test
