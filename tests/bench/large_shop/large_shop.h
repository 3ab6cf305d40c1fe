// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sql/connection.h"

#include <cstdint>

namespace rw::large {

/// How much has gone through a shop: as many customers and jobs, all strung, paid and collected.
struct Size {
    std::int64_t customers;
    std::int64_t jobs;
};

/// Puts the past of a large shop behind the demo shop that the ledger holds, by bulk statements with its guards laid
/// aside; the same size is the same past. The names are invented, two words each, some of them common and most of them
/// rare; a few are written with accents. The ledger is whole afterwards, as `check` sees it.
void fillWithThePast(sql::Connection& connection, const Size& size);

} // namespace rw::large
