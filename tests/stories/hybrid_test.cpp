// SPDX-License-Identifier: GPL-3.0-or-later
// Tomas Ferreday wants K mains at 50 lb and L crosses at 52 lb in his Aldermoor 98; the mains fit on a reel's end.
#include "tests/stories/story.h"

#include "core/desk/bench.h"
#include "core/desk/counter.h"
#include "core/desk/intake.h"
#include "core/desk/set_end_aside.h"
#include "core/desk/stockroom.h"

#include <gtest/gtest.h>

#include <utility>

using namespace rw;
using namespace rw::stories;
using namespace std::chrono_literals;

namespace {

constexpr CivilDate kToday = std::chrono::year(2026) / 5 / 14;

class Hybrid : public Story {
protected:
    void SetUp() override {
        Story::SetUp();
        write(ledger(), [&](desk::Transaction& open) -> Result<void> {
            const Instant morning = at(kToday, 10h);
            (void)putOnShelf(open, shop(), "K-2", shop().kestrelline, mm(200'000), mm(6'400), morning);
            (void)putOnShelf(open, shop(), "K-4", shop().kestrelline, mm(200'000), mm(200'000), morning);
            (void)putOnShelf(open, shop(), "L-3", shop().larkspun, mm(200'000), mm(48'700), morning);
            m_tomas = customer(open, "Tomas Ferreday");
            m_racket = racket(open, *m_tomas, shop().aldermoor98);
            return {};
        });
    }

    [[nodiscard]] desk::IntakeDraft draft() const {
        return {.frame = shop().aldermoor98,
                .racket = m_racket,
                .method = std::nullopt,
                .route = std::nullopt,
                .shortSide = std::nullopt,
                .mains = {.article = shop().kestrelline, .lot = std::nullopt},
                .crosses = desk::WantedString{.article = shop().larkspun, .lot = std::nullopt},
                .tensions = {lb(50), lb(52)},
                .extras = {}};
    }

    [[nodiscard]] desk::IntakePreview preview() {
        return read(ledger(),
                    [&](desk::Transaction& open) { return desk::previewIntake(open, draft(), at(kToday, 11h)); });
    }

    [[nodiscard]] Job log() {
        return write(ledger(), [&](desk::Transaction& open) {
            return desk::logJob(open, {.requestKey = "tomas",
                                       .customer = *m_tomas,
                                       .racket = *m_racket,
                                       .draft = draft(),
                                       .note = "",
                                       .promised = std::nullopt,
                                       .by = shop().counter(at(kToday, 11h))});
        });
    }

    [[nodiscard]] Lot lot(std::string_view tag) {
        return read(ledger(), [&](desk::Transaction& open) { return Result<Lot>(lotTagged(open, tag)); });
    }

    [[nodiscard]] desk::LotLife life(std::string_view tag) {
        return read(ledger(), [&](desk::Transaction& open) { return desk::lotLife(open, *lotTagged(open, tag).id); });
    }

