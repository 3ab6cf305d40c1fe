// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/desk/fake_weighings.h"

#include "core/base/world_error.h"

#include <tuple>

namespace rw::desk::test {

void FakeWeighings::setSpoolWeight(LotId lot, SpoolWeight what, const ScaleReading& reading, const By&) {
    m_rows.spoolWeights.push_back({lot, what, reading});
}

SpoolWeights FakeWeighings::spoolWeights(LotId lot) {
    SpoolWeights weights;
    for (const Rows::KnownWeight& known : m_rows.spoolWeights) {
        if (known.lot == lot) {
            (known.what == SpoolWeight::Empty ? weights.empty : weights.fresh) = known.reading;
        }
    }
    return weights;
}

std::optional<Weighings::KnownSpool> FakeWeighings::spoolLike(LotId id) {
    const Lot& lot = *rowOf(m_rows.lots, id);
    std::optional<KnownSpool> found;
    for (const Rows::KnownWeight& known : m_rows.spoolWeights) {
        const Lot& other = *rowOf(m_rows.lots, known.lot);
        if (known.what == SpoolWeight::Empty && known.lot != id && other.kind == LotKind::Reel &&
            other.article == lot.article && other.nominal == lot.nominal) {
            found = KnownSpool{known.lot, known.reading};
        }
    }
    return found;
}

WeighingId FakeWeighings::add(const KeptWeighing& weighing) {
    m_rows.weighings.push_back(weighing);
    m_rows.weighings.back().id = m_rows.next<WeighingId>();
    return *m_rows.weighings.back().id;
}

KeptWeighing FakeWeighings::withBooking(KeptWeighing weighing) const {
    for (const auto& [movement, by] : m_rows.weighedMovements) {
        const bool takenBack =
            std::ranges::find(m_rows.movements, std::optional(movement), &Movement::corrects) != m_rows.movements.end();
        if (by == weighing.id && !takenBack) {
            weighing.booked = movement;
        }
    }
    return weighing;
}

std::optional<KeptWeighing> FakeWeighings::get(WeighingId id) {
    const auto found = copyOf(m_rows.weighings, id);
    return found ? std::optional(withBooking(*found)) : std::nullopt;
}

std::vector<KeptWeighing> FakeWeighings::ofLot(LotId lot) {
    std::vector<KeptWeighing> found;
    for (const KeptWeighing& weighing : m_rows.weighings) {
        if (weighing.lot == lot) {
            found.push_back(withBooking(weighing));
        }
    }
    return found;
}

std::vector<KeptWeighing> FakeWeighings::ofStockTake(StockTakeId stockTake) {
    std::vector<KeptWeighing> found;
    for (const KeptWeighing& weighing : m_rows.weighings) {
        if (weighing.stockTake == stockTake) {
            found.push_back(withBooking(weighing));
        }
    }
    return found;
}

std::vector<Weighings::LotReading> FakeWeighings::readingsOf(StringArticleId article) {
    std::vector<LotReading> readings;
    for (const Lot& lot : m_rows.lots) {
        if (const auto fresh = spoolWeights(*lot.id).fresh) {
            readings.push_back({*lot.id, *fresh, lot.received});
        }
    }
    for (const KeptWeighing& weighing : m_rows.weighings) {
        readings.push_back({weighing.lot, weighing.gross, weighing.by.at});
    }
    std::erase_if(readings,
                  [&](const LotReading& reading) { return rowOf(m_rows.lots, reading.lot)->article != article; });
    std::ranges::stable_sort(readings, {},
                             [](const LotReading& reading) { return std::tuple(reading.lot, reading.at); });
    return readings;
}

void FakeWeighings::book(WeighingId weighing, MovementId movement) {
    const Movement& moved = *rowOf(m_rows.movements, movement);
    if (moved.reason != MovementReason::Weighed || moved.lot != rowOf(m_rows.weighings, weighing)->lot) {
        throw LedgerGuard("a weighing of another lot");
    }
    m_rows.weighedMovements.emplace_back(movement, weighing);
}

StockTakeId FakeWeighings::startStockTake(const By& by) {
    if (stockTakeGoingOn()) {
        throw LedgerGuard("a stock-take goes on");
    }
    m_rows.stockTakes.push_back({m_rows.next<StockTakeId>(), by, std::nullopt, std::nullopt});
    return m_rows.stockTakes.back().id;
}

std::optional<StockTake> FakeWeighings::stockTake(StockTakeId id) {
    const auto found = std::ranges::find(m_rows.stockTakes, id, &StockTake::id);
    return found == m_rows.stockTakes.end() ? std::nullopt : std::optional(*found);
}

std::optional<StockTake> FakeWeighings::stockTakeGoingOn() {
    const auto found = std::ranges::find_if(m_rows.stockTakes, &StockTake::isGoingOn);
    return found == m_rows.stockTakes.end() ? std::nullopt : std::optional(*found);
}

void FakeWeighings::endStockTake(StockTakeId id, const By& by) {
    const auto found = std::ranges::find(m_rows.stockTakes, id, &StockTake::id);
    found->ended = by.at;
    found->endedBy = by.staff;
}

} // namespace rw::desk::test
