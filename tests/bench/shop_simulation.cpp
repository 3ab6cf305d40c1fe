// SPDX-License-Identifier: GPL-3.0-or-later
// How much too long a shop cuts that goes by the length model, and how often it comes short: two thousand jobs over
// sixty frames, in worlds that are as the model thinks and in worlds that are not. Seeds are fixed; run it with
//   cmake --build build --target shop_simulation && build/tests/bench/shop_simulation
#include "tests/bench/simulated_shop.h"

#include <cstdio>

using namespace rw;
using namespace rw::bench;

namespace {
constexpr Truth kAsTheModelThinks{"as the model thinks", 0, 0};
constexpr Truth kThreePercentOff{"3 % off, heavier tails", 0.03, 5};
constexpr Truth kSixPercentOff{"6 % off, heavier tails", 0.06, 5};
constexpr unsigned kSeeds[] = {20260312, 20260313, 20260314};

const char* notingText(Noting noting) {
    switch (noting) {
    case Noting::EveryTail:
        return "every tail";
    case Noting::HalfTheTails:
        return "half the tails";
    case Noting::InWords:
        return "tails in words";
    }
    return "";
}

void print(const Scenario& scenario) {
    for (const unsigned seed : kSeeds) {
        const Outcome outcome = runShop(scenario, seed);
        std::printf("%-24s %-9s %-15s %-10s %u  %6.2f %6.2f %7.2f %% %7.2f %%\n", scenario.truth.name.data(),
                    methodText(scenario.method).data(), notingText(scenario.noting),
                    scenario.costed ? "least cost" : "flat 1 %", seed, outcome.overCutFirstM, outcome.overCutLateM,
                    100.0 * outcome.shortShare(), 100.0 * outcome.shortLateJobs / outcome.lateJobs);
    }
}
} // namespace

int main() {
    std::printf(
        "2000 jobs, 60 frames. Over-cut in metres a job on a frame's first job and after its tenth; jobs that came\n"
        "short, of all and of those after the tenth.\n\n");
    std::printf("%-24s %-9s %-15s %-10s %-8s  %6s %6s %9s %9s\n", "world", "method", "noted", "cut", "seed", "first",
                "later", "short", "later");
    for (const Truth& truth : {kAsTheModelThinks, kThreePercentOff, kSixPercentOff}) {
        for (const Method method : {Method::OnePiece, Method::TwoPiece}) {
            for (const Noting noting : {Noting::EveryTail, Noting::HalfTheTails, Noting::InWords}) {
                for (const bool costed : {false, true}) {
                    print({truth, method, noting, costed});
                }
            }
        }
    }
    return 0;
}
