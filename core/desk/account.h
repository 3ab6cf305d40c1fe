// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

namespace rw::desk {

/// What a person owes for rackets that have left the shop, less what was paid for jobs that were withdrawn; negative:
/// what is in their favour.
[[nodiscard]] Result<Money> accountOf(Transaction& ledger, CustomerId customer);

} // namespace rw::desk
