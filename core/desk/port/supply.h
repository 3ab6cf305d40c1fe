// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/id.h"
#include "core/money/money.h"
#include "core/stock/lot.h"
#include "core/stock/movement.h"
#include "core/units/length.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

// How string goes and comes: who wanted it, who sent it. core/sql implements it.
namespace rw::desk {

/// Somebody wanted a string.
struct StringWish {
    StringArticleId article;
    Instant at;
    int halfBeds; ///< 2: a whole job; 0: nobody wanted it, its first lot came
};

/// The newest lot that the shop bought of a string, and the parcel that it came in.
struct LastSupply {
    StringArticleId article;
    LotKind kind;
    Length nominal;
    Money price;                         ///< zero where nobody said
    Money shipping;                      ///< its share of the parcel's
    std::string supplier;                ///< "" where nobody said
    std::optional<Money> parcelShipping; ///< of the whole parcel, where that was kept
    [[nodiscard]] Money landedCost() const { return price + shipping; }
};

/// A string that somebody asked for when the shop had none of it.
struct AskedForNone {
    std::string requestKey;
    StringArticleId article;
    By by;
};

class Supply {
public:
    virtual ~Supply() = default;
    /// What was wanted of the shop's string from `since` on, by article, then oldest first: jobs that were not
    /// withdrawn, on the day they were logged, each mains or crosses one half bed, and what was asked for in vain. The
    /// first lot of each string is among them whenever it came.
    [[nodiscard]] virtual std::vector<StringWish> wishes(Instant since) = 0;
    [[nodiscard]] virtual std::vector<LastSupply> lastSupplies() = 0; ///< by article; those that were never bought left
                                                                      ///< out
    /// The caller has looked for the request key before; a key met twice all the same is a LedgerGuard.
    virtual void add(const AskedForNone& asked) = 0;
    [[nodiscard]] virtual std::optional<StringArticleId> askedForNoneByRequestKey(std::string_view key) = 0;
};

} // namespace rw::desk
