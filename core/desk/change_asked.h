// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <string>
#include <vector>

namespace rw::desk {

struct ChangeAsked {
    JobId job;
    TensionPair seen; ///< what the station showed
    TensionPair wanted;
    By by;
};
/// Changes the agreed tensions of a job that is still to be strung. ChangedMeanwhile {what, mine, theirs} when another
/// station has agreed on something else since; WrongState. Once the bench has begun (it lies on a machine, or a
/// piece is cut) the change waits for the bench to nod.
[[nodiscard]] Result<Job> changeAsked(Transaction& ledger, const ChangeAsked& command);

/// "52 lb / 50 lb", as a refusal names a pair.
[[nodiscard]] std::string pairText(const TensionPair& tensions);

/// Changes of the agreed tensions to which the bench has not nodded yet, oldest first.
[[nodiscard]] std::vector<AskedChange> changesToNodTo(Transaction& ledger, JobId job);
struct Nod {
    JobId job;
    By by;
};
/// The bench has seen every change so far.
[[nodiscard]] Result<Job> nodToChanges(Transaction& ledger, const Nod& command);

} // namespace rw::desk
