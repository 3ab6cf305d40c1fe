// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <optional>
#include <vector>

// The shop's price lists, each with the day from which it holds. What was charged is read off the list of its day, so a
// list is never changed for the past, and jobs keep what they were quoted.
namespace rw::desk {

enum class Holds { Past, Now, Later };

struct DatedPrices {
    PriceList list;
    Holds holds;
};
/// The one that begins last first.
[[nodiscard]] Result<std::vector<DatedPrices>> datedPrices(Transaction& ledger, Instant now);

/// What a new list that begins on `from` starts with: the lines of the one that would hold then. Missing {price list}.
[[nodiscard]] Result<PriceList> pricesToBegin(Transaction& ledger, CivilDate from);

/// A new list. Its lines are checked: Missing {what: price, kind, sport or string} when one that every shop needs is not
/// there (labour, own-string labour and rush for every sport; a full bed or a packet of each string);
/// ImpossibleValue {key: amount, cost} below nothing, {key: line} for a line that is there twice or names what it must not,
/// {key: date} before today or on the day of another list; OutOfRange {tax}; Missing or TooLong {extra}; NotFound
/// {string}; CurrencyMismatch. The very same list sent again is given back.
[[nodiscard]] Result<PriceList> addPriceList(Transaction& ledger, const PriceList& wanted, Instant now);

/// Lines and tax rule of a list that holds now or later, in place of those in `before`. One that began before today is
/// left as it was, and a new one begins today. As addPriceList; ChangedMeanwhile when `before` is not what is stored, or
/// holds no more.
[[nodiscard]] Result<PriceList> changePriceList(Transaction& ledger, const PriceList& before, const PriceList& wanted,
                                                Instant now);

/// Takes back a list that does not hold yet. ImpossibleValue {key: date} once it does; ChangedMeanwhile.
[[nodiscard]] Result<void> dropPriceList(Transaction& ledger, const PriceList& before, Instant now);

/// What a string costs on a list.
struct StringPrices {
    std::optional<Money> fullBed;
    std::optional<Money> halfBed; ///< when set: nothing is half of the full bed
    std::optional<Money> packet;
    int taxHundredthsPercent = 0;
    bool operator==(const StringPrices&) const = default;
};
[[nodiscard]] StringPrices pricesOf(const PriceList& list, StringArticleId article);
/// Puts them in place of those that the list has.
void setPricesOf(PriceList& list, StringArticleId article, const StringPrices& prices);

/// Puts a line in the place of another, or at the end of its kind.
void putLine(PriceList& list, const PriceLine& line, const std::optional<PriceLine>& insteadOf = std::nullopt);
/// Whether both are for the same thing: kind, sport, method, string, label.
[[nodiscard]] bool isSameThing(const PriceLine& one, const PriceLine& other);

} // namespace rw::desk
