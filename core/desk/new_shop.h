// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <optional>
#include <string>

// What a shop's first day takes before a racket can be taken in: who works there, a machine, prices; and a string
// (core/desk/sold_string.h).
namespace rw::desk {

struct NewShop {
    std::string name;     ///< of the shop, may be empty
    std::string timeZone; ///< IANA name; "" is UTC
    std::string person;
    std::string machine;
    TensionUnit unit = TensionUnit::Pound;
    int stepHundredths = 50; ///< of the machine's dial, 1 to 1000
    Money labour;            ///< in the currency that the ledger has from now on, for good
    std::optional<Money> ownStringLabour; ///< nothing: the same
    std::optional<Money> rush;            ///< nothing: rush costs nothing more
};
/// Sets an empty ledger up: open Monday to Saturday from 10 to 18 until the shop says otherwise. Missing {name,
/// machine}, TooLong, OutOfRange (the step), CurrencyMismatch (the prices are in different ones, or the ledger holds
/// money of another one already); ImpossibleValue when somebody works here already.
[[nodiscard]] Result<void> setUpShop(Transaction& ledger, const NewShop& shop, Instant now);

} // namespace rw::desk
