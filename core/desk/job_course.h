// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <string>
#include <vector>

// A job that does not go straight on: it waits for something, goes on, or is withdrawn.
namespace rw::desk {

/// Jobs that are in the shop and not strung yet: logged, on a machine or waiting, by promise.
[[nodiscard]] Result<std::vector<JobLine>> toBeStrung(Transaction& ledger);

struct LetWait {
    JobId job;
    std::string whatFor; ///< kept with the job's notes
    By by;
};
/// WrongState unless logged or on a machine; Missing and TooLong {reason}. Its string stays promised. Said again of a
/// job that waits, the words that were kept last are not kept twice.
[[nodiscard]] Result<Job> letJobWait(Transaction& ledger, const LetWait& command);

struct JobStep {
    JobId job;
    By by;
};
/// A job that waits or was withdrawn goes on where it was logged. WrongState; NotFound when its owner was removed since; one that is logged goes on already. The
/// uncut string of a withdrawn one is promised anew, off the lot that is best for it now unless somebody pinned one.
[[nodiscard]] Result<Job> resumeJob(Transaction& ledger, const JobStep& command);
/// The job will not be done; the string that was promised to it is free again, what was cut is used. WrongState once it
/// is strung. Done twice it is done once.
[[nodiscard]] Result<Job> withdrawJob(Transaction& ledger, const JobStep& command);

} // namespace rw::desk
