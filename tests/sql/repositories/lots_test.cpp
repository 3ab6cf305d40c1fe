// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/repositories/repository_test.h"

#include <algorithm>

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

namespace rw::sql::test {

class LotsTest : public StockedTest {
protected:
    MovementId move(LotId lot, MovementReason reason, std::int64_t change,
                    std::optional<LostReason> lost = std::nullopt) {
        return lots().move({.id = std::nullopt,
                            .lot = lot,
                            .reason = reason,
                            .change = mm(change),
                            .attempt = std::nullopt,
                            .lostReason = lost,
                            .corrects = std::nullopt,
                            .by = by(5, "stockroom")});
    }
    std::vector<std::string> tags(const std::vector<Lot>& of) {
        std::vector<std::string> out(of.size());
        std::ranges::transform(of, out.begin(), &Lot::tag);
        return out;
    }
    Lot lot(LotId id) { return lots().get(id).value(); }
    AttemptId attemptOf(JobId job, std::size_t piece) { return stored(job).pieces.at(piece).current().id.value(); }
};
ON_BOTH_ENGINES(LotsTest);

TEST_P(LotsTest, AnEndBecomesARemnantWithEverythingElseAsItWas) {
    const auto k2 = reel("K-2", string("K"), mm(6'050));
    const Lot before = lot(k2);
    lots().setKind(k2, LotKind::Remnant);
    EXPECT_EQ(lot(k2).kind, LotKind::Remnant);
    EXPECT_EQ(lot(k2).length, before.length);
    EXPECT_EQ(lot(k2).nominal, before.nominal);
    EXPECT_EQ(lot(k2).price, before.price);
}

TEST_P(LotsTest, ComeBackAsTheyWereStored) {
    const Currency yen = Currency::fromCode("JPY").value();
    const Lot full{.id = std::nullopt,
                   .tag = "C-1 🎾",
                   .article = string("L"),
                   .kind = LotKind::Packet,
                   .owner = petra(),
                   .nominal = mm(12'200),
                   .length = mm(99), // the ledger keeps its own
                   .price = Money::fromMinor(2'400, yen),
                   .shipping = Money::fromMinor(150, yen),
                   .batch = "B/7",
                   .received = at(-60),
                   .closed = std::nullopt};
    const auto id = lots().add(full);
    const Lot empty = lot(id);
    EXPECT_EQ(empty.id, id);
    EXPECT_EQ(empty.tag, full.tag);
    EXPECT_EQ(empty.article, full.article);
    EXPECT_EQ(empty.kind, LotKind::Packet);
    EXPECT_EQ(empty.owner, petra());
    EXPECT_EQ(empty.nominal, mm(12'200));
    EXPECT_EQ(empty.length, mm(0));
    EXPECT_EQ(empty.price, full.price);
    EXPECT_EQ(empty.shipping, full.shipping);
    EXPECT_EQ(empty.batch, "B/7");
    EXPECT_EQ(empty.received, at(-60));
    EXPECT_TRUE(empty.sealed);
    EXPECT_FALSE(empty.measuredSinceLastCut);
    EXPECT_TRUE(empty.isOpen());
    EXPECT_EQ(lots().byTag("C-1 🎾").value().id, id);
    EXPECT_FALSE(lots().byTag("C-1"));
    EXPECT_FALSE(lots().byTag("' OR ''='"));
    EXPECT_FALSE(lots().get(LotId::of(987'654)));

    const Lot plain = lot(reel("K-2", string("K"), mm(6'400)));
    EXPECT_FALSE(plain.owner);
    EXPECT_EQ(plain.kind, LotKind::Reel);
    EXPECT_EQ(plain.length, mm(6'400));
    EXPECT_THAT(guardOf([&] { reel("K-2", string("K"), mm(1'000)); }), HasSubstr("lot_tag_key"));
    EXPECT_THAT(guardOf([&] { reel(std::string(21, 'x'), string("K"), mm(1'000)); }), HasSubstr("lot_tag"));
}

TEST_P(LotsTest, AKindNobodyKnowsIsCorrupt) {
    const auto id = reel("K-2", string("K"), mm(6'400));
    connection().execute(onSqlite() ? "PRAGMA ignore_check_constraints = ON"
                                    : "ALTER TABLE lot DROP CONSTRAINT lot_kind");
    connection().execute("UPDATE lot SET kind = 'spool'");
    EXPECT_THAT(corruptionIn([&] { (void)lots().open(); }),
                testing::AllOf(HasSubstr("lot " + std::to_string(id.value())), HasSubstr("kind"), HasSubstr("spool")));
}

TEST_P(LotsTest, AreListedWhileTheyAreOpen) {
    const auto l = string("L");
    const auto k = string("K");
    const auto add = [&](const char* tag, StringArticleId article, int received) {
        return lots().add({.id = std::nullopt,
                           .tag = tag,
                           .article = article,
                           .owner = std::nullopt,
                           .nominal = mm(1'000),
                           .price = pounds(1),
                           .shipping = pounds(0),
                           .batch = {},
                           .received = at(received),
                           .closed = std::nullopt});
    };
    add("K-2", k, 20);
    add("L-2", l, 10);
    add("L-1", l, 5);
    add("K-1", k, 20);
    const auto gone = add("K-0", k, 1);
    lots().close(gone, at(30));
    EXPECT_THAT(tags(lots().open()), ElementsAre("L-1", "L-2", "K-2", "K-1")); // L was written down first
    EXPECT_THAT(tags(lots().open(k)), ElementsAre("K-2", "K-1"));
    EXPECT_THAT(tags(lots().open(string("T"))), IsEmpty());
    EXPECT_EQ(lot(gone).closed, at(30));
    lots().close(gone, at(40));
    EXPECT_EQ(lot(gone).closed, at(30)) << "a lot is closed once";
}

TEST_P(LotsTest, HoldWhatTheirMovementsSay) {
    const auto k2 = reel("K-2", string("K"), mm(6'400));
    const auto correction = lots().move({.id = std::nullopt,
                                         .lot = k2,
                                         .reason = MovementReason::Measured,
                                         .change = mm(-50),
                                         .attempt = std::nullopt,
                                         .lostReason = std::nullopt,
                                         .corrects = std::nullopt,
                                         .by = by(5, "stockroom")});
    move(k2, MovementReason::Lost, -350, LostReason::Kinked);
    EXPECT_EQ(lot(k2).length, mm(6'000));

    const auto again = lots().move({.id = std::nullopt,
                                    .lot = k2,
                                    .reason = MovementReason::Weighed,
                                    .change = mm(10),
                                    .attempt = std::nullopt,
                                    .lostReason = std::nullopt,
                                    .corrects = correction,
                                    .by = by(9, "stockroom")});
    const auto movements = lots().movements(k2);
    ASSERT_EQ(movements.size(), 4U);
    EXPECT_EQ(movements[0].reason, MovementReason::Received);
    EXPECT_EQ(movements[1].id, correction);
    EXPECT_EQ(movements[1].change, mm(-50));
    EXPECT_EQ(movements[1].by.at, at(5));
    EXPECT_EQ(movements[1].by.station, "stockroom");
    EXPECT_EQ(movements[1].by.staff, by(0).staff);
    EXPECT_FALSE(movements[1].lostReason);
    EXPECT_EQ(movements[2].lostReason, LostReason::Kinked);
    EXPECT_EQ(movements[3].id, again);
    EXPECT_EQ(movements[3].corrects, correction);
    EXPECT_EQ(movements[3].lot, k2);
    EXPECT_THAT(lots().movements(LotId::of(987'654)), IsEmpty());
}

TEST_P(LotsTest, NeverGoBelowNothing) {
    const auto k2 = reel("K-2", string("K"), mm(6'400));
    EXPECT_THAT(guardOf([&] { move(k2, MovementReason::Lost, -6'401, LostReason::Other); }),
                HasSubstr("lot_length_not_negative"));
    EXPECT_EQ(lot(k2).length, mm(6'400));
    move(k2, MovementReason::Lost, -6'400, LostReason::Other);
    lots().close(k2, at(7));
    EXPECT_NE(guardOf([&] { move(k2, MovementReason::Measured, 10); }), "");
}

TEST_P(LotsTest, SayWhyInWordsAndWithWhatTheyCame) {
    EXPECT_FALSE(lots().delivery(DeliveryId::of(987'654)));
    const auto delivery = lots().addDelivery("a key", "Northgate", pounds(9), by(1, "stockroom"));
    const auto other = lots().addDelivery("another key", "", pounds(0), by(2, "stockroom"));
    EXPECT_NE(other, delivery);
    EXPECT_EQ(lots().delivery(delivery).value().supplier, "Northgate");
    EXPECT_EQ(lots().delivery(delivery).value().shipping, pounds(9));
    EXPECT_THAT(lots().suppliers(), ElementsAre("Northgate"));
    EXPECT_THAT(lots().ofDelivery("a key"), IsEmpty());
    EXPECT_THAT(lots().ofDelivery("no key"), IsEmpty());

    const auto k2 = reel("K-2", string("K"), mm(20'000));
    lots().move({.id = std::nullopt,
                 .lot = k2,
                 .reason = MovementReason::ThrownAway,
                 .change = mm(-20'000),
                 .attempt = std::nullopt,
                 .lostReason = std::nullopt,
                 .corrects = std::nullopt,
                 .by = by(5, "stockroom"),
                 .words = "o'Dell's dog"});
    EXPECT_EQ(lots().movements(k2).front().words, "");
    EXPECT_EQ(lots().movements(k2).back().words, "o'Dell's dog");
    lots().close(k2, at(6));
    lots().reopen(k2);
    EXPECT_TRUE(lot(k2).isOpen());
    lots().close(k2, at(8));
    EXPECT_EQ(lot(k2).closed, at(8)) << "closed again later";
}

TEST_P(LotsTest, AreSealedUntilALengthIsCutOrLost) {
    const auto k2 = reel("K-2", string("K"), mm(20'000));
    move(k2, MovementReason::Measured, -5);
    EXPECT_TRUE(lot(k2).sealed);
    move(k2, MovementReason::Lost, -100, LostReason::Nicked);
    EXPECT_FALSE(lot(k2).sealed);

    const auto k3 = reel("K-3", string("K"), mm(20'000));
    const auto job = jobs().add(this->job("1", {piece(PieceRole::Whole, string("K"), k3)}), by(0, "counter"));
    cut(attemptOf(job, 0), k3, mm(11'200), 5);
    EXPECT_FALSE(lot(k3).sealed);
    EXPECT_EQ(lot(k3).length, mm(8'800));
}

TEST_P(LotsTest, AreMeasuredUntilTheNextLengthComesOrGoes) {
    const auto k2 = reel("K-2", string("K"), mm(30'000));
    EXPECT_FALSE(lot(k2).measuredSinceLastCut);
    move(k2, MovementReason::Measured, 0); // the book was right, and that is worth writing down
    EXPECT_TRUE(lot(k2).measuredSinceLastCut);
    const auto job = jobs().add(this->job("1", {piece(PieceRole::Whole, string("K"), k2)}), by(0, "counter"));
    cut(attemptOf(job, 0), k2, mm(11'200), 5);
    EXPECT_FALSE(lot(k2).measuredSinceLastCut);
    move(k2, MovementReason::Measured, -20);
    EXPECT_TRUE(lot(k2).measuredSinceLastCut);
    move(k2, MovementReason::Lost, -100, LostReason::Nicked);
    EXPECT_FALSE(lot(k2).measuredSinceLastCut);
}

TEST_P(LotsTest, AnAttemptIsChargedOnce) {
    const auto k2 = reel("K-2", string("K"), mm(30'000));
    const auto k3 = reel("K-3", string("K"), mm(30'000));
    const auto job = jobs().add(this->job("1", {piece(PieceRole::Mains, string("K"), k2)}), by(0, "counter"));
    const auto attempt = attemptOf(job, 0);
    cut(attempt, k2, mm(6'200), 5);
    EXPECT_THAT(guardOf([&] { cut(attempt, k2, mm(6'200), 6); }), HasSubstr("movement_one_cut_per_attempt"));
    EXPECT_THAT(guardOf([&] { cut(attempt, k3, mm(6'200), 6); }), HasSubstr("movement_one_cut_per_attempt"));
    EXPECT_EQ(lot(k2).length, mm(23'800));
    EXPECT_EQ(lots().movements(k2).back().attempt, attempt);
}

TEST_P(LotsTest, ArePromisedWhatIsPlannedAndNotYetCut) {
    const auto k = string("K");
    const auto l = string("L");
    const auto k2 = reel("K-2", k, mm(30'000));
    const auto own = reel("P-1", l, mm(20'000), petra());
    JobPiece mains = piece(PieceRole::Mains, k, k2);
    JobPiece crosses = piece(PieceRole::Crosses, l, own);
    crosses.source = PieceSource::CustomersLot;
    crosses.planned = mm(5'600);
    const auto first = jobs().add(job("1", {mains, crosses}), by(0, "counter"));
    JobPiece unplaced = piece(PieceRole::Mains, k);
    JobPiece unplacedOwn = piece(PieceRole::Crosses, l);
    unplacedOwn.source = PieceSource::CustomersLot;
    const auto second = jobs().add(job("2", {unplaced, unplacedOwn}), by(1, "counter"));
    JobPiece set = piece(PieceRole::Whole, l);
    set.source = PieceSource::CustomersSet;
    (void)jobs().add(job("3", {set}), by(2, "counter"));

    const auto planned = [&] {
        std::vector<std::string> lines;
        for (const PlannedCut& cut : lots().plannedCuts()) {
            lines.push_back(strings().get(cut.article).value().code + " " + cut.length.text() + " " +
                            (cut.lot ? lot(*cut.lot).tag : "-") + (cut.owner ? " hers" : ""));
            EXPECT_TRUE(!cut.owner || *cut.owner == petra());
        }
        return lines;
    };
    EXPECT_THAT(planned(), ElementsAre("K 6.2 m K-2", "L 5.6 m P-1 hers", "K 6.2 m -", "L 6.2 m - hers"));
    EXPECT_EQ(lots().plannedCuts().front().piece, stored(first).pieces[0].id);

    record(first, JobEventKind::Taken, 5);
    cut(attemptOf(first, 0), k2, mm(6'200), 6);
    EXPECT_THAT(planned(), ElementsAre("L 5.6 m P-1 hers", "K 6.2 m -", "L 6.2 m - hers"));

    (void)jobs().loseAttempt(attemptOf(first, 0), LostReason::CameShort, at(7));
    jobs().plan(stored(first).pieces[0].id.value(), k2, mm(6'250), false);
    EXPECT_THAT(planned(), ElementsAre("K 6.25 m K-2", "L 5.6 m P-1 hers", "K 6.2 m -", "L 6.2 m - hers"));

    record(second, JobEventKind::Waiting, 8);
    EXPECT_EQ(planned().size(), 4U) << "waiting for a part is still a promise";
    record(second, JobEventKind::Withdrawn, 9);
    EXPECT_THAT(planned(), ElementsAre("K 6.25 m K-2", "L 5.6 m P-1 hers"));
    record(first, JobEventKind::Withdrawn, 10);
    EXPECT_THAT(planned(), IsEmpty());
}

} // namespace rw::sql::test
