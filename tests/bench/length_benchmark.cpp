// SPDX-License-Identifier: GPL-3.0-or-later
// What a cut plan costs: it is computed while someone types at the counter. The aim is at most 0.5 ms a job with 50
// observations a piece, and nothing left on the heap from one plan to the next ("kept" below).
#include "core/exchange/cut_json.h"
#include "core/length/cut_plan.h"

#include <benchmark/benchmark.h>

#include <atomic>
#include <cstdlib>
#include <limits>
#include <new>

namespace {
std::atomic<std::int64_t> g_alive{0};
std::atomic<std::int64_t> g_made{0};
} // namespace

void* operator new(std::size_t size) {
    ++g_alive;
    ++g_made;
    if (void* room = std::malloc(size)) {
        return room;
    }
    throw std::bad_alloc();
}
void operator delete(void* room) noexcept {
    g_alive -= room == nullptr ? 0 : 1;
    std::free(room);
}
void operator delete(void* room, std::size_t) noexcept { operator delete(room); }

namespace {

using namespace rw;
using namespace rw::length;

void plan(benchmark::State& state, const CutRequest& request) {
    (void)planCut(request);
    const std::int64_t alive = g_alive;
    const std::int64_t made = g_made;
    for (auto unused : state) {
        auto result = planCut(request);
        benchmark::DoNotOptimize(result);
    }
    state.counters["kept"] = static_cast<double>(g_alive - alive);
    state.counters["allocations"] =
        benchmark::Counter(static_cast<double>(g_made - made), benchmark::Counter::kAvgIterations);
}

CutRequest costly(Sport sport) {
    CutRequest request = defaultRequest(sport);
    request.costPerMetre = 0.9;
    request.spoiledJobCost = 25;
    return request;
}

CutRequest refused() {
    CutRequest request = defaultRequest(Sport::Tennis);
    request.method = Method::OnePiece;
    request.route = "plain-2";
    request.pattern.mainsStart = HoopEnd::Throat;
    return request;
}

CutRequest marked() {
    CutRequest request = costly(Sport::Tennis);
    request.hoop.lengthMm = 340;
    request.hoop.widthMm = 260;
    request.hoop.headAreaCm2 = 700;
    return request;
}

/// Fifty observations of every piece, no two alike: tails measured, told in words, enough, short.
CutRequest learned(Sport sport, Method method) {
    CutRequest request = costly(sport);
    request.method = method;
    constexpr double kInfinity = std::numeric_limits<double>::infinity();
    const auto add = [](Learnt& learnt) {
        for (int i = 0; i < 50; ++i) {
            const double r = 0.02 + 0.0006 * i;
            const Observation kinds[] = {{r, r}, {r - 0.01, r + 0.01}, {-kInfinity, r + 0.03}, {r - 0.03, kInfinity}};
            learnt.seen.push_back(kinds[i % 4]);
        }
    };
    for (Learnt* learnt : {&request.experience.mains, &request.experience.crosses, &request.experience.whole,
                           &request.experience.shortSide}) {
        add(*learnt);
    }
    return request;
}

BENCHMARK_CAPTURE(plan, two_pieces_learned, learned(Sport::Tennis, Method::TwoPiece))->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(plan, one_piece_learned, learned(Sport::Tennis, Method::OnePiece))->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(plan, two_pieces, costly(Sport::Tennis))->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(plan, one_piece, costly(Sport::Squash))->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(plan, fitted_to_the_mark, marked())->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(plan, route_refused, refused())->Unit(benchmark::kMicrosecond);

void throughJson(benchmark::State& state) {
    constexpr std::string_view kRequest = R"({"sport": "squash", "hoop": {"openThroat": true}})";
    for (auto unused : state) {
        const auto request = exchange::cutRequestFromJson(kRequest).value();
        benchmark::DoNotOptimize(exchange::cutPlanToJson(planCut(request).value(), request));
    }
}
BENCHMARK(throughJson)->Unit(benchmark::kMicrosecond);

} // namespace

BENCHMARK_MAIN();
