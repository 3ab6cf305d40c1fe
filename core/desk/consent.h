// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <optional>
#include <string>
#include <vector>

namespace rw::desk {

struct Agree {
    JobId job;
    std::string agreedBy; ///< "" for the customer; at most 200 characters
    std::string words;    ///< at most 2000 characters
    By by;
};
/// Keeps the informed yes to the job's highest pull. WrongState unless the job is still to be strung; ImpossibleValue
/// when its pulls keep to the marked maximum. Agreed to twice is agreed to once.
[[nodiscard]] Result<Consent> agreeAboveMarked(Transaction& ledger, const Agree& command);

/// What somebody said yes to while the racket was taken in; see Agree.
struct InformedYes {
    std::string agreedBy;
    std::string words;
};
/// Keeps the yes with a job that is just being logged; nothing when its pulls keep to the marked maximum. TooLong,
/// Unreadable {name, words}.
[[nodiscard]] Result<void> keepYes(Transaction& ledger, const Job& job, const FrameModel& frame, const InformedYes& yes,
                                   const By& by);

/// Sets JobLine::notAgreed on each of the lines.
void noteNotAgreed(Transaction& ledger, std::vector<JobLine>& lines);

/// The newest yes of a job that covers `pull`.
[[nodiscard]] std::optional<Consent> consentTo(Transaction& ledger, JobId job, const Tension& pull);

} // namespace rw::desk
