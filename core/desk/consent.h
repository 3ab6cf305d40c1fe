// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <string>

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

/// The newest yes of a job that covers `pull`.
[[nodiscard]] std::optional<Consent> consentTo(Transaction& ledger, JobId job, const Tension& pull);

} // namespace rw::desk
