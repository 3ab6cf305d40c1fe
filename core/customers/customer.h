// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/id.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace rw {

struct Contact {
    enum class Kind { Phone, Email, Other };
    Kind kind = Kind::Phone;
    std::string text; ///< as it was written; 1 to 200 characters
    bool operator==(const Contact&) const = default;
};

/// Somebody whose rackets are strung here. Name and contacts are words about a person and can be erased;
/// what the books need hangs on the id alone.
struct Customer {
    std::optional<CustomerId> id; ///< nothing until the ledger has given one
    std::string name;             ///< 1 to 200 characters
    std::vector<Contact> contacts;
    std::int64_t version = 0;                      ///< row version, for changes from two stations
    std::optional<Instant> removed = std::nullopt; ///< erased on request; only what the books need is left
};

/// A customer's own frame, told from its twin by a mark.
struct Racket {
    std::optional<RacketId> id;
    CustomerId customer;
    FrameModelId frame;
    std::string mark; ///< "A", "B", "red grip"; may be empty while there is one; unique per customer and frame
};

} // namespace rw
