// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"
#include "core/money/money.h"
#include "core/stock/movement.h"

#include <string>

namespace rw {

/// String that came in one parcel, with what its sending cost altogether.
struct Delivery {
    DeliveryId id;
    std::string supplier; ///< "" where nobody said; at most 200 characters
    Money shipping;       ///< each lot keeps its share
    By by;
};

} // namespace rw
