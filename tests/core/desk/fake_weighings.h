// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/desk/fake_rows.h"

namespace rw::desk::test {

class FakeWeighings final : public Weighings {
public:
    explicit FakeWeighings(Rows& rows)
        : m_rows(rows) {}
    void setSpoolWeight(LotId lot, SpoolWeight what, const ScaleReading& reading, const By& by) override;
    SpoolWeights spoolWeights(LotId lot) override;
    std::optional<KnownSpool> spoolLike(LotId lot) override;
    WeighingId add(const KeptWeighing& weighing) override;
    std::optional<KeptWeighing> get(WeighingId id) override;
    std::vector<KeptWeighing> ofLot(LotId lot) override;
    std::vector<KeptWeighing> ofStockTake(StockTakeId stockTake) override;
    std::vector<LotReading> readingsOf(StringArticleId article) override;
    void book(WeighingId weighing, MovementId movement) override;
    StockTakeId startStockTake(const By& by) override;
    std::optional<StockTake> stockTake(StockTakeId id) override;
    std::optional<StockTake> stockTakeGoingOn() override;
    void endStockTake(StockTakeId id, const By& by) override;

private:
    [[nodiscard]] KeptWeighing withBooking(KeptWeighing weighing) const;
    Rows& m_rows;
};

} // namespace rw::desk::test
