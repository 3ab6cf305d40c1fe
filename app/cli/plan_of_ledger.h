// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/command.h"

namespace rw::cli {

/// The queue of a ledger as it is planned, string by string, with the reasons.
[[nodiscard]] Result<Answer> planOfLedger(const Given& given);

} // namespace rw::cli
