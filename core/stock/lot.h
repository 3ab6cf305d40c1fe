// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/id.h"
#include "core/money/money.h"
#include "core/units/length.h"

#include <cstdint>
#include <optional>
#include <string>

namespace rw {

/// A packet holds one bed: a job that takes its whole bed from one uses it up, mains measured off and the rest for the
/// crosses, because what is left is too short to keep. Half a bed is measured off; the other half lies there opened.
enum class LotKind { Reel, Packet, Remnant };

/// String on the shelf: a reel, a packet, a remnant kept for use. Its length is the sum of its movements.
struct Lot {
    std::optional<LotId> id;
    std::string tag; ///< what is written on it, unique: "K-2"; 1 to 20 characters
    StringArticleId article;
    LotKind kind = LotKind::Reel;
    std::optional<CustomerId> owner;             ///< nothing: the shop's
    Length nominal = Length::fromMillimetres(0); ///< when new
    Length length = Length::fromMillimetres(0);  ///< by the book, now; the ledger keeps it
    Money price;                                 ///< what was paid for it
    Money shipping;                              ///< its share of the delivery's shipping
    std::string batch;
    Instant received;
    bool sealed = true;                                ///< nothing was ever cut from it
    bool measuredSinceLastCut = false;                 ///< the book was held against a tape and nothing was cut since
    std::optional<DeliveryId> delivery = std::nullopt; ///< with which it came, where that was kept
    std::optional<Instant> closed;                     ///< empty, thrown away or given back

    [[nodiscard]] Money landedCost() const { return price + shipping; }
    [[nodiscard]] bool isOpen() const { return !closed.has_value(); }
    /// As it came from the maker. A remnant was cut off something.
    [[nodiscard]] bool isUntouched() const { return sealed && kind != LotKind::Remnant; }
    [[nodiscard]] bool isFullPacket() const { return sealed && kind == LotKind::Packet; }
};

} // namespace rw
