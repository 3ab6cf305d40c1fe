// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/jobs/job.h"

#include <gtest/gtest.h>

using namespace rw;

namespace {

Length mm(std::int64_t value) { return Length::fromMillimetres(value); }

DoneCut cutOf(std::int64_t length) { return {LotId::of(1), "K-7", mm(length), Instant{}, false}; }

JobPiece pieceWith(std::vector<Attempt> attempts) {
    return {.id = std::nullopt,
            .role = PieceRole::Mains,
            .article = StringArticleId::of(1),
            .lot = std::nullopt,
            .planned = mm(6200),
            .expected = mm(6000),
            .attempts = std::move(attempts)};
}

TEST(JobPiece, IsCutWhileItsLastAttemptHoldsACutThatWasNotLost) {
    EXPECT_FALSE(pieceWith({}).isCut());
    EXPECT_FALSE(pieceWith({{AttemptId::of(1), 1, std::nullopt, std::nullopt}}).isCut());
    EXPECT_TRUE(pieceWith({{AttemptId::of(1), 1, cutOf(6200), std::nullopt}}).isCut());
    EXPECT_FALSE(pieceWith({{AttemptId::of(1), 1, cutOf(6200), LostReason::CameShort},
                            {AttemptId::of(2), 2, std::nullopt, std::nullopt}})
                     .isCut());
}

TEST(Charge, TextsGoBothWays) {
    for (const ChargeKind kind :
         {ChargeKind::Labour, ChargeKind::OwnStringLabour, ChargeKind::FullBed, ChargeKind::HalfBed, ChargeKind::Packet,
          ChargeKind::Extra, ChargeKind::Rush, ChargeKind::Discount, ChargeKind::Tax}) {
        EXPECT_EQ(chargeKindFromText(chargeKindText(kind)), kind);
    }
    EXPECT_EQ(chargeKindText(ChargeKind::OwnStringLabour), "own-string-labour");
    EXPECT_EQ(chargeKindFromText("gift"), std::nullopt);
}

TEST(PieceSource, TextsGoBothWays) {
    for (const PieceSource source : {PieceSource::ShopLot, PieceSource::CustomersLot, PieceSource::CustomersSet}) {
        EXPECT_EQ(pieceSourceFromText(pieceSourceText(source)), source);
    }
    EXPECT_EQ(pieceSourceText(PieceSource::CustomersSet), "customers-set");
}

TEST(Movement, TextsGoBothWays) {
    for (const MovementReason reason :
         {MovementReason::Received, MovementReason::Cut, MovementReason::Lost, MovementReason::Measured,
          MovementReason::Weighed, MovementReason::Returned, MovementReason::ThrownAway}) {
        EXPECT_EQ(movementReasonFromText(movementReasonText(reason)), reason);
    }
    for (const LostReason reason :
         {LostReason::CameShort, LostReason::Kinked, LostReason::Nicked, LostReason::Snapped, LostReason::MisWoven,
          LostReason::WrongString, LostReason::FaultyReel, LostReason::Other}) {
        EXPECT_EQ(lostReasonFromText(lostReasonText(reason)), reason);
    }
    EXPECT_EQ(movementReasonText(MovementReason::ThrownAway), "thrown-away");
    EXPECT_EQ(lostReasonText(LostReason::MisWoven), "mis-woven");
}

} // namespace
