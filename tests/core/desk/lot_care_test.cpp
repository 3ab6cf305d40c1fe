// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/lookups.h"
#include "core/desk/lot_care.h"
#include "core/desk/stockroom.h"
#include "tests/core/desk/demo_fixture.h"

// What is done to a lot on the shelf: corrected, thrown away, given back, and each taken back again.
namespace rw::desk::test {
namespace {

class LotCare : public DemoEverywhere {
protected:
    void TearDown() override { EXPECT_TRUE(ledger().check().empty()); }

    Result<Lot> takeOff(std::string_view tag, LotLeaves how, std::string why) {
        const TakeOffShelf command{*lot(tag).id, how, std::move(why), by("stockroom")};
        return write([&](Transaction& t) { return takeOffShelf(t, command); });
    }
    std::vector<Movement> movements(std::string_view tag) {
        const LotId id = *lot(tag).id;
        return look([&](Transaction& t) { return t.lots().movements(id); });
    }
    Result<std::vector<Lot>> backTo(const std::vector<TakeBack::Booked>& booked) {
        const TakeBack command{booked, by("stockroom")};
        return write([&](Transaction& t) { return takeBack(t, command); });
    }
    Result<std::vector<Lot>> backToLast(std::string_view tag) {
        return backTo({{*lot(tag).id, *movements(tag).back().id}});
    }
};
IN_MEMORY_AND_ON_BOTH_ENGINES(LotCare);

TEST_P(LotCare, ACorrectionKeepsWhyInWords) {
    const CorrectLot command{*lot("K-4").id, metres(198), by("stockroom"), " came short on the spool "};
    ASSERT_TRUE(write([&](Transaction& t) { return correctLot(t, command); }));
    EXPECT_EQ(movements("K-4").back().words, "came short on the spool");
    CorrectLot long_ = command;
    long_.why = std::string(2001, 'w');
    EXPECT_EQ(refusalOf(write([&](Transaction& t) { return correctLot(t, long_); })), Code::TooLong);
}

TEST_P(LotCare, WhatIsThrownAwayIsBookedOffWithItsReason) {
    const Length before = lot("K-2").length;
    EXPECT_EQ(refusalOf(takeOff("K-2", LotLeaves::ThrownAway, "  ")), Code::Missing);
    const auto gone = takeOff("K-2", LotLeaves::ThrownAway, "frayed");
    ASSERT_TRUE(gone);
    EXPECT_FALSE(gone->isOpen());
    const Movement last = movements("K-2").back();
    EXPECT_EQ(last.reason, MovementReason::ThrownAway);
    EXPECT_EQ(last.change, -before);
    EXPECT_EQ(last.words, "frayed");
    const auto count = movements("K-2").size();
    EXPECT_TRUE(takeOff("K-2", LotLeaves::ThrownAway, "frayed")) << "said twice it is said once";
    EXPECT_EQ(movements("K-2").size(), count);
    EXPECT_EQ(refusalOf(takeOff("K-2", LotLeaves::Returned, "no")), Code::LotClosed);
}

TEST_P(LotCare, WhatIsGoneIsKnownByHowItWent) {
    const StringArticleId k = *string("K").id;
    const auto gone = [&] { return *read([&](Transaction& t) { return closedLots(t, k); }); };
    const auto before = gone().size();
    ASSERT_TRUE(takeOff("K-2", LotLeaves::ThrownAway, "frayed"));
    ASSERT_TRUE(takeOff("K-7", LotLeaves::Returned, "wrong colour"));
    const auto two = gone();
    ASSERT_EQ(two.size(), before + 2);
    EXPECT_EQ(two[0].lot.tag, "K-7") << "of two that went in one moment the later one first";
    EXPECT_EQ(two[0].how, MovementReason::Returned);
    EXPECT_EQ(two[1].lot.tag, "K-2");
    EXPECT_EQ(two[1].how, MovementReason::ThrownAway);
    EXPECT_EQ(two[1].owner, "");
    EXPECT_FALSE(two[1].lot.isOpen());
    ASSERT_TRUE(backToLast("K-7"));
    EXPECT_EQ(gone().size(), before + 1);
    EXPECT_EQ(refusalOf(read([](Transaction& t) { return closedLots(t, StringArticleId::of(987'654)); })),
              Code::NotFound);
}

TEST_P(LotCare, CutsThatWerePlannedThereArePlannedElsewhere) {
    letGoOf("K-7");
    ASSERT_TRUE(takeOff("K-7", LotLeaves::Returned, "wrong colour"));
    const LotId gone = *lot("K-7").id;
    for (const PlannedCut& planned : look([](Transaction& t) { return t.lots().plannedCuts(); })) {
        EXPECT_NE(planned.lot, gone);
    }
}

TEST_P(LotCare, ThrownAwayByMistakeItIsThereAgain) {
    const Length before = lot("K-4").length;
    ASSERT_TRUE(takeOff("K-4", LotLeaves::ThrownAway, "looked empty"));
    ASSERT_TRUE(backToLast("K-4"));
    EXPECT_TRUE(lot("K-4").isOpen());
    EXPECT_EQ(lot("K-4").length, before);
    const auto life = movements("K-4");
    EXPECT_EQ(life.back().corrects, life[life.size() - 2].id) << "what was believed meanwhile stays a fact";
    const auto count = life.size();
    ASSERT_TRUE(backTo({{*lot("K-4").id, *life[count - 2].id}})) << "taken back twice";
    EXPECT_EQ(movements("K-4").size(), count);
}

TEST_P(LotCare, ACorrectionThatEmptiedALotIsTakenBack) {
    ASSERT_TRUE(correct("K-4", metres(0)));
    ASSERT_FALSE(lot("K-4").isOpen());
    ASSERT_TRUE(backToLast("K-4"));
    EXPECT_EQ(lot("K-4").length, metres(200));
    EXPECT_TRUE(lot("K-4").isOpen());
    EXPECT_TRUE(lot("K-4").sealed);
}

TEST_P(LotCare, ADeliveryIsTakenBackWholeOrNotAtAll) {
    const ReceiveDelivery two{.requestKey = "by mistake",
                              .supplier = {},
                              .lines = {{.article = *string("K").id,
                                         .count = 2,
                                         .kind = LotKind::Reel,
                                         .nominal = metres(200),
                                         .priceEach = pounds(11000)}},
                              .shipping = pounds(0),
                              .by = by("stockroom")};
    const auto lots = write([&](Transaction& t) { return receiveDelivery(t, two); }).value();
    const std::vector<TakeBack::Booked> both = {{*lots[0].id, *movements(lots[0].tag).back().id},
                                                {*lots[1].id, *movements(lots[1].tag).back().id}};
    ASSERT_TRUE(correct(lots[1].tag, metres(199)));
    EXPECT_EQ(refusalOf(backTo(both)), Code::ChangedMeanwhile);
    EXPECT_TRUE(lot(lots[0].tag).isOpen()) << "neither";
    ASSERT_TRUE(backToLast(lots[1].tag));
    EXPECT_EQ(refusalOf(backTo(both)), Code::ChangedMeanwhile) << "its life has gone on";
    ASSERT_TRUE(backTo({both.front()}));
    EXPECT_FALSE(lot(lots[0].tag).isOpen());
    EXPECT_EQ(lot(lots[0].tag).length, metres(0));
}

TEST_P(LotCare, ACutIsTakenBackAtTheBenchAndNotHere) {
    const auto life = movements("K-7");
    const auto cut = std::ranges::find(life, MovementReason::Cut, &Movement::reason);
    ASSERT_NE(cut, life.end());
    const auto refused = refusalOf(backTo({{*lot("K-7").id, *cut->id}}));
    EXPECT_EQ(refused, Code::ImpossibleValue);
}

TEST_P(LotCare, CustomersReelsStandApartUnderTheirNames) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    ASSERT_TRUE(receive(delivery("L", "Petra 1", metres(22), racket.racket.customer)));
    const auto kept = read([](Transaction& t) { return keptForCustomers(t); }).value();
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_EQ(kept.front().owner, "Petra Lindobi");
    EXPECT_EQ(kept.front().lots.front().lot.tag, "Petra 1");
    EXPECT_FALSE(kept.front().runningShort());
    EXPECT_TRUE(read([](Transaction& t) { return shelf(t); }).value().front().owner.empty());
}

} // namespace
} // namespace rw::desk::test
