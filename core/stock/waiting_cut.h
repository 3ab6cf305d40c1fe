// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"
#include "core/length/piece_role.h"
#include "core/units/length.h"

#include <cstdint>
#include <optional>

namespace rw {

/// A planned cut as re-planning sees it.
struct WaitingCut {
    JobPieceId piece;
    JobId job;
    std::int64_t jobNumber;
    PieceRole role;
    std::optional<LotId> lot;        ///< where it is planned, if anywhere
    std::optional<CustomerId> owner; ///< whose lots it may come off by itself; nothing: the shop's
    Length length;
    bool pinned; ///< somebody chose the lot
    bool begun;  ///< the job is on a machine, or another piece of it was cut from this string: the bench has the reel

    bool operator==(const WaitingCut&) const = default;
};

} // namespace rw
