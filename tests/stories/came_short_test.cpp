// SPDX-License-Identifier: GPL-3.0-or-later
// The crosses run out at the last one: the length is lost, a longer one follows, and the customer pays once.
#include "tests/stories/story.h"

#include "core/desk/bench.h"
#include "core/desk/books.h"
#include "core/desk/counter.h"
#include "core/desk/intake.h"
#include "core/pricing/quote.h"

#include <gtest/gtest.h>

using namespace rw;
using namespace rw::stories;
using namespace std::chrono_literals;

namespace {

constexpr CivilDate kToday = std::chrono::year(2026) / 5 / 14;

class CameShort : public Story {
protected:
    void SetUp() override {
        Story::SetUp();
        write(ledger(), [&](desk::Transaction& open) -> Result<void> {
            const Instant morning = at(kToday, 10h);
            (void)putOnShelf(open, shop(), "K-4", shop().kestrelline, mm(200'000), mm(200'000), morning);
            (void)putOnShelf(open, shop(), "L-3", shop().larkspun, mm(200'000), mm(48'700), morning);
            m_tomas = customer(open, "Tomas Ferreday");
            m_racket = racket(open, *m_tomas, shop().aldermoor98);
            m_another = racket(open, customer(open, "Cosmo Arberley"), shop().aldermoor98);
            return {};
        });
    }
    [[nodiscard]] desk::IntakeDraft draftFor(RacketId which) const {
        return {.frame = shop().aldermoor98,
                .racket = which,
                .method = Method::TwoPiece,
                .route = std::nullopt,
                .shortSide = std::nullopt,
                .mains = {.article = shop().kestrelline, .lot = std::nullopt},
                .crosses = desk::WantedString{.article = shop().larkspun, .lot = std::nullopt},
                .tensions = {lb(50), lb(52)},
                .extras = {}};
    }
    [[nodiscard]] desk::IntakePreview previewFor(RacketId which) {
        return read(ledger(), [&](desk::Transaction& open) {
            return desk::previewIntake(open, draftFor(which), at(kToday, 14h));
        });
    }
    [[nodiscard]] Job log() {
        return write(ledger(), [&](desk::Transaction& open) {
            return desk::logJob(open, {.requestKey = "tomas",
                                       .customer = *m_tomas,
                                       .racket = *m_racket,
                                       .draft = draftFor(*m_racket),
                                       .note = "",
                                       .promised = std::nullopt,
                                       .by = shop().counter(at(kToday, 11h))});
        });
    }
    void cut(JobId job, PieceRole role, int attempt, Length length, const By& by) {
        (void)write(ledger(), [&](desk::Transaction& open) {
            return desk::confirmCut(open, {job, role, attempt, std::nullopt, length, std::nullopt, by});
        });
    }
    [[nodiscard]] Lot lot(std::string_view tag) {
        return read(ledger(), [&](desk::Transaction& open) { return Result<Lot>(lotTagged(open, tag)); });
    }

    std::optional<CustomerId> m_tomas;
    std::optional<RacketId> m_racket;
    std::optional<RacketId> m_another;
};

TEST_P(CameShort, BothLengthsLeaveTheReelTheCustomerPaysOnceAndTheNextCutIsLonger) {
    const Job job = log();
    const By by = shop().bench(at(kToday, 12h));
    (void)write(ledger(), [&](desk::Transaction& open) { return desk::takeJob(open, {*job.id, shop().benchA, by}); });
    cut(*job.id, PieceRole::Mains, 1, mm(6'200), by);
    cut(*job.id, PieceRole::Crosses, 1, mm(5'600), by);
    const Job lost = write(ledger(), [&](desk::Transaction& open) {
        return desk::loseLength(open, {*job.id, PieceRole::Crosses, 1, LostReason::CameShort, by});
    });
    EXPECT_EQ(lost.pieces[1].planned, mm(5'750));
    cut(*job.id, PieceRole::Crosses, 2, mm(5'750), by);
    const Job strung = write(ledger(), [&](desk::Transaction& open) {
        return desk::finishJob(open, {*job.id, job.asked, shop().benchA, "", by});
    });
    EXPECT_EQ(lot("L-3").length, mm(48'700 - 5'600 - 5'750));
    EXPECT_EQ(strung.total, pounds(2'850));

    const auto month =
        read(ledger(), [&](desk::Transaction& open) { return desk::earned(open, desk::monthOf(kToday)); });
    ASSERT_EQ(month.jobs.size(), 1U);
    const Lot k4 = lot("K-4");
    const Lot l3 = lot("L-3");
    EXPECT_EQ(month.sum.string, costOfCut(k4.landedCost(), k4.nominal, mm(6'200)) +
                                    costOfCut(l3.landedCost(), l3.nominal, mm(5'600)) +
                                    costOfCut(l3.landedCost(), l3.nominal, mm(5'750)));

    EXPECT_EQ(previewFor(*m_racket).pieces[1].cut, mm(5'750)) << "what was enough last time";
    const auto others = previewFor(*m_another);
    EXPECT_EQ(others.pieces[1].cut, mm(5'750)) << "longer for this frame, whoever's it is";
    EXPECT_EQ(others.pieces[1].cameShortAt, mm(5'600));
    EXPECT_EQ(others.pieces[0].cut, mm(6'200));
}

ON_BOTH_ENGINES(CameShort);

} // namespace