    std::optional<CustomerId> m_tomas;
    std::optional<RacketId> m_racket;
};

TEST_P(Hybrid, MainsFitOnTheEndIfTheBookIsRight) {
    const auto shown = preview();
    ASSERT_EQ(shown.pieces.size(), 2U);
    EXPECT_EQ(shown.pieces[0].lot->tag, "K-2");
    EXPECT_EQ(shown.pieces[0].cut, mm(6'200));
    EXPECT_EQ(shown.pieces[0].leavesOnLot, mm(200));
    EXPECT_EQ(shown.pieces[0].fit, Fit::FitsIfBookIsRight);
    EXPECT_EQ(shown.pieces[1].lot->tag, "L-3");
    EXPECT_EQ(shown.pieces[1].cut, mm(5'600));
    EXPECT_EQ(shown.pieces[1].fit, Fit::Fits);
}

TEST_P(Hybrid, CostsLabourAndTwoHalves) {
    const auto charges = preview().quote.charges;
    ASSERT_EQ(charges.size(), 3U);
    EXPECT_EQ(charges[0].amount, pounds(1'400));
    EXPECT_EQ(charges[1].amount, pounds(650));
    EXPECT_EQ(charges[2].amount, pounds(800));
    const Job job = log();
    EXPECT_EQ(job.total, pounds(2'850));
    EXPECT_EQ(job.asked, (TensionPair{lb(50), lb(52)})); // higher crosses are not an error
}

TEST_P(Hybrid, TheEndIsMeasuredAndUsedUpAndTeachesNothing) {
    const Job job = log();
    const By by = shop().bench(at(kToday, 12h));
    const auto mains = write(ledger(), [&](desk::Transaction& open) {
        (void)must(desk::takeJob(open, {*job.id, shop().benchA, by}));
        return desk::confirmCut(open, {*job.id, PieceRole::Mains, 1, std::nullopt, mm(6'350), mm(6'350), by});
    });
    EXPECT_EQ(mains.corrected, mm(-50));
    EXPECT_EQ(mains.lot->length, mm(0));
    EXPECT_FALSE(lot("K-2").isOpen());
    EXPECT_TRUE(mains.job.pieces.front().current().cut->allThereWas);

    // The crosses come later, from another reel.
    write(ledger(), [&](desk::Transaction& open) {
        return desk::confirmCut(open, {*job.id, PieceRole::Crosses, 1, std::nullopt, mm(5'600), std::nullopt, by});
    });
    write(ledger(), [&](desk::Transaction& open) {
        return desk::finishJob(open, {*job.id, {lb(50), lb(52)}, shop().benchA, "", by});
    });
    EXPECT_EQ(lot("L-3").length, mm(43'100));
    EXPECT_EQ(lot("K-4").length, mm(200'000));

    const auto ofK2 = life("K-2").movements;
    ASSERT_GE(ofK2.size(), 2U);
    EXPECT_EQ(ofK2[ofK2.size() - 2].reason, MovementReason::Measured);
    EXPECT_EQ(ofK2[ofK2.size() - 2].change, mm(-50));
    EXPECT_EQ(ofK2.back().reason, MovementReason::Cut);
    EXPECT_EQ(ofK2.back().change, mm(-6'350));
    EXPECT_EQ(life("L-3").movements.back().change, mm(-5'600));

    const auto next = preview();
    EXPECT_EQ(next.pieces[0].cut, mm(6'200)); // 6.35 m was all there was, not what the frame needs
    EXPECT_EQ(next.pieces[0].lot->tag, "K-4");
    EXPECT_EQ(next.pieces[1].cut, mm(5'600));
}

TEST_P(Hybrid, AnEndThatIsTooShortBecomesARemnantAndIsSomebodysCrossesLater) {
    const Job job = log();
    const By by = shop().bench(at(kToday, 12h));
    write(ledger(), [&](desk::Transaction& open) { return desk::takeJob(open, {*job.id, shop().benchA, by}); });
    const desk::SetEndAside tooShort{*job.id, PieceRole::Mains, 1, *lot("K-2").id, mm(6'050), mm(6'200), by};
    const auto aside = write(ledger(), [&](desk::Transaction& open) { return desk::setEndAside(open, tooShort); });
    EXPECT_EQ(aside.end.kind, LotKind::Remnant);
    EXPECT_EQ(aside.end.length, mm(6'050));
    ASSERT_TRUE(aside.next);
    EXPECT_EQ(aside.next->tag, "K-4");
    EXPECT_EQ(life("K-2").movements.back().reason, MovementReason::Measured);
    EXPECT_EQ(life("K-2").movements.back().change, mm(-350));
    const std::string once = everything();
    (void)write(ledger(), [&](desk::Transaction& open) { return desk::setEndAside(open, tooShort); });
    EXPECT_EQ(everything(), once);

    write(ledger(), [&](desk::Transaction& open) {
        return desk::confirmCut(open, {*job.id, PieceRole::Mains, 1, std::nullopt, mm(6'200), std::nullopt, by});
    });
    EXPECT_EQ(lot("K-4").length, mm(193'800));
    EXPECT_EQ(lot("K-2").length, mm(6'050));

    // Somebody wants it the other way round: L mains, K crosses.
    desk::IntakeDraft other = draft();
    std::swap(other.mains, *other.crosses);
    const auto shown =
        read(ledger(), [&](desk::Transaction& open) { return desk::previewIntake(open, other, at(kToday, 13h)); });
    EXPECT_EQ(shown.pieces[1].lot->tag, "K-2");
    EXPECT_EQ(shown.pieces[1].cut, mm(5'600));
    EXPECT_EQ(shown.pieces[1].leavesOnLot, mm(450));
}

TEST_P(Hybrid, EachReelIsChargedOnceWhateverIsPressedTwice) {
    const Job job = log();
    const By by = shop().bench(at(kToday, 12h));
    const auto takeAndCutBoth = [&](desk::Transaction& open) -> Result<bool> {
        (void)must(desk::takeJob(open, {*job.id, shop().benchA, by}));
        const auto mains =
            must(desk::confirmCut(open, {*job.id, PieceRole::Mains, 1, std::nullopt, mm(6'200), std::nullopt, by}));
        const auto crosses =
            must(desk::confirmCut(open, {*job.id, PieceRole::Crosses, 1, std::nullopt, mm(5'600), std::nullopt, by}));
        return mains.already && crosses.already;
    };
    EXPECT_FALSE(write(ledger(), takeAndCutBoth));
    const std::string once = everything();
    EXPECT_TRUE(write(ledger(), takeAndCutBoth));
    EXPECT_EQ(everything(), once);
    EXPECT_EQ(lot("K-2").length, mm(200));
    EXPECT_EQ(lot("L-3").length, mm(43'100));
}

ON_BOTH_ENGINES(Hybrid);

} // namespace
