// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

namespace rw::desk {

/// The list as it is kept: names of extras without space around them. What addPriceList() refuses of lines.
[[nodiscard]] Result<PriceList> soundPrices(Transaction& ledger, const PriceList& wanted);

} // namespace rw::desk
