// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <optional>

namespace rw::desk {

/// The newest moment of what was logged and is still here, strung or paid, where it lies more than a day after `now`:
/// the clock was set back, or was wrong when that was written. A day, because neither a time zone nor a clock that runs
/// a little fast makes so much.
[[nodiscard]] Result<std::optional<Instant>> momentAhead(Transaction& ledger, Instant now);

} // namespace rw::desk
