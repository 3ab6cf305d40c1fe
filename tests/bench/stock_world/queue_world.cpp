// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/stock_world/queue_world.h"

#include "core/stock/cut_queue.h"
#include "tests/bench/stock_world/cutting_world.h"

#include <algorithm>
#include <cmath>
#include <ctime>
#include <numeric>
#include <vector>

namespace rw::world {

namespace {
using namespace std::chrono_literals;

struct Queue {
    std::vector<stock::QueueLot> lots;
    std::vector<stock::QueuePiece> pieces;
};

Length somewhatShorter(Length length, int stepMm, Dice& dice) {
    const int steps = 50 / stepMm;
    return length - Length::fromMillimetres(stepMm * dice.wholeWithin(0, steps - 1));
}

Queue nextQueue(const QueueSize& size, Dice& dice) {
    Queue queue;
    const auto wanted = static_cast<std::size_t>(dice.wholeWithin(size.fewestPieces, size.mostPieces));
    Length all = Length::fromMillimetres(0);
    std::int64_t jobs = 0;
    while (queue.pieces.size() < wanted) {
        const auto job = JobId::of(++jobs);
        for (const Length piece : nextJob(Work::Mixed, dice)) {
            if (queue.pieces.size() < wanted) {
                queue.pieces.push_back({somewhatShorter(piece, size.stepMm, dice), job, std::nullopt});
                all += queue.pieces.back().length;
            }
        }
    }
    const int lots = dice.wholeWithin(size.fewestLots, size.mostLots);
    const auto fullReels = static_cast<int>(1 + all.millimetres() / 180'000); // enough for all of it
    for (int i = 0; i < lots; ++i) {
        const bool full = i >= lots - fullReels;
        const double metres = full ? 180 + 20 * dice.uniform() : 5 + 40 * dice.uniform();
        const Length length = Length::fromMillimetres(std::llround(metres * 20) * 50);
        queue.lots.push_back({{.length = somewhatShorter(length, size.stepMm, dice)}, std::nullopt, std::nullopt});
    }
    return queue;
}

stock::RemnantValue valueOfMixedWork(bool wholeJobs, Dice& dice) {
    std::vector<Length> cuts;
    while (cuts.size() < 200) {
        const std::vector<Length> pieces = nextJob(Work::Mixed, dice);
        if (wholeJobs) {
            cuts.push_back(std::accumulate(pieces.begin(), pieces.end(), Length::fromMillimetres(0)));
        } else {
            cuts.insert(cuts.end(), pieces.begin(), pieces.end());
        }
    }
    return {stock::mixOfString(cuts, stock::mixOfFirstDay(cuts)), Length::fromMillimetres(5'000)};
}
} // namespace

QueueResult runQueues(const QueueSize& size, int queues, std::uint64_t seed) {
    Dice dice(seed);
    const stock::RemnantValue value = valueOfMixedWork(size.sameReel, dice);
    QueueResult result;
    std::vector<double> ms;
    for (int i = 0; i < queues; ++i) {
        const Queue queue = nextQueue(size, dice);
        const auto plan = [&](std::chrono::milliseconds limit) {
            return stock::planQueue(queue.lots, queue.pieces, value, {.sameReel = size.sameReel, .limit = limit});
        };
        const std::clock_t start = std::clock();
        const stock::QueuePlan best = plan(6s);
        const double took = 1'000.0 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
        ms.push_back(took);
        result.provenInTwoSeconds += best.proven && took < 2'000 ? 1 : 0;
        result.provenInHalfASecond += best.proven && took < 500 ? 1 : 0;
        constexpr double kAsGoodMm = 0.001;
        const bool asGood = took < 50 || plan(50ms).lostMm < best.lostMm + kAsGoodMm;
        result.bestAfterFiftyMs += asGood ? 1 : 0;
    }
    std::ranges::sort(ms);
    result.medianMs = ms[ms.size() / 2];
    result.worstMs = ms.back();
    return result;
}

} // namespace rw::world
