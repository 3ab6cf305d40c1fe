// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/books.h"
#include "tests/core/desk/demo_fixture.h"

#include <numeric>

// String that comes in: one parcel of several lots, once, with its shipping shared out.
namespace rw::desk::test {
namespace {

class Delivered : public DemoEverywhere {
protected:
    void TearDown() override { EXPECT_TRUE(ledger().check().empty()); }

    DeliveryLine line(std::string_view code, int count, LotKind kind, Length nominal, std::int64_t pence) {
        return {
            .article = *string(code).id, .count = count, .kind = kind, .nominal = nominal, .priceEach = pounds(pence)};
    }
    ReceiveDelivery parcel(std::vector<DeliveryLine> lines, std::int64_t shippingPence) {
        return {.requestKey = "this sheet",
                .supplier = " Northgate String Company ",
                .lines = std::move(lines),
                .shipping = pounds(shippingPence),
                .by = by("stockroom")};
    }
    Result<std::vector<Lot>> receiveAll(const ReceiveDelivery& command) {
        return write([&](Transaction& t) { return receiveDelivery(t, command); });
    }
    static std::vector<std::string> tagsOf(const std::vector<Lot>& lots) {
        std::vector<std::string> tags;
        std::ranges::transform(lots, std::back_inserter(tags), &Lot::tag);
        return tags;
    }
    std::size_t openLots() {
        return look([](Transaction& t) { return t.lots().open().size(); });
    }
};
IN_MEMORY_AND_ON_BOTH_ENGINES(Delivered);

TEST_P(Delivered, ASingleReelThatIsSentTwiceComesInOnce) {
    ReceiveLot command = delivery("K", "", metres(200));
    command.requestKey = "the strip that was filled in";
    const auto first = receive(command);
    const auto again = receive(command);
    ASSERT_TRUE(first);
    ASSERT_TRUE(again);
    EXPECT_EQ(first->id, again->id);
    EXPECT_EQ(lot(first->tag).length, metres(200));
    EXPECT_TRUE(lot(first->tag).delivery);
    command.requestKey = "the next one";
    EXPECT_NE(receive(command)->tag, first->tag);
}

TEST_P(Delivered, WithoutAKeyEachIsOneOfItsOwn) {
    const ReceiveLot command = delivery("K", "", metres(200));
    EXPECT_NE(receive(command)->id, receive(command)->id);
}

TEST_P(Delivered, AParcelOfThreeReelsAndABoxComesInWhole) {
    const auto before = openLots();
    const auto command =
        parcel({line("K", 2, LotKind::Reel, metres(200), 11000), line("L", 1, LotKind::Reel, metres(200), 14000),
                line("K", 12, LotKind::Packet, metres(12), 900)},
               1500);
    const auto shown = read([&](Transaction& t) { return tagsFor(t, command.lines); });
    const auto lots = receiveAll(command);
    ASSERT_TRUE(lots);
    ASSERT_EQ(lots->size(), 15U);
    EXPECT_EQ(openLots(), before + 15);
    std::vector<std::string> proposed;
    for (const auto& ofLine : shown.value()) {
        proposed.insert(proposed.end(), ofLine.begin(), ofLine.end());
    }
    EXPECT_EQ(tagsOf(*lots), proposed) << "what was shown is what is to be written on them";
    EXPECT_EQ(lots->front().tag, "K-8");
    EXPECT_EQ((*lots)[2].tag, "L-4");
    EXPECT_EQ(lots->back().tag, "K-21");
    EXPECT_EQ(lots->back().kind, LotKind::Packet);
    EXPECT_EQ(lots->back().length, metres(12));
    const auto shipping = std::accumulate(lots->begin(), lots->end(), pounds(0),
                                          [](Money sum, const Lot& lot) { return sum + lot.shipping; });
    EXPECT_EQ(shipping, pounds(1500)) << "the shares add up to the shipping";
    const auto came = look([&](Transaction& t) { return t.lots().delivery(*lots->front().delivery); });
    ASSERT_TRUE(came);
    EXPECT_EQ(came->supplier, "Northgate String Company");
    EXPECT_EQ(came->shipping, pounds(1500));
    EXPECT_EQ(look([](Transaction& t) { return t.lots().suppliers(); }),
              (std::vector<std::string>{"Fennimore", "Northgate String Company"}));
}

TEST_P(Delivered, SentTwiceItComesInOnceAndNeverAsSomethingElse) {
    auto command = parcel({line("K", 3, LotKind::Reel, metres(200), 11000)}, 900);
    const auto first = receiveAll(command);
    ASSERT_TRUE(first);
    const auto after = openLots();
    EXPECT_EQ(tagsOf(receiveAll(command).value()), tagsOf(*first));
    EXPECT_EQ(openLots(), after);
    command.lines.front().count = 4;
    EXPECT_EQ(refusalOf(receiveAll(command)), Code::ChangedMeanwhile) << "nobody may believe that four came in";
    EXPECT_EQ(openLots(), after);
}

// Prices, costs and promises, "Cost": 114.50 x 11.2 / 200 = 6.412.
TEST_P(Delivered, AJobCostsWhatWasCutAtTheLandedPrice) {
    const auto lots = receiveAll(parcel({line("K", 2, LotKind::Reel, metres(200), 11000)}, 900));
    ASSERT_TRUE(lots);
    EXPECT_EQ(lots->front().landedCost(), pounds(11450));
    const RacketSummary racket = racketOf("Lindobi", "Aldermoor 98", "A");
    IntakeDraft draft = draftFor(racket, "K", "K", "52", "50");
    draft.method = Method::OnePiece;
    draft.mains.lot = lots->front().id;
    const Job job = logged(racket, draft, "costed");
    ASSERT_TRUE(take(*job.id));
    ASSERT_TRUE(cut(cutting(*job.id, PieceRole::Whole, metres(11.2))));
    ASSERT_TRUE(finish(*job.id, {lb("52"), lb("50")}));
    const auto today = read([&](Transaction& t) { return earned(t, dayOf(std::chrono::year(2026) / 3 / 12)); });
    const auto line = std::ranges::find(today.value().jobs, job.number, &EarnedLine::number);
    ASSERT_NE(line, today->jobs.end());
    EXPECT_EQ(line->earnings.string, pounds(641));
}

TEST_P(Delivered, ARefusalNamesItsLineAndLeavesNothing) {
    const auto before = openLots();
    const auto refused = [&](auto change) {
        auto command = parcel(
            {line("K", 1, LotKind::Reel, metres(200), 11000), line("L", 1, LotKind::Reel, metres(200), 14000)}, 0);
        change(command);
        const auto result = receiveAll(command);
        EXPECT_EQ(openLots(), before);
        return result ? std::string("came in")
                      : result.error().text("what") + result.error().text("key") +
                            std::to_string(result.error().number("line"));
    };
    EXPECT_EQ(refused([](ReceiveDelivery& d) { d.lines[1].count = 0; }), "count1");
    EXPECT_EQ(refused([](ReceiveDelivery& d) { d.lines[1].count = kMostAlike + 1; }), "count1");
    EXPECT_EQ(refused([](ReceiveDelivery& d) { d.lines[1].nominal = metres(0.5); }), "length1");
    EXPECT_EQ(refused([](ReceiveDelivery& d) { d.lines[1].priceEach = pounds(-1); }), "price1");
    EXPECT_EQ(refused([](ReceiveDelivery& d) { d.lines[1].batch = std::string(81, 'b'); }), "batch1");
    EXPECT_EQ(refused([](ReceiveDelivery& d) { d.lines[1].tag = "K-2"; }), "tag1") << "on another reel already";
    EXPECT_EQ(refused([](ReceiveDelivery& d) { d.lines[0].tag = d.lines[1].tag = "new"; }), "tag1") << "twice";
    EXPECT_EQ(refused([](ReceiveDelivery& d) {
                  d.lines[1].tag = "new";
                  d.lines[1].count = 2;
              }),
              "tag1")
        << "one tag for two reels";
    EXPECT_EQ(refused([](ReceiveDelivery& d) { d.lines[1].article = StringArticleId::of(999'999); }), "string1");
    EXPECT_EQ(refused([](ReceiveDelivery& d) { d.shipping = pounds(-1); }), "shipping0");
    EXPECT_EQ(refused([](ReceiveDelivery& d) { d.supplier = std::string(201, 's'); }), "supplier0");
    EXPECT_EQ(refused([](ReceiveDelivery& d) { d.lines.clear(); }), "delivery0");
}

} // namespace
} // namespace rw::desk::test
