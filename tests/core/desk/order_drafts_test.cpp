// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/asked_for_none.h"
#include "core/desk/order_drafts.h"
#include "core/desk/owner.h"
#include "core/desk/settings.h"
#include "tests/core/desk/demo_fixture.h"

// What to order, from whom.
namespace rw::desk::test {
namespace {

using std::chrono::days;

class Orders : public DemoEverywhere {
protected:
    std::vector<OrderDraft> drafts() {
        return *read([](Transaction& t) { return orderDrafts(t, kNow); });
    }
    static std::string said(const std::vector<OrderDraft>& drafts) {
        std::string all;
        for (const OrderDraft& draft : drafts) {
            all += draft.supplier + ":";
            for (const OrderLine& line : draft.lines) {
                all += " " + std::to_string(line.count) + " " + line.article.code + " " +
                       std::string(becauseText(line.because));
            }
            all += "; ";
        }
        return all;
    }
    /// `count` lots alike in one parcel.
    void comes(std::string_view supplier, std::string_view code, int count, LotKind kind, double m, int price,
               int shipping) {
        const ReceiveDelivery parcel{.requestKey = std::string(supplier) + std::string(code),
                                     .supplier = std::string(supplier),
                                     .lines = {{.article = *string(code).id,
                                                .count = count,
                                                .kind = kind,
                                                .nominal = metres(m),
                                                .priceEach = pounds(price)}},
                                     .shipping = pounds(shipping),
                                     .by = by("stockroom")};
        ASSERT_TRUE(write([&](Transaction& t) { return receiveDelivery(t, parcel); }));
    }
};
IN_MEMORY_AND_ON_BOTH_ENGINES(Orders);

TEST_P(Orders, EachSupplierGetsWhatRunsShortThere) {
    // T-1 came from Fennimore, L-3 from Northgate; K, which they send too, lasts.
    EXPECT_EQ(said(drafts()), "Fennimore: 2 T running-short; Northgate String Company: 2 L running-short; ");
    const OrderDraft northgate = drafts().back();
    EXPECT_EQ(northgate.lines.front().each, metres(200));
    EXPECT_EQ(northgate.lines.front().priceEach, pounds(13500));
    EXPECT_EQ(northgate.goods(), pounds(27000));
    EXPECT_EQ(northgate.shipping, pounds(450));
    EXPECT_TRUE(northgate.isPriced());
}

TEST_P(Orders, NothingIsOrderedWhileNothingRunsShort) {
    for (const std::string_view code : {"L", "T"}) {
        comes("Northgate String Company", code, 3, LotKind::Reel, 200, 11000, 900);
    }
    EXPECT_EQ(said(drafts()), "");
}

TEST_P(Orders, WhatIsDueWithinTwoWeeksComesAlong) {
    // Ten more were asked for lately: 17 jobs of K are still enough, but not in two weeks, and L has to come anyway.
    for (int asked = 0; asked < 10; ++asked) {
        AskedForNone k{"k" + std::to_string(asked), *string("K").id, by("counter")};
        k.by.at = kNow - days(1 + asked);
        ASSERT_TRUE(write([&](Transaction& t) { return askedForNone(t, k); }));
    }
    EXPECT_EQ(said(drafts()),
              "Fennimore: 2 T running-short; Northgate String Company: 2 L running-short 2 K due-soon; ");
    const OrderLine k = drafts().back().lines.back();
    EXPECT_GT(k.ahead.jobsLeft, k.ahead.s);
    EXPECT_LE(k.ahead.jobsLeft - 14 * k.ahead.jobsPerDay, k.ahead.s);
}

// n (n + 1) >= 2 K D / (h P): T sells some 70 jobs a year.
TEST_P(Orders, PacketsAreOrderedByTheShippingThatTheyCost) {
    comes("Northgate String Company", "T", 1, LotKind::Packet, 10, 500, 900);
    const auto found = drafts();
    const auto northgate = std::ranges::find(found, "Northgate String Company", &OrderDraft::supplier);
    ASSERT_NE(northgate, found.end());
    const auto t = std::ranges::find(northgate->lines, "T", [](const OrderLine& l) { return l.article.code; });
    ASSERT_NE(t, northgate->lines.end());
    EXPECT_EQ(t->kind, LotKind::Packet);
    EXPECT_EQ(t->each, metres(10));
    const double least = 2 * 900 * (t->ahead.jobsPerDay * 365) / (0.20 * 500);
    EXPECT_GE(t->count * (t->count + 1.0), least);
    EXPECT_LT((t->count - 1.0) * t->count, least);
    EXPECT_GT(t->count, 10);
}

TEST_P(Orders, AStringThatNeverCameIsOneReelFromNobodyKnows) {
    StringArticle article = string("K");
    article.code = "N";
    const StringArticleId fresh =
        *write([&](Transaction& t) -> Result<StringArticleId> { return t.strings().add(article); });
    EXPECT_EQ(said(drafts()).find(" N "), std::string::npos) << "nobody wanted it: it is on request";
    const AskedForNone asked{"n", fresh, by("counter")};
    ASSERT_TRUE(write([&](Transaction& t) { return askedForNone(t, asked); }));
    const OrderDraft last = drafts().back();
    EXPECT_EQ(said({last}), ": 1 N running-short; ");
    EXPECT_FALSE(last.lines.front().each);
    EXPECT_FALSE(last.lines.front().priceEach);
    EXPECT_FALSE(last.goods());
    EXPECT_FALSE(last.isPriced());
}

TEST_P(Orders, WhatTheShopAlwaysWantsIsOrderedToo) {
    ASSERT_TRUE(write([](Transaction& t) -> Result<void> {
        t.shop().set(setting::kRunningShortJobs, "18");
        return {};
    }));
    EXPECT_NE(said(drafts()).find(" K running-short"), std::string::npos) << said(drafts());
}

TEST_P(Orders, TheTableKeepsWhatIsPaidForTheOwner) {
    const LedgerTable table = orderTable(drafts());
    ASSERT_EQ(table.rows.size(), 2U);
    EXPECT_EQ(table.rows[0], (std::vector<Cell>{"Fennimore", "T", "Tarnweave 120", "red", "reel", std::int64_t{100'000},
                                                std::int64_t{2}, "running-short", std::int64_t{5800}}));
    EXPECT_EQ(withoutOwnersColumns(table).columns.size(), table.columns.size() - 1);
}

} // namespace
} // namespace rw::desk::test
