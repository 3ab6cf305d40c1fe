// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <optional>

namespace rw::desk {

struct SetEndAside {
    JobId job;
    PieceRole role;
    int attempt;     ///< the number the card showed; an older one is StaleAttempt
    LotId lot;       ///< the one that was measured
    Length measured; ///< what the tape says is there: >= 0, less than `wanted`
    Length wanted;   ///< what was to be cut
    By by;
};
struct EndSetAside {
    Job job;
    Lot end;                 ///< a remnant now; closed when nothing was left
    std::optional<Lot> next; ///< what the piece is cut from instead; nothing: no open lot holds it
};
/// An end that was measured and is too short for the piece that was planned on it: the book is corrected, the end is
/// kept as a remnant for somebody's shorter piece, and this one is planned off another lot. Said twice it is said once.
/// StaleAttempt, AlreadyCut, LotClosed, WrongLot, WrongState unless on the machine, OutOfRange, ImpossibleValue (it is
/// long enough).
[[nodiscard]] Result<EndSetAside> setEndAside(Transaction& ledger, const SetEndAside& command);

} // namespace rw::desk
