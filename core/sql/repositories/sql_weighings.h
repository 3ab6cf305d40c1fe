// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/weighings.h"
#include "core/sql/connection.h"

namespace rw::sql {

/// desk::Weighings over the open transaction of a connection, which must outlive it.
class SqlWeighings final : public desk::Weighings {
public:
    explicit SqlWeighings(Connection& connection)
        : m_connection(connection) {}

    void setSpoolWeight(LotId lot, SpoolWeight what, const ScaleReading& reading, const By& by) override;
    [[nodiscard]] SpoolWeights spoolWeights(LotId lot) override;
    [[nodiscard]] std::optional<KnownSpool> spoolLike(LotId lot) override;
    WeighingId add(const KeptWeighing& weighing) override;
    [[nodiscard]] std::optional<KeptWeighing> get(WeighingId id) override;
    [[nodiscard]] std::vector<KeptWeighing> ofLot(LotId lot) override;
    [[nodiscard]] std::vector<KeptWeighing> ofStockTake(StockTakeId stockTake) override;
    [[nodiscard]] std::vector<LotReading> readingsOf(StringArticleId article) override;
    void book(WeighingId weighing, MovementId movement) override;
    StockTakeId startStockTake(const By& by) override;
    [[nodiscard]] std::optional<StockTake> stockTake(StockTakeId id) override;
    [[nodiscard]] std::optional<StockTake> stockTakeGoingOn() override;
    void endStockTake(StockTakeId id, const By& by) override;

private:
    Connection& m_connection;
};

} // namespace rw::sql
