// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/order_drafts.h"

#include "core/base/named_texts.h"
#include "core/desk/running_short.h"
#include "core/desk/settings.h"
#include "core/stock/order_quantity.h"

#include <algorithm>
#include <map>
#include <utility>

namespace rw::desk {

namespace {
using Because = stock::DraftLine::Because;

constexpr double kDaysOfAYear = 365;
constexpr NamedTexts<Because, 3> kBecause({{{Because::RunningShort, "running-short"},
                                            {Because::DueSoon, "due-soon"},
                                            {Because::FillsFreeShipping, "fills-free-shipping"}}});

/// A string that can be ordered, and how it came the last time.
struct Supplied {
    const ShelfString* string;
    std::optional<LastSupply> last;

    [[nodiscard]] double jobsEach() const {
        const bool packet = last && last->kind == LotKind::Packet; // a job uses one up
        return packet || !last ? 1 : last->nominal.metres() / string->perJob.metres();
    }
    [[nodiscard]] bool isPriced() const { return last && last->price.minor() > 0; }
    [[nodiscard]] int countPerOrder() const {
        const double eachPerYear = string->ahead->jobsPerDay * kDaysOfAYear / jobsEach();
        if (!isPriced() || eachPerYear <= 0) {
            return 1;
        }
        return stock::reelsPerOrder(eachPerYear, static_cast<double>(last->price.minor()),
                                    {.perOrder = static_cast<double>(last->shipping.minor())});
    }
};

/// The fewest that a shop always wants count as its order point where they are more.
int orderAt(const ShelfString& string, int fewest) { return std::max(string.ahead->s, fewest - 1); }

OrderDraft draftOf(std::string supplier, const std::vector<Supplied>& strings, int fewest, Currency currency) {
    std::vector<stock::StringPosition> positions;
    for (const Supplied& each : strings) {
        positions.push_back({.article = *each.string->article.id,
                             .positionJobs = static_cast<double>(each.string->wholeJobsFree),
                             .s = orderAt(*each.string, fewest),
                             .jobsPerDay = each.string->ahead->jobsPerDay,
                             .jobsPerReel = each.jobsEach(),
                             .reelsPerOrder = each.countPerOrder(),
                             .reelPrice = each.isPriced() ? each.last->price : Money::fromMinor(1, currency)});
    }
    OrderDraft draft{.supplier = std::move(supplier), .lines = {}, .shipping = std::nullopt};
    for (const Supplied& each : strings) {
        draft.shipping = each.last && each.last->parcelShipping ? each.last->parcelShipping : draft.shipping;
    }
    const stock::SupplierTerms terms{.shipping = draft.shipping.value_or(Money::zero(currency)),
                                     .freeFrom = std::nullopt};
    for (const stock::DraftLine& line : stock::draftOrder(positions, terms)) {
        const auto found = std::ranges::find(strings, std::optional(line.article),
                                             [](const Supplied& each) { return each.string->article.id; });
        OrderLine wanted{.article = found->string->article,
                         .each = std::nullopt,
                         .priceEach = std::nullopt,
                         .ahead = *found->string->ahead};
        wanted.count = line.reels;
        wanted.because = line.because;
        if (found->last) {
            wanted.kind = found->last->kind;
            wanted.each = found->last->nominal;
        }
        if (found->isPriced()) {
            wanted.priceEach = found->last->price;
        }
        draft.lines.push_back(std::move(wanted));
    }
    return draft;
}
} // namespace

std::optional<Money> OrderLine::price() const {
    return priceEach ? std::optional(priceEach->timesRatioHalfAway(count, 1)) : std::nullopt;
}

std::optional<Money> OrderDraft::goods() const {
    std::optional<Money> sum;
    for (const OrderLine& line : lines) {
        if (const auto price = line.price()) {
            sum = sum ? *sum + *price : *price;
        }
    }
    return sum;
}

bool OrderDraft::isPriced() const {
    return std::ranges::all_of(lines, [](const OrderLine& line) { return line.priceEach.has_value(); });
}

std::optional<Money> OrderDraft::together() const {
    const auto sum = goods();
    return sum && shipping ? std::optional(*sum + *shipping) : sum;
}

std::string_view becauseText(Because because) { return kBecause.text(because); }

Result<std::vector<OrderDraft>> orderDrafts(Transaction& ledger, Instant now) {
    const auto shelf = shelfAhead(ledger, now);
    if (!shelf) {
        return tl::unexpected(shelf.error());
    }
    const std::vector<LastSupply> supplies = ledger.supply().lastSupplies();
    std::map<std::pair<bool, std::string>, std::vector<Supplied>> bySupplier; // the unknown one last
    for (const ShelfString& string : *shelf) {
        if (string.ahead->onRequest || string.article.retired) {
            continue;
        }
        const auto last = std::ranges::find(supplies, *string.article.id, &LastSupply::article);
        const bool came = last != supplies.end();
        const std::string supplier = came ? last->supplier : std::string();
        bySupplier[{supplier.empty(), supplier}].push_back({&string, came ? std::optional(*last) : std::nullopt});
    }
    const int fewest = readSettings(ledger.shop()).runningShortJobs;
    std::vector<OrderDraft> drafts;
    for (const auto& [supplier, strings] : bySupplier) {
        OrderDraft draft = draftOf(supplier.second, strings, fewest, ledger.shop().currency());
        if (!draft.lines.empty()) {
            drafts.push_back(std::move(draft));
        }
    }
    return drafts;
}

LedgerTable orderTable(const std::vector<OrderDraft>& drafts) {
    LedgerTable table{.name = "order",
                      .columns = {{"supplier", ColumnKind::Words},
                                  {"string", ColumnKind::Words},
                                  {"name", ColumnKind::Words},
                                  {"colour", ColumnKind::Words},
                                  {"kind", ColumnKind::Fact},
                                  {"length_mm", ColumnKind::Number},
                                  {"count", ColumnKind::Number},
                                  {"because", ColumnKind::Fact},
                                  {"price_each", ColumnKind::Money, true}},
                      .rows = {}};
    for (const OrderDraft& draft : drafts) {
        for (const OrderLine& line : draft.lines) {
            const auto amount = [](const std::optional<std::int64_t>& number) {
                return number ? Cell(*number) : Cell(std::monostate());
            };
            table.rows.push_back({draft.supplier, line.article.code, line.article.name, line.article.colour,
                                  std::string(line.kind == LotKind::Packet ? "packet" : "reel"),
                                  amount(line.each ? std::optional(line.each->millimetres()) : std::nullopt),
                                  std::int64_t{line.count}, std::string(becauseText(line.because)),
                                  amount(line.priceEach ? std::optional(line.priceEach->minor()) : std::nullopt)});
        }
    }
    return table;
}

} // namespace rw::desk
