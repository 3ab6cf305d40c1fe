// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/books.h"
#include "core/desk/lookups.h"
#include "core/desk/sold_string.h"
#include "core/desk/undo.h"
#include "tests/core/desk/demo_fixture.h"

// Packets beside reels: on the shelf, at the counter, at the bench, in the books.
namespace rw::desk::test {
namespace {

class Packets : public DemoEverywhere {
protected:
    void SetUp() override {
        DemoEverywhere::SetUp();
        SoldString k = soldK();
        k.article.packet = metres(12);
        k.packet = pounds(1800);
        ASSERT_TRUE(write([&](Transaction& t) { return changeString(t, k, kNow); }));
        m_box = boxOfFive("a box");
    }
    void TearDown() override { EXPECT_TRUE(ledger().check().empty()); }

    SoldString soldK() {
        const StringArticleId k = *string("K").id;
        return read([&](Transaction& t) { return soldString(t, k, kNow); }).value();
    }
    std::vector<Lot> boxOfFive(std::string key) {
        const ReceiveDelivery box{.requestKey = std::move(key),
                                  .supplier = {},
                                  .lines = {{.article = *string("K").id,
                                             .count = 5,
                                             .kind = LotKind::Packet,
                                             .nominal = metres(12),
                                             .priceEach = pounds(900)}},
                                  .shipping = pounds(50),
                                  .by = by("stockroom")};
        return write([&](Transaction& t) { return receiveDelivery(t, box); }).value();
    }

    RacketSummary petras() { return racketOf("Lindobi", "Aldermoor 98", "A"); }
    IntakeDraft fromPacket(const RacketSummary& racket, Method method, std::size_t packet = 0) {
        IntakeDraft draft = draftFor(racket, "K", "K", "52", "50");
        draft.method = method;
        draft.mains.lot = m_box[packet].id;
        return draft;
    }
    Job taken(const RacketSummary& racket, const IntakeDraft& draft, std::string_view key) {
        const Job job = logged(racket, draft, key);
        EXPECT_TRUE(take(*job.id));
        return job;
    }
    JobPiece piece(JobId job, PieceRole role) {
        return *look([&](Transaction& t) { return pieceOf(*t.jobs().get(job), role); });
    }
    ShelfLot pile() {
        const auto strings = read([](Transaction& t) { return shelf(t); }).value();
        for (const ShelfString& string : strings) {
            for (const ShelfLot& there : string.lots) {
                if (there.packets > 0) {
                    return there;
                }
            }
        }
        throw std::invalid_argument("no packets on the shelf");
    }
    Money stringCost(const Job& job) {
        const auto today = read([&](Transaction& t) { return earned(t, dayOf(std::chrono::year(2026) / 3 / 12)); });
        return std::ranges::find(today.value().jobs, job.number, &EarnedLine::number)->earnings.string;
    }
    static std::int64_t charged(const Quote& quote, ChargeKind kind) {
        std::int64_t pence = 0;
        for (const Charge& charge : quote.charges) {
            pence += charge.kind == kind ? charge.amount.minor() : 0;
        }
        return pence;
    }

