// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"
#include "core/jobs/crosses_rise.h"

#include <string>
#include <vector>

namespace rw::desk {

/// What every station must know of the shop before it can show anything.
struct ShopFacts {
    std::string name;     ///< "" while nobody has named it
    std::string timeZone; ///< IANA name
    Currency currency;
    std::vector<StaffMember> staff;     ///< who works here, by id
    std::vector<Machine> machines;      ///< in use, by name
    std::vector<StringArticle> strings; ///< that are strung, by code
    std::vector<PriceLine> extras;      ///< that today's price list offers
    bool hasPrices = false;             ///< there is a price list, whenever it holds
    // Retired: offered no more, but what is told of the past still names them.
    std::vector<StaffMember> formerStaff = {};
    std::vector<Machine> formerMachines = {};
    std::vector<StringArticle> formerStrings = {};
    OpeningHours hours = {};
    CrossesRise badmintonCrosses = {}; ///< what one number for both means in badminton
    std::string aboveMarkedWords = {}; ///< for the informed yes; "": the program's own
    /// Nobody has ever worked here: the shop must be set up before it can take a racket in.
    [[nodiscard]] bool isNew() const {
        return (staff.empty() && formerStaff.empty()) || (machines.empty() && formerMachines.empty()) || !hasPrices;
    }
    bool operator==(const ShopFacts&) const = default;
};
[[nodiscard]] Result<ShopFacts> shopFacts(Transaction& ledger, Instant now);

} // namespace rw::desk
