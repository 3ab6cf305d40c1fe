// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stock/movement.h"
#include "core/units/tension.h"

#include <optional>

namespace rw {

/// A change of the agreed tensions after the racket was taken in.
struct AskedChange {
    TensionPair before;
    TensionPair after;
    By by;
    std::optional<Instant> seen; ///< when the bench nodded to it
};

} // namespace rw
