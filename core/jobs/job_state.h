// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <optional>
#include <string_view>

namespace rw {

enum class JobState { Logged, OnTheMachine, Strung, Collected, Waiting, Withdrawn };

/// What happened to a job. Its state follows from these and nothing else.
enum class JobEventKind {
    Logged,
    Taken,
    PutDown,
    Cut,
    Lost,
    Strung,
    Reopened,
    Collected,
    BroughtBack, ///< handed over by mistake, and on the rack again
    Waiting,
    Resumed,
    Withdrawn
};

[[nodiscard]] std::string_view jobStateText(JobState state); ///< "logged", "on-the-machine", ...
[[nodiscard]] std::optional<JobState> jobStateFromText(std::string_view text);
[[nodiscard]] std::string_view jobEventKindText(JobEventKind kind); ///< "logged", "taken", "put-down", ...
[[nodiscard]] std::optional<JobEventKind> jobEventKindFromText(std::string_view text);

/// The state after `kind` happened in `state` (nothing: the job is new). WrongState {state, wanted} when it cannot.
/// The ledger holds the same table (job_transition) and refuses what is not in it; a test compares the two.
[[nodiscard]] Result<JobState> stateAfter(std::optional<JobState> state, JobEventKind kind);

} // namespace rw
