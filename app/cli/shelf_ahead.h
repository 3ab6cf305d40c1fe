// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/command_line.h"
#include "app/cli/shop_ledger.h"
#include "core/desk/running_short.h"

#include <vector>

namespace rw::cli {

/// Every string of the ledger behind --ledger, with what will become of it, at the moment behind --now.
[[nodiscard]] Result<std::vector<desk::ShelfString>> shelfAheadOf(ShopLedger& shop, const Given& given);

} // namespace rw::cli
