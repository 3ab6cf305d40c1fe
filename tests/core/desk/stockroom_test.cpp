// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/running_short.h"
#include "tests/core/desk/demo_fixture.h"

// The shelf, receiving, correcting, a lot's story.
namespace rw::desk::test {
namespace {

class Stockroom : public DemoInMemory {
protected:
    ShelfString onShelf(std::string_view code) {
        const auto strings = read([](Transaction& t) { return shelfAhead(t, kNow); });
        return *std::ranges::find(*strings, code, [](const ShelfString& s) { return s.article.code; });
    }
    ReceiveLot reel() {
        return {.tag = {},
                .article = *string("K").id,
                .owner = std::nullopt,
                .nominal = metres(200),
                .price = pounds(11000),
                .shipping = pounds(450),
                .batch = "A41",
                .by = by("stockroom")};
    }
};

TEST_F(Stockroom, TheShelfCountsWholeJobsOfEachLotOnItsOwn) {
    const ShelfString k = onShelf("K");
    ASSERT_EQ(k.lots.size(), 3U);
    EXPECT_EQ(k.holding.left, metres(6.4 + 60 + 200));
    EXPECT_EQ(k.holding.promised, metres(56));
    std::int64_t whole = 0;
    for (const ShelfLot& held : k.lots) {
        whole += held.whole.jobs;
        EXPECT_EQ(held.promised, held.lot.tag == "K-7" ? metres(56) : metres(0)) << held.lot.tag;
        EXPECT_EQ(held.whole.jobs, wholeJobs(held.lot.length - held.promised, k.perJob).jobs) << held.lot.tag;
    }
    EXPECT_EQ(k.wholeJobsFree, whole);
    EXPECT_FALSE(k.runningShort());
    EXPECT_TRUE(onShelf("L").runningShort()) << "16.3 m free is one job";
    EXPECT_FALSE(onShelf("W").runningShort());
}

TEST_F(Stockroom, ACustomersReelIsNotOnTheShopsShelf) {
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    ASSERT_TRUE(receive(delivery("L", "Petra 1", metres(22), racket.racket.customer)));
    IntakeDraft draft = draftFor(racket, "L", "L", "52", "50");
    draft.mains.source = PieceSource::CustomersLot;
    logged(racket, draft, "own reel");
    const ShelfString l = onShelf("L");
    EXPECT_EQ(l.lots.size(), 1U);
    EXPECT_EQ(l.holding.left, metres(48.7));
    EXPECT_EQ(l.holding.promised, metres(32.4));
    EXPECT_EQ(l.wholeJobsFree, l.lots.front().whole.jobs);
}

TEST_F(Stockroom, AStringThatWasNeverUsedCountsByItsSportsPlan) {
    StringArticle fresh = string("K");
    fresh.code = "N";
    fresh.name = "Never Used 125";
    ASSERT_TRUE(write([&](Transaction& t) -> Result<StringArticleId> { return t.strings().add(fresh); }));
    const ShelfString none = onShelf("N");
    EXPECT_GT(none.perJob, metres(9));
    EXPECT_LT(none.perJob, metres(13));
    EXPECT_EQ(none.wholeJobsFree, 0);
    EXPECT_TRUE(none.ahead->onRequest);
    EXPECT_FALSE(none.runningShort()) << "nobody has wanted it yet";
}

TEST_F(Stockroom, ReceivedLotsGetTheNextTag) {
    const auto first = receive(reel());
    ASSERT_TRUE(first.has_value());
    EXPECT_EQ(first->tag, "K-8");
    EXPECT_EQ(first->length, metres(200));
    EXPECT_TRUE(first->sealed);
    EXPECT_EQ(first->landedCost(), pounds(11450));
    EXPECT_EQ(receive(reel())->tag, "K-9");
}

TEST_F(Stockroom, AnImpossibleDeliveryIsRefused) {
    const auto codeOf = [&](auto change) {
        ReceiveLot command = reel();
        change(command);
        const auto lots = fake.rows.lots.size();
        const auto received = receive(command);
        EXPECT_EQ(fake.rows.lots.size(), lots);
        return refusalOf(received);
    };
    EXPECT_EQ(codeOf([](ReceiveLot& c) { c.tag = "K-2"; }), Code::ImpossibleValue);
    EXPECT_EQ(codeOf([](ReceiveLot& c) { c.tag = std::string(21, 'K'); }), Code::TooLong);
    EXPECT_EQ(codeOf([](ReceiveLot& c) { c.article = StringArticleId::of(999'999); }), Code::NotFound);
    EXPECT_EQ(codeOf([](ReceiveLot& c) { c.owner = CustomerId::of(999'999); }), Code::NotFound);
    EXPECT_EQ(codeOf([](ReceiveLot& c) { c.nominal = metres(0.9); }), Code::OutOfRange);
    EXPECT_EQ(codeOf([](ReceiveLot& c) { c.nominal = metres(1001); }), Code::OutOfRange);
    EXPECT_EQ(codeOf([](ReceiveLot& c) { c.price = pounds(-1); }), Code::ImpossibleValue);
    EXPECT_EQ(codeOf([](ReceiveLot& c) { c.shipping = Money::fromMinor(1, *Currency::fromCode("EUR")); }),
              Code::CurrencyMismatch);
}

TEST_F(Stockroom, ACorrectionIsAMovementEvenWhenTheBookWasRight) {
    const auto before = fake.rows.movements.size();
    const auto same = correct("L-3", metres(48.7));
    ASSERT_TRUE(same.has_value());
    EXPECT_TRUE(same->measuredSinceLastCut);
    EXPECT_EQ(fake.rows.movements.size(), before + 1);
    EXPECT_EQ(correct("L-3", metres(48.2))->length, metres(48.2));
    EXPECT_EQ(refusalOf(correct("L-3", metres(0) - metres(1))), Code::OutOfRange);
    EXPECT_FALSE(correct("L-3", metres(0))->isOpen());
    EXPECT_EQ(refusalOf(correct("L-3", metres(1))), Code::LotClosed);
    EXPECT_TRUE(fake.check().empty());
}

TEST_F(Stockroom, ALotsStoryNamesTheJobsBehindIt) {
    const LotId k2 = *lot("K-2").id;
    const auto life = read([&](Transaction& t) { return lotLife(t, k2); });
    ASSERT_TRUE(life.has_value());
    EXPECT_EQ(life->article.code, "K");
    ASSERT_EQ(life->jobNumbers.size(), life->movements.size());
    EXPECT_EQ(life->movements.front().reason, MovementReason::Received);
    EXPECT_EQ(life->jobNumbers.front(), 0);
    EXPECT_EQ(life->movements.back().reason, MovementReason::Measured);
    for (std::size_t i = 0; i < life->movements.size(); ++i) {
        EXPECT_EQ(life->jobNumbers[i] != 0, life->movements[i].reason == MovementReason::Cut);
    }
    EXPECT_EQ(read([](Transaction& t) { return lotLife(t, LotId::of(999'999)); }).error().code(), Code::NotFound);
}

} // namespace
} // namespace rw::desk::test
