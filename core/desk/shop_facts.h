// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <string>
#include <vector>

namespace rw::desk {

/// What every station must know of the shop before it can show anything.
struct ShopFacts {
    std::string name;     ///< "" while nobody has named it
    std::string timeZone; ///< IANA name
    Currency currency;
    std::vector<StaffMember> staff;     ///< by id
    std::vector<Machine> machines;      ///< by name
    std::vector<StringArticle> strings; ///< by code
    std::vector<PriceLine> extras;      ///< that today's price list offers
    bool hasPrices = false;             ///< a price list is valid today
    /// Nobody has ever worked here: the shop must be set up before it can take a racket in.
    [[nodiscard]] bool isNew() const { return staff.empty() || machines.empty() || !hasPrices; }
    bool operator==(const ShopFacts&) const = default;
};
[[nodiscard]] Result<ShopFacts> shopFacts(Transaction& ledger, Instant now);

} // namespace rw::desk
