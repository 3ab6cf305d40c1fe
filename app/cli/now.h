// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/result.h"
#include "core/desk/port/ledger.h"

#include <optional>
#include <string>

namespace rw::cli {

/// What to take for now in this shop: what was given behind --now, else what the computer says. As parseMoment.
[[nodiscard]] Result<Instant> nowIn(desk::Transaction& ledger, const std::optional<std::string>& given);

} // namespace rw::cli
