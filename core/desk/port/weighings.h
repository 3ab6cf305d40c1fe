// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stock/stock_take.h"

#include <optional>
#include <vector>

namespace rw::desk {

/// What was put on a scale. All of it is only ever added.
class Weighings {
public:
    virtual ~Weighings() = default;
    virtual void setSpoolWeight(LotId lot, SpoolWeight what, const ScaleReading& reading, const By& by) = 0;
    [[nodiscard]] virtual SpoolWeights spoolWeights(LotId lot) = 0; ///< the newest of each
    /// A lot of the same string and nominal length whose spool was weighed: the last one that was.
    struct KnownSpool {
        LotId lot;
        ScaleReading empty;
    };
    [[nodiscard]] virtual std::optional<KnownSpool> spoolLike(LotId lot) = 0;

    virtual WeighingId add(const KeptWeighing& weighing) = 0;
    [[nodiscard]] virtual std::optional<KeptWeighing> get(WeighingId id) = 0;
    [[nodiscard]] virtual std::vector<KeptWeighing> ofLot(LotId lot) = 0;                   ///< oldest first
    [[nodiscard]] virtual std::vector<KeptWeighing> ofStockTake(StockTakeId stockTake) = 0; ///< oldest first
    /// Every time that a lot of the string stood on a scale, by lot and then oldest first; when new, which was when it
    /// came, whenever that was written down.
    struct LotReading {
        LotId lot;
        ScaleReading gross;
        Instant at;
    };
    [[nodiscard]] virtual std::vector<LotReading> readingsOf(StringArticleId article) = 0;
    /// Says by which weighing a movement "weighed" of its lot was booked; of another it is a LedgerGuard.
    virtual void book(WeighingId weighing, MovementId movement) = 0;

    /// LedgerGuard while another one goes on.
    virtual StockTakeId startStockTake(const By& by) = 0;
    [[nodiscard]] virtual std::optional<StockTake> stockTake(StockTakeId id) = 0;
    [[nodiscard]] virtual std::optional<StockTake> stockTakeGoingOn() = 0;
    /// One that goes on.
    virtual void endStockTake(StockTakeId id, const By& by) = 0;
};

} // namespace rw::desk
