// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/pricing/price_list.h"
#include "core/units/length.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace rw {

struct QuotedPiece {
    PieceRole role;
    StringArticleId article;
    bool customersOwn = false; ///< own set or own reel: no string charge
    bool packet = false;       ///< a shop packet at its own price
};

struct Discount {
    int hundredthsPercent = 0;  ///< 1000 is 10 %; used when `fixed` is empty
    std::optional<Money> fixed; ///< positive
    std::string reason;
};

struct QuoteRequest {
    Sport sport = Sport::Tennis;
    Method method = Method::TwoPiece;
    std::vector<QuotedPiece> pieces;
    std::vector<std::pair<std::string, int>> extras; ///< label and count
    bool rush = false;
    std::optional<Discount> discount;
};

struct TaxShare {
    int hundredthsPercent;
    Money tax; ///< contained in, or added to, the total by the list's rule
};

/// What the customer pays, line by line, in the order labour, string, extras, rush, discount, tax.
struct Quote {
    std::vector<Charge> charges;
    std::vector<TaxShare> taxes;
    Money total;
};

/// Two pieces of one string are one full bed, of two strings a half bed each; a packet has its own price
/// once, however it is halved. All string the customer's own: own-string labour instead of labour. Half away
/// from zero once on the discounted sum, and once per tax rate. Where lines have several rates the discount
/// is one line a rate, in proportion to what it takes off.
/// Refusals: Missing {what: price, kind, article or label} when the list has no price for something asked;
/// Missing {what: reason} for a discount without one; OutOfRange {what: discount or count}; CurrencyMismatch.
[[nodiscard]] Result<Quote> quote(const PriceList& list, const QuoteRequest& request);

/// Tax contained in, or to be added to, `amount`.
[[nodiscard]] Money taxOf(Money amount, int hundredthsPercent, TaxRule rule);

/// What `cut` of a lot cost: landed cost x cut / nominal length (> 0), rounded half away from zero.
[[nodiscard]] Money costOfCut(Money landedCost, Length nominal, Length cut);

/// Landed shipping of the lots of one delivery, by price; evenly when they cost nothing. Adds up to
/// `shipping`.
[[nodiscard]] std::vector<Money> shareShipping(Money shipping, const std::vector<Money>& lotPrices);

} // namespace rw
