// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace rw {

/// How a racket left the shop. Who took it is erased with its owner.
struct Handover {
    std::string takenBy;    ///< "" for the customer
    bool onAccount = false; ///< what is owed is paid later, and that was agreed; false: nothing was said

    bool operator==(const Handover&) const = default;
};

} // namespace rw
