// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/frames/marked_range.h"
#include "core/stock/movement.h"

#include <string>

namespace rw {

/// A customer's informed yes to a pull above the marked maximum, for one job. It never carries over to the next.
struct Consent {
    AboveMarked above;    ///< as it was shown and agreed to
    std::string agreedBy; ///< who said yes, "" for the customer; erased with them
    std::string words;    ///< the shop's own words that were read out or shown
    By by;                ///< who told them

    /// A yes covers every pull up to the one that was agreed to.
    [[nodiscard]] bool covers(const Tension& pull) const { return pull.newtons() <= above.pull.newtons(); }
};

} // namespace rw
