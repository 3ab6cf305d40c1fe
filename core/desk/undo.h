// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <optional>

// Taking back the last thing done, as new entries that correct the old ones: what was believed meanwhile stays a fact.
namespace rw::desk {

struct BringBack {
    JobId job;
    By by;
};
/// A racket that was handed over by mistake hangs on the rack again, and what was paid at that hand-over is taken back.
/// WrongState unless collected; NotFound when its owner was removed since; brought back already it stays so.
[[nodiscard]] Result<Job> bringBack(Transaction& ledger, const BringBack& command);

struct Reopen {
    JobId job;
    By by;
};
/// A job that was finished by mistake lies on its machine again. WrongState unless strung; reopened
/// already it stays so.
[[nodiscard]] Result<Job> reopenJob(Transaction& ledger, const Reopen& command);

struct TakeBackCut {
    JobId job;
    PieceRole role;
    int attempt; ///< the one that was confirmed and never cut
    By by;
};
/// The length is on its lot again, and the piece waits for its next attempt with the cut that was planned. NotCut,
/// StaleAttempt, WrongState unless on the machine; taken back already it stays so. A lot that the cut used up is open
/// again; LotClosed when it was thrown away or given back since.
[[nodiscard]] Result<Job> takeBackCut(Transaction& ledger, const TakeBackCut& command);

/// The last thing the bench did to a job that can be taken back.
struct LastDone {
    Job job;
    std::optional<PieceRole> cut; ///< the piece that was cut last; nothing: the job was finished
};
/// Nothing when there is none: the job lies on no machine, and is not strung and still here; or it lies there uncut.
[[nodiscard]] Result<std::optional<LastDone>> lastDone(Transaction& ledger, JobId job);

} // namespace rw::desk
