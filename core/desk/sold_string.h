// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <optional>

// The strings a shop sells: what each is, and what a bed of it costs.
namespace rw::desk {

struct SoldString {
    StringArticle article;
    std::optional<Money> fullBed;  ///< needed where one is added or changed
    std::optional<Money> halfBed;  ///< where one is added or changed, nothing: half of the full bed
    std::optional<Money> packet{}; ///< of a string that comes in packets; nothing: a bed of it costs the full bed
};

/// A string with what today's list says of it. NotFound.
[[nodiscard]] Result<SoldString> soldString(Transaction& ledger, StringArticleId id, Instant now);

/// A string the shop sells from now on, with its prices on today's list and on those that begin later. Missing {code,
/// name, price}, TooLong, OutOfRange (its thickness, its weight, what a packet holds), CurrencyMismatch; ImpossibleValue
/// for a code in use; Missing {price list}.
[[nodiscard]] Result<StringArticle> addString(Transaction& ledger, const SoldString& string, Instant now);

/// What is said of a string, and its prices from today on; jobs that are logged keep what they were quoted. Its code
/// stays, as it stands on its reels. As addString; NotFound; ChangedMeanwhile when another station changed it since it
/// was read (its prices count as part of it).
[[nodiscard]] Result<StringArticle> changeString(Transaction& ledger, const SoldString& string, Instant now);

} // namespace rw::desk