    std::vector<Lot> m_box;
};
IN_MEMORY_AND_ON_BOTH_ENGINES(Packets);

TEST_P(Packets, LieOnTheShelfAsOnePileOfWhichEachIsAJob) {
    EXPECT_EQ(pile().packets, 5);
    EXPECT_EQ(pile().freePackets(), 5);
    EXPECT_EQ(pile().held(), metres(60));
    const auto before = read([](Transaction& t) { return shelf(t); }).value().front().wholeJobsFree;
    logged(petras(), fromPacket(petras(), Method::TwoPiece), "one of them");
    EXPECT_EQ(pile().packets, 5) << "it lies there until it is cut";
    EXPECT_EQ(pile().freePackets(), 4);
    EXPECT_EQ(pile().promised, metres(12));
    EXPECT_NE(pile().lot.id, m_box.front().id) << "a free one stands for the pile";
    EXPECT_EQ(read([](Transaction& t) { return shelf(t); }).value().front().wholeJobsFree, before - 1);
}

TEST_P(Packets, ABedFromOneUsesItUpAtItsOwnPrice) {
    const auto shown = preview(fromPacket(petras(), Method::TwoPiece));
    ASSERT_TRUE(shown);
    ASSERT_EQ(shown->pieces.size(), 2U);
    EXPECT_EQ(shown->pieces[0].cut, metres(6.2)) << "the mains are measured off";
    EXPECT_EQ(shown->pieces[1].cut, metres(5.8)) << "the crosses get the rest";
    EXPECT_EQ(shown->pieces[1].cutFrom, CutFrom::Packet);
    EXPECT_EQ(shown->pieces[1].fit, Fit::Fits);
    EXPECT_EQ(shown->pieces[1].lot->id, m_box.front().id);
    EXPECT_EQ(charged(shown->quote, ChargeKind::Packet), 1800) << "once, however it is halved";
    EXPECT_EQ(charged(shown->quote, ChargeKind::FullBed), 0);
    ASSERT_EQ(shown->ownSets.size(), 1U);
    EXPECT_TRUE(shown->ownSets.front().shops);
    const auto whole = preview(fromPacket(petras(), Method::OnePiece));
    ASSERT_TRUE(whole);
    EXPECT_EQ(whole->pieces.front().cut, metres(12));
    EXPECT_EQ(charged(whole->quote, ChargeKind::Packet), 1800);
}

TEST_P(Packets, WithoutAPriceOfItsOwnABedFromOneCostsAsMuchAsOffAReel) {
    SoldString k = soldK();
    k.packet.reset();
    ASSERT_TRUE(write([&](Transaction& t) { return changeString(t, k, kNow); }));
    const auto shown = preview(fromPacket(petras(), Method::TwoPiece));
    ASSERT_TRUE(shown);
    EXPECT_EQ(charged(shown->quote, ChargeKind::FullBed), 1300);
}

TEST_P(Packets, TheSecondWishForTheSamePacketGetsTheNext) {
    const Job first = logged(petras(), fromPacket(petras(), Method::TwoPiece), "first");
    const RacketSummary other = racketOf("Ferreday", "Aldermoor 98");
    const Job second = logged(other, fromPacket(other, Method::TwoPiece), "second");
    EXPECT_EQ(first.pieces.front().lot, m_box[0].id);
    EXPECT_EQ(second.pieces.front().lot, m_box[1].id);
    EXPECT_EQ(second.pieces.back().lot, m_box[1].id);
    EXPECT_TRUE(second.pieces.front().pinned);
    EXPECT_EQ(logged(other, fromPacket(other, Method::TwoPiece), "second").id, second.id) << "pressed twice";
}

TEST_P(Packets, WhatTheMainsLeaveIsTheCrossesAndNothingIsLeftThen) {
    const Job job = taken(petras(), fromPacket(petras(), Method::TwoPiece), "halved");
    ASSERT_TRUE(cut(cutting(*job.id, PieceRole::Mains, metres(6.25))));
    EXPECT_EQ(piece(*job.id, PieceRole::Crosses).planned, metres(5.75));
    EXPECT_EQ(piece(*job.id, PieceRole::Crosses).lot, m_box.front().id);
    const ConfirmCut rest = cutting(*job.id, PieceRole::Crosses, metres(5.5));
    const auto done = cut(rest);
    ASSERT_TRUE(done);
    EXPECT_EQ(piece(*job.id, PieceRole::Crosses).current().cut->length, metres(5.75)) << "all there was";
    EXPECT_TRUE(piece(*job.id, PieceRole::Crosses).current().cut->allThereWas);
    EXPECT_FALSE(done->lot->isOpen());
    EXPECT_TRUE(cut(rest)->already) << "pressed twice";
    ASSERT_TRUE(finish(*job.id, {lb("52"), lb("50")}));
    EXPECT_EQ(stringCost(job), pounds(910)) << "a packet with its fifth of the shipping, whatever was trimmed off";
    const auto again = preview(fromPacket(petras(), Method::TwoPiece, 1));
    ASSERT_TRUE(again);
    EXPECT_EQ(again->pieces.front().cut, metres(6.25)) << "the measured mains are worth remembering";
}

TEST_P(Packets, OneThatIsUsedWholeSaysNothingOfWhatTheFrameNeeds) {
    const Length before = preview(draftFor(petras(), "K", "K", "52", "50"))->pieces.front().cut;
    const Job job = taken(petras(), fromPacket(petras(), Method::OnePiece), "whole");
    ASSERT_TRUE(cut(cutting(*job.id, PieceRole::Whole, metres(12))));
    ASSERT_TRUE(finish(*job.id, {lb("52"), lb("50")}));
    IntakeDraft next = draftFor(petras(), "K", "K", "52", "50");
    EXPECT_EQ(preview(next)->pieces.front().cut, before);
    EXPECT_EQ(stringCost(job), pounds(910));
}

TEST_P(Packets, HalfABedIsMeasuredOffAndTheOtherHalfStays) {
    const RacketSummary racket = petras();
    IntakeDraft draft = draftFor(racket, "K", "L", "52", "50");
    draft.mains.lot = m_box.front().id;
    const auto shown = preview(draft);
    ASSERT_TRUE(shown);
    EXPECT_EQ(charged(shown->quote, ChargeKind::Packet), 0);
    EXPECT_EQ(charged(shown->quote, ChargeKind::HalfBed), 650 + 800);
    const Job job = taken(racket, draft, "hybrid");
    ASSERT_TRUE(cut(cutting(*job.id, PieceRole::Mains, metres(6.2))));
    EXPECT_EQ(lot(m_box.front().tag).length, metres(5.8));
    EXPECT_TRUE(lot(m_box.front().tag).isOpen());
    EXPECT_EQ(pile().packets, 4);
}

TEST_P(Packets, AreTakenOnlyWhenNoReelServes) {
    const IntakeDraft draft = draftFor(petras(), "K", "K", "52", "50");
    EXPECT_EQ(preview(draft)->pieces.front().lot->kind, LotKind::Reel);
    letGoOf("K-7");
    for (const std::string_view tag : {"K-2", "K-4", "K-7"}) {
        ASSERT_TRUE(correct(tag, metres(0)));
    }
    EXPECT_EQ(pile().freePackets(), 0) << "what was promised off K-7 is planned on them";
    (void)boxOfFive("another box");
    const auto shown = preview(draft);
    ASSERT_TRUE(shown);
    EXPECT_EQ(shown->pieces.front().lot->kind, LotKind::Packet);
    EXPECT_EQ(charged(shown->quote, ChargeKind::Packet), 1800);
}

TEST_P(Packets, ALengthThatIsLostOffOneIsReplacedFromTheNext) {
    const Job job = taken(petras(), fromPacket(petras(), Method::OnePiece), "lost");
    ASSERT_TRUE(cut(cutting(*job.id, PieceRole::Whole, metres(12))));
    ASSERT_TRUE(lose(*job.id, PieceRole::Whole, 1, LostReason::Kinked));
    ConfirmCut next = cutting(*job.id, PieceRole::Whole, metres(12), 2);
    next.lot = m_box[1].id;
    ASSERT_TRUE(cut(next));
    ASSERT_TRUE(finish(*job.id, {lb("52"), lb("50")}));
    EXPECT_EQ(pile().packets, 3);
    EXPECT_EQ(stringCost(job), pounds(1820)) << "both";
    const LotId first = *m_box.front().id;
    EXPECT_EQ(read([&](Transaction& t) { return lotLife(t, first); }).value().movements.back().lostReason,
              LostReason::Kinked)
        << "its life says that the length was lost, and why";
}

TEST_P(Packets, ACutThatUsedOneUpIsTakenBackAndItLiesThereAgain) {
    const Job job = taken(petras(), fromPacket(petras(), Method::OnePiece), "not cut");
    ASSERT_TRUE(cut(cutting(*job.id, PieceRole::Whole, metres(12))));
    ASSERT_FALSE(lot(m_box.front().tag).isOpen());
    const TakeBackCut back{*job.id, PieceRole::Whole, 1, by()};
    ASSERT_TRUE(write([&](Transaction& t) { return takeBackCut(t, back); }));
    EXPECT_TRUE(lot(m_box.front().tag).isOpen());
    EXPECT_EQ(lot(m_box.front().tag).length, metres(12));
    EXPECT_EQ(pile().packets, 5);
    ASSERT_TRUE(cut(cutting(*job.id, PieceRole::Whole, metres(12), 2)));
    EXPECT_EQ(pile().packets, 4);
}

TEST_P(Packets, APacketThatIsTooShortSaysSo) {
    const ReceiveLot small{.tag = "short",
                           .article = *string("K").id,
                           .kind = LotKind::Packet,
                           .owner = std::nullopt,
                           .nominal = metres(9),
                           .price = pounds(500),
                           .shipping = pounds(0),
                           .batch = {},
                           .by = by("stockroom")};
    IntakeDraft draft = draftFor(petras(), "K", "K", "52", "50");
    draft.method = Method::TwoPiece;
    draft.mains.lot = receive(small).value().id;
    const auto shown = preview(draft);
    ASSERT_TRUE(shown);
    EXPECT_EQ(shown->pieces.back().fit, Fit::DoesNotFit);
}

} // namespace
} // namespace rw::desk::test
