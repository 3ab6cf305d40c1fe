// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace rw {

/// The racket as it came in: looked over together with its owner, at the counter.
struct Inspection {
    std::string cameWith; ///< "cover, one grip": what goes home with it
    std::string remarks;  ///< "bumper worn at 2 o'clock": what was seen

    [[nodiscard]] bool isEmpty() const { return cameWith.empty() && remarks.empty(); }
    bool operator==(const Inspection&) const = default;
};

} // namespace rw
