// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <optional>
#include <string>

// What a shop's first day takes before a racket can be taken in: who works there, a machine, prices, a string.
namespace rw::desk {

struct NewShop {
    std::string name;     ///< of the shop, may be empty
    std::string timeZone; ///< IANA name; "" is UTC
    std::string person;
    std::string machine;
    TensionUnit unit = TensionUnit::Pound;
    int stepHundredths = 50; ///< of the machine's dial, 1 to 1000
    Money labour;
    std::optional<Money> ownStringLabour; ///< nothing: the same
    std::optional<Money> rush;            ///< nothing: rush costs nothing more
};
/// Sets an empty ledger up: open Monday to Saturday from 10 to 18 until the shop says otherwise. Missing {name,
/// machine}, TooLong, OutOfRange (the step), CurrencyMismatch; ImpossibleValue when somebody works here already.
[[nodiscard]] Result<void> setUpShop(Transaction& ledger, const NewShop& shop, Instant now);

struct NewString {
    StringArticle article;
    Money fullBed;
    std::optional<Money> halfBed; ///< nothing: it is not sold by the half
};
/// A string the shop sells from now on, with its price on today's list. Missing {code, name}, TooLong, OutOfRange (its
/// thickness), CurrencyMismatch; ImpossibleValue for a code in use; Missing {price list}.
[[nodiscard]] Result<StringArticle> addString(Transaction& ledger, const NewString& string, Instant now);

} // namespace rw::desk
