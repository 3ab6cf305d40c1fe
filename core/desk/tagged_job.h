// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/counter.h"

#include <optional>
#include <string_view>

// What a tag's number leads to, typed by hand or by a scanner.
namespace rw::desk {

struct TaggedJob {
    Job job;
    PersonFound person; ///< the racket is one of theirs
    /// Still here: logged, on a machine, waiting, or on the rack.
    [[nodiscard]] bool isInTheShop() const {
        return job.state != JobState::Collected && job.state != JobState::Withdrawn;
    }
    [[nodiscard]] const RacketSummary& racket() const;
};

/// The job whose number the text is, and nothing else: digits without a leading zero. Nothing for any other text, for a
/// number that no job has, and for a job of somebody who was removed.
[[nodiscard]] Result<std::optional<TaggedJob>> jobByTag(Transaction& ledger, std::string_view text);

} // namespace rw::desk
