// SPDX-License-Identifier: GPL-3.0-or-later
// What the stock rules reach in a simulated shop that does not care what they believe. One command, the same figures
// each time but for the milliseconds: build/tests/bench/stock_simulation [short] [cutting] [weighing] [planning]
// [ordering]. With no part named it does all; short is a tenth of it.
#include "core/stock/cut_queue.h"
#include "tests/bench/stock_world/cutting_run.h"
#include "tests/bench/stock_world/ordering_run.h"
#include "tests/bench/stock_world/queue_world.h"
#include "tests/bench/stock_world/weighing_world.h"

#include <algorithm>
#include <cstdio>
#include <map>
#include <set>
#include <string_view>

namespace {

using namespace rw;
using namespace rw::world;

constexpr std::uint64_t kSeed = 20'260'301;

Length mm(std::int64_t value) { return Length::fromMillimetres(value); }

/// How often each length is wanted, from as much work as nobody ever sees.
stock::PieceMix knownMix(const CuttingShop& shop) {
    Dice dice(shop.seed + 1);
    std::map<Length, double> counts;
    for (int i = 0; i < 100'000; ++i) {
        Length whole = mm(0);
        for (const Length piece : nextJob(shop.work, dice)) {
            whole += piece;
            counts[piece] += shop.bothOffOneReel ? 0 : 1;
        }
        counts[whole] += shop.bothOffOneReel ? 1 : 0;
    }
    std::vector<stock::PieceMix::Share> shares;
    for (const auto& [length, count] : counts) {
        shares.push_back({length, count});
    }
    return stock::PieceMix::of(std::move(shares));
}

void cuttingRow(const char* what, const CuttingShop& shop, Cutter& cutter) {
    const CuttingResult result = runCutting(shop, cutter);
    std::printf("  %-48s %6.2f %%   %6.1f   %8.1f\n", what, result.scrapPercent(), result.openReels,
                result.pastPer10000());
}

void cuttingRows(const char* what, const CuttingShop& shop, const FirstDay& firstDay) {
    std::printf("%s\n", what);
    cuttingRow("tail thrown away at the first misfit", shop, *oneReelAtATime());
    cuttingRow("best fit", shop, *bestFit());
    cuttingRow("remnant values, the mix known", shop, *remnantRule(knownMix(shop), shop.shortestUseful));
    cuttingRow("remnant values, the mix learned as it goes", shop, *remnantRule(firstDay));
}

void cutting(int jobs) {
    std::printf("Cutting, %d jobs                                        scrap   open reels   past what is there\n"
                "                                                                          in 10,000 cuts\n",
                jobs);
    const FirstDay pieces{{mm(6'100), mm(5'600), mm(6'100), mm(5'600), mm(11'000)}, mm(5'000)};
    const FirstDay wholeJobs{{mm(11'700), mm(11'700), mm(11'700), mm(6'100), mm(5'600), mm(11'000)}, mm(5'000)};
    const FirstDay onePiece{{mm(10'200)}, mm(9'000)};
    cuttingRows("mixed work, piece by piece (goal 0.30 %, 1.5 reels, 2 in 10,000)",
                {Work::Mixed, false, mm(5'000), jobs, kSeed}, pieces);
    cuttingRows("mixed work, both pieces off one reel (goal 0.35 %, 2)", {Work::Mixed, true, mm(5'000), jobs, kSeed},
                wholeJobs);
    cuttingRows("two pieces only, piece by piece", {Work::TwoPiecesOnly, false, mm(5'000), jobs, kSeed}, pieces);
    cuttingRows("one piece only (goal 0.60 %, 2)", {Work::OnePieceOnly, false, mm(9'000), jobs, kSeed}, onePiece);
}

void weighing(int reels) {
    const CoverageResult result = runWeighing(reels, kSeed);
    const auto percent = [&](int covered) { return 100.0 * covered / result.weighings; };
    std::printf("\nWeighing, %d reels: the 95 %% interval covers the truth (goal 93 to 97 %%)\n"
                "  against the new reel %.1f %%, by grams per metre %.1f %%\n",
                result.weighings, percent(result.coveredAgainstNew), percent(result.coveredByWeight));
}

void planning(int queues) {
    std::printf("\nPlanning, %d queues each    proven in 0.5 s   in 2 s   best after 50 ms   median     worst\n",
                queues);
    struct Row {
        const char* what;
        QueueSize size;
    };
    const Row rows[] = {
        {"4 to 30 pieces, 3 to 6 lots", {4, 30, 3, 6, 50, false}},
        {"30 pieces, 6 lots", {30, 30, 6, 6, 50, false}},
        {"30, to the centimetre", {30, 30, 6, 6, 10, false}},
        {"30, to the millimetre", {30, 30, 6, 6, 1, false}},
        {"50 jobs off one reel each", {85, 85, 6, 6, 50, true}},
        {"50 jobs piece by piece", {85, 85, 6, 6, 50, false}},
    };
    for (const Row& row : rows) {
        const QueueResult result = runQueues(row.size, queues, kSeed);
        std::printf("  %-28s %10d   %6d   %16d   %6.2f ms  %6.0f ms\n", row.what, result.provenInHalfASecond,
                    result.provenInTwoSeconds, result.bestAfterFiftyMs, result.medianMs, result.worstMs);
    }
}

void ordering(int shops) {
    std::printf("\nOrdering, 30 strings, 5 years, %d shops    no string   goal     stock beside it   parcels a year\n",
                shops);
    for (const double jobsPerMonth : {10.0, 40.0, 100.0, 200.0}) {
        const auto sum = [&](OrderRule rule) {
            OrderingResult total;
            for (int shop = 0; shop < shops; ++shop) {
                const auto one = runOrdering(rule, jobsPerMonth, kSeed + static_cast<std::uint64_t>(shop));
                total.jobs += one.jobs;
                total.without += one.without;
                total.stockMetres += one.stockMetres / shops;
                total.parcels += one.parcels / shops / 5;
            }
            return total;
        };
        const OrderingResult plain = sum(OrderRule::BelowTwoJobs);
        std::printf("%.0f jobs a month\n", jobsPerMonth);
        const auto row = [&](const char* what, const OrderingResult& result) {
            std::printf("  %-38s %6.2f %%   0.40 %%   %+12.0f %%   %12.1f\n", what, result.withoutPercent(),
                        100 * (result.stockMetres / plain.stockMetres - 1), result.parcels);
        };
        row("order below two jobs", plain);
        row("order point, a reel at a time", sum(OrderRule::ReelByReel));
        row("order point, each string alone", sum(OrderRule::OrderPointAlone));
        row("order point, one order together", sum(OrderRule::OrderPointTogether));
    }
}

} // namespace

int main(int argc, char** argv) {
    std::setvbuf(stdout, nullptr, _IOLBF, BUFSIZ);
    const std::set<std::string_view> words(argv + std::min(argc, 1), argv + argc);
    const int share = words.contains("short") ? 10 : 1;
    const bool everything = words.size() == (words.contains("short") ? 1U : 0U);
    const auto wanted = [&](std::string_view part) { return everything || words.contains(part); };
    if (wanted("cutting")) {
        cutting(60'000 / share);
    }
    if (wanted("weighing")) {
        weighing(100'000 / share);
    }
    if (wanted("planning")) {
        planning(600 / share);
    }
    if (wanted("ordering")) {
        ordering(std::max(1, 20 / share));
    }
}
