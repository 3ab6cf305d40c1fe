// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stock/shelf.h"

#include <optional>

namespace rw::desk {

/// What a cut that somebody is about to make would leave.
struct CutFit {
    Fit fit;
    Length leaves; ///< negative when it does not fit
};
/// Of a lot as it is by the book, or as the tape says.
[[nodiscard]] CutFit fitOfCut(Lot lot, Length cut, const std::optional<Length>& measured);

} // namespace rw::desk
