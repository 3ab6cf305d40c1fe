// SPDX-License-Identifier: GPL-3.0-or-later
// What the stock rules cost, against lots, pieces and years of history: where to cut is asked at the counter while
// somebody types, the forecast of every string when the Stockroom opens.
#include "core/exchange/forecast_json.h"
#include "core/stock/cut_queue.h"
#include "core/stock/order_point.h"
#include "tests/bench/stock_world/cutting_world.h"

#include <benchmark/benchmark.h>

namespace {

using namespace rw;

std::vector<Length> someCuts(std::size_t count) {
    world::Dice dice(1);
    std::vector<Length> cuts;
    while (cuts.size() < count) {
        for (const Length piece : world::nextJob(world::Work::Mixed, dice)) {
            cuts.push_back(piece);
        }
    }
    cuts.resize(count, cuts.front());
    return cuts;
}

stock::PieceMix mixOf(std::size_t cuts) {
    const auto seen = someCuts(cuts);
    return stock::mixOfString(seen, stock::mixOfFirstDay(seen));
}

const stock::RemnantValue& value() {
    static const stock::RemnantValue kValue(mixOf(200), Length::fromMillimetres(5'000));
    return kValue;
}

/// One nearly full reel, and ends.
std::vector<stock::CutSource> someLots(std::int64_t count) {
    world::Dice dice(2);
    std::vector<stock::CutSource> lots{{.length = Length::fromMillimetres(1'000'000)}};
    while (static_cast<std::int64_t>(lots.size()) < count) {
        lots.push_back({.length = Length::fromMillimetres(50 * dice.wholeWithin(100, 900))});
    }
    return lots;
}

void remnantValues(benchmark::State& state) {
    const stock::PieceMix mix = mixOf(static_cast<std::size_t>(state.range(0)));
    for (auto unused : state) {
        benchmark::DoNotOptimize(stock::RemnantValue(mix, Length::fromMillimetres(5'000)));
    }
}
BENCHMARK(remnantValues)->ArgName("cuts")->Arg(1)->Arg(20)->Arg(200)->Unit(benchmark::kMillisecond);

void nextCut(benchmark::State& state) {
    const auto lots = someLots(state.range(0));
    for (auto unused : state) {
        benchmark::DoNotOptimize(stock::nextCut(lots, Length::fromMillimetres(6'100), value()));
    }
}
BENCHMARK(nextCut)->ArgName("lots")->RangeMultiplier(4)->Range(2, 512)->Unit(benchmark::kMicrosecond);

void planQueue(benchmark::State& state) {
    std::vector<stock::QueueLot> lots;
    for (const stock::CutSource& lot : someLots(state.range(1))) {
        lots.push_back({lot, std::nullopt, std::nullopt});
    }
    std::vector<stock::QueuePiece> pieces;
    for (const Length cut : someCuts(static_cast<std::size_t>(state.range(0)))) {
        pieces.push_back({cut, JobId::of(static_cast<std::int64_t>(pieces.size())), std::nullopt});
    }
    int proven = 0;
    for (auto unused : state) {
        proven += stock::planQueue(lots, pieces, value()).proven ? 1 : 0;
    }
    state.counters["proven"] = proven / static_cast<double>(state.iterations());
}
BENCHMARK(planQueue)
    ->ArgNames({"pieces", "lots"})
    ->ArgsProduct({{2, 8, 30, 100}, {2, 6, 12, 24}})
    ->Unit(benchmark::kMillisecond);

stock::Demand demandAfter(std::int64_t years) {
    world::Dice dice(3);
    stock::Demand demand = stock::Demand::likeOthers(0.1);
    for (std::int64_t day = 0; day < 365 * years; ++day) {
        demand.addDay(dice.poisson(0.2));
    }
    return demand;
}

void demandOfHistory(benchmark::State& state) {
    world::Dice dice(3);
    std::vector<double> days;
    for (std::int64_t day = 0; day < 365 * state.range(0); ++day) {
        days.push_back(dice.poisson(0.2));
    }
    for (auto unused : state) {
        stock::Demand demand = stock::Demand::likeOthers(0.1);
        for (const double jobs : days) {
            demand.addDay(jobs);
        }
        benchmark::DoNotOptimize(demand);
    }
}
BENCHMARK(demandOfHistory)->ArgName("years")->Arg(1)->Arg(5)->Arg(20)->Unit(benchmark::kMicrosecond);

void orderPoint(benchmark::State& state) {
    const stock::Demand demand = demandAfter(5);
    std::vector<double> seen;
    for (std::int64_t i = 0; i < state.range(0); ++i) {
        seen.push_back(static_cast<double>(3 + i % 8));
    }
    const stock::LeadTimes leadTimes(seen);
    for (auto unused : state) {
        benchmark::DoNotOptimize(stock::jobsUntilDelivery(demand, leadTimes, {.dailyRatio = 1.2}));
    }
}
BENCHMARK(orderPoint)->ArgName("deliveries")->Arg(0)->Arg(8)->Arg(200)->Unit(benchmark::kMicrosecond);

void runOut(benchmark::State& state) {
    const stock::Demand demand = demandAfter(5);
    for (auto unused : state) {
        benchmark::DoNotOptimize(stock::runOutDay(demand, static_cast<int>(state.range(0)), 0.1));
    }
}
BENCHMARK(runOut)->ArgName("jobsLeft")->Arg(0)->Arg(5)->Arg(50)->Unit(benchmark::kMicrosecond);

void forecastThroughJson(benchmark::State& state) {
    constexpr std::string_view kRequest = R"({"history": [{"date": "2025-01-05", "jobs": 2},
        {"date": "2025-11-19", "jobs": 1}], "today": "2026-03-02", "leadTimes": [4, 6, 11], "jobsLeft": 7})";
    for (auto unused : state) {
        const auto request = exchange::forecastRequestFromJson(kRequest).value();
        benchmark::DoNotOptimize(exchange::forecastToJson(exchange::forecastOf(request)));
    }
}
BENCHMARK(forecastThroughJson)->Unit(benchmark::kMicrosecond);

} // namespace

BENCHMARK_MAIN();
