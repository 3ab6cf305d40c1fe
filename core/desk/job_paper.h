// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/bench.h"

#include <string>

namespace rw::desk {

/// What the papers of a job say: its card, and what the customer agreed to. Printed again it is the same job with the
/// same number, as it stands now.
struct JobPaper {
    JobCard card;
    std::string shop; ///< "" while nobody has named it
    Money paid;       ///< for the job in all
};
/// NotFound, and what jobCard() refuses.
[[nodiscard]] Result<JobPaper> jobPaper(Transaction& ledger, JobId job, const std::optional<MachineId>& machine);

} // namespace rw::desk
