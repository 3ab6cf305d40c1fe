// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <string>
#include <vector>

// What is done to a lot on the shelf other than cutting from it. Each is a movement with a reason, and what was done by
// mistake is taken back by another.
namespace rw::desk {

struct CorrectLot {
    LotId lot;
    Length measured; ///< what is really there, >= 0
    By by;
    std::string why{}; ///< in somebody's words; at most 2000 characters
};
/// Books the difference as a movement "measured"; zero is a correction too: it says that the book was right. A lot with
/// nothing left is closed; planned cuts that it cannot hold any more are planned elsewhere. LotClosed, OutOfRange,
/// TooLong {reason}.
[[nodiscard]] Result<Lot> correctLot(Transaction& ledger, const CorrectLot& command);

/// Where a lot went that is not on the shelf any more: into the bin, or back to its owner or supplier.
enum class LotLeaves { ThrownAway, Returned };
struct TakeOffShelf {
    LotId lot;
    LotLeaves how;
    std::string why; ///< in somebody's words, needed; at most 2000 characters
    By by;
};
/// Books off all that is left and closes the lot; cuts that are planned on it are planned elsewhere, but for those that
/// somebody pinned there. LotClosed; Missing, TooLong {reason}. Said twice it is said once.
[[nodiscard]] Result<Lot> takeOffShelf(Transaction& ledger, const TakeOffShelf& command);

/// Movements that were booked together by mistake: those of one delivery, a correction, something thrown away.
struct TakeBack {
    struct Booked {
        LotId lot;
        MovementId movement;
    };
    std::vector<Booked> booked;
    By by;
};
/// Takes each of them back with a movement of the opposite sign that points at it, and opens or closes its lot again as
/// it was. Nothing is taken back when one of them cannot be: ChangedMeanwhile {what: lot} when something happened to
/// its lot since, ImpossibleValue for what is no step of the stockroom (a cut). What was taken back before stays so.
[[nodiscard]] Result<std::vector<Lot>> takeBack(Transaction& ledger, const TakeBack& command);

} // namespace rw::desk
