// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/stockroom_words.h"

#include "tests/ui/text/said.h"

#include <QLocale>

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

const QLocale kEnglish(QLocale::English, QLocale::UnitedKingdom);

Length mm(std::int64_t value) { return Length::fromMillimetres(value); }
Money pounds(std::int64_t pence) { return Money::fromMinor(pence, Currency::pounds()); }

Lot lotOf(LotKind kind, std::string tag, Length length) {
    return {.id = LotId::of(1),
            .tag = std::move(tag),
            .article = StringArticleId::of(1),
            .kind = kind,
            .owner = std::nullopt,
            .nominal = length,
            .length = length,
            .price = pounds(0),
            .shipping = pounds(0),
            .batch = {},
            .received = {},
            .closed = std::nullopt};
}

TEST(StockroomWords, TagsThatCountUpAreSaidAsOne) {
    EXPECT_EQ(said(tagsText({"K-8"})), "K-8");
    EXPECT_EQ(said(tagsText({"K-8", "K-9"})), "K-8 and K-9");
    EXPECT_EQ(said(tagsText({"K-8", "K-9", "K-10"})), "K-8 to K-10");
    EXPECT_EQ(said(tagsText({"K-8", "K-9", "K-10", "L-4"})), "K-8 to K-10 and L-4");
    EXPECT_EQ(said(tagsText({"K-8", "K-10", "L-11"})), "K-8, K-10 and L-11");
    EXPECT_EQ(said(tagsText({"old reel", "-1", "7"})), "old reel, -1 and 7") << "tags of the shop's own";
    EXPECT_EQ(said(tagsText({})), "");
}

TEST(StockroomWords, ADeliverySaysWhatToWriteOnWhat) {
    const Lot k8 = lotOf(LotKind::Reel, "K-8", mm(200'000));
    const Lot k9 = lotOf(LotKind::Reel, "K-9", mm(200'000));
    const Lot packet = lotOf(LotKind::Packet, "L-4", mm(12'000));
    EXPECT_EQ(said(deliveredText({k8}, kEnglish)), "Received K-8: 200 m. Write K-8 on it.");
    EXPECT_EQ(said(deliveredText({k8, k9, packet, packet}, kEnglish)),
              "Received 2 reels and 2 packets. Write K-8 and K-9 on the reels. "
              "Packets that are alike are one pile and need no tag.");
    EXPECT_EQ(said(deliveredText({k8, packet}, kEnglish)), "Received 1 reel and 1 packet. Write K-8 on the reel.");
}

TEST(StockroomWords, AParcelIsAddedUpAsOnItsBill) {
    const desk::DeliveryLine reels{.article = StringArticleId::of(1),
                                   .count = 2,
                                   .kind = LotKind::Reel,
                                   .nominal = mm(200'000),
                                   .priceEach = pounds(11'000)};
    const desk::DeliveryLine box{.article = StringArticleId::of(1),
                                 .count = 12,
                                 .kind = LotKind::Packet,
                                 .nominal = mm(12'000),
                                 .priceEach = pounds(900)};
    EXPECT_EQ(said(parcelText({reels, box}, pounds(900), kEnglish)),
              "2 reels and 12 packets: £328.00, with shipping £337.00");
    EXPECT_EQ(said(parcelText({box}, pounds(0), kEnglish)), "12 packets: £108.00");
    EXPECT_EQ(said(parcelText({}, pounds(900), kEnglish)), "");
    desk::DeliveryLine gift = reels;
    gift.priceEach = pounds(0);
    EXPECT_EQ(said(parcelText({gift}, pounds(0), kEnglish)),
              "2 reels: £0.00; a line has no price: what its jobs cost is not known");
}

TEST(StockroomWords, AShelfTellsPilesAndEndsFromReels) {
    desk::ShelfLot pile{lotOf(LotKind::Packet, "K-8", mm(12'000)), mm(12'000), {4, mm(11'000)}, 5};
    EXPECT_EQ(said(heldThereText(pile, kEnglish)), "5 packets of 12 m");
    EXPECT_EQ(said(lotThereText(pile, kEnglish)), "5 packets of 12 m, 1 promised\n4 jobs free, a packet each");
    EXPECT_EQ(said(packetChoiceText(pile, kEnglish)), "a packet of 12 m, 4 free");
    desk::ShelfLot end{lotOf(LotKind::Remnant, "K-2", mm(5'800)), mm(0), {0, mm(5'000)}};
    EXPECT_EQ(said(heldThereText(end, kEnglish)), "remnant, 5.8 m");
    end.lot.kind = LotKind::Reel;
    EXPECT_EQ(said(heldThereText(end, kEnglish)), "5.8 m");
}

TEST(StockroomWords, ACorrectionPointsAtWhatItCorrects) {
    Movement movement{.id = std::nullopt,
                      .lot = LotId::of(1),
                      .reason = MovementReason::Measured,
                      .change = mm(400),
                      .attempt = std::nullopt,
                      .lostReason = std::nullopt,
                      .corrects = MovementId::of(3),
                      .by = {StaffId::of(1), "stockroom", {}},
                      .words = "wrong reel"};
    EXPECT_EQ(said(movementKindText(movement, 0)), "taken back");
    EXPECT_EQ(said(movementWhyText(movement, 3, 0)), "takes back line 3; wrong reel");
    movement.corrects.reset();
    EXPECT_EQ(said(movementKindText(movement, 0)), "measured");
    EXPECT_EQ(said(movementWhyText(movement, 0, 5)), "taken back in line 5; wrong reel");
}

} // namespace
} // namespace rw::ui
