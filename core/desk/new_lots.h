// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <map>
#include <string>
#include <string_view>

namespace rw::desk {

/// The tags of lots that are to come: "K-5" after the highest of the string's open lots, then "K-6".
class NextTags {
public:
    explicit NextTags(Transaction& ledger)
        : m_ledger(ledger) {}
    [[nodiscard]] std::string next(const StringArticle& article);
    /// As typed, or the next one for nothing: TooLong, ImpossibleValue {tag in use}.
    [[nodiscard]] Result<std::string> of(const StringArticle& article, std::string_view typed);

private:
    Transaction& m_ledger;
    std::map<StringArticleId, std::int64_t> m_last;
};

/// What can be asked of a lot before it is added: OutOfRange (a nominal length outside 1 m to 1000 m).
[[nodiscard]] Result<void> checkNominal(Length nominal);
/// CurrencyMismatch, ImpossibleValue {key: what} for less than nothing.
[[nodiscard]] Result<void> checkPrice(std::string_view what, const Money& price, const Currency& currency);
/// TooLong {batch}.
[[nodiscard]] Result<std::string> checkBatch(std::string_view typed);

/// ImpossibleValue {key: weight} for one of several lots, or of a packet; OutOfRange {weight} for nothing.
[[nodiscard]] Result<void> checkNewWeight(const std::optional<Mass>& weight, LotKind kind, int count);
/// Keeps what the reel weighs when new, for the weigh-in.
void keepNewWeight(Transaction& ledger, LotId lot, const std::optional<Mass>& weight, const By& by);

/// Adds the lot with its nominal length as the movement "received".
LotId addLot(Transaction& ledger, const Lot& lot, const By& by);

} // namespace rw::desk
