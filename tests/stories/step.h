// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"
#include "core/jobs/job.h"
#include "tests/stories/harbour_lane.h"

#include <string>
#include <string_view>

namespace rw::stories {

/// One command of a working day as the journal of the day has it: enough to give the command a second time.
struct Step {
    enum class Kind { Receive, Log, Take, Cut, Lose, Finish, Collect };
    Kind kind;
    std::string key;        ///< the request key of the job, or the tag of the lot
    std::string what = "-"; ///< of a new lot, the string's code; of a new job, "whole" or "hybrid"
    PieceRole role = PieceRole::Whole;
    int attempt = 1;
    Length length = mm(0);
    LostReason lost = LostReason::CameShort;

    /// One line without its end, and back.
    [[nodiscard]] std::string text() const;
    [[nodiscard]] static Step parse(std::string_view line);
};

/// Gives the command: one use case, one transaction. The shop must have been settled, with Petra Lindobi's
/// Aldermoor 98.
[[nodiscard]] Result<void> perform(desk::Ledger& ledger, const Step& step);

/// The job logged under a request key.
[[nodiscard]] Job jobOf(desk::Transaction& ledger, const std::string& key);

} // namespace rw::stories
