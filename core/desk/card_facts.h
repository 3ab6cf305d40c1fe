// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/bench.h"

// What a job card says beside the racket and its string: what was agreed, what changed, and who has it.
namespace rw::desk {

/// Nothing when the job's pulls keep to the frame's marked maximum, or none is marked.
[[nodiscard]] std::optional<CardAbove> cardAbove(Transaction& ledger, const Job& job, const FrameModel& frame);
/// All changes to which the bench has not nodded, as one: from what was asked before the first of them.
[[nodiscard]] std::optional<CardChange> cardChange(Transaction& ledger, const Job& job);
/// Of a job that is on a machine or was put down; nothing before it was first taken and once it is strung.
[[nodiscard]] std::optional<CardHands> cardHands(Transaction& ledger, const Job& job);

/// "" for somebody who is not known.
[[nodiscard]] std::string staffName(Transaction& ledger, StaffId id);

} // namespace rw::desk
