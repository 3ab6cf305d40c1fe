// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/shop_ledger.h"
#include "core/desk/bench.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace rw::cli {

/// What a station sees when something has just been done there.
struct Scene {
    Instant at;
    QString station; ///< "Counter"
    QString did;     ///< "Petra Lindobi brings a racket"
    QStringList sees;
};

struct Day {
    std::vector<Scene> scenes;
    desk::JobCard card; ///< as it lay at the machine before the cut
};

/// Stocks the demo shop into an empty ledger and plays one racket through it, from the counter to the rack, beginning
/// at `start`. Every step is the use case that the desktop calls. Refusals are those of the use cases.
[[nodiscard]] Result<Day> playDay(ShopLedger& shop, Instant start);

} // namespace rw::cli
