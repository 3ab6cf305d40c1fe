// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/next_cut.h"

#include <algorithm>
#include <tuple>

namespace rw::stock {

namespace {
constexpr double kPullMmPerMonth = 50;

/// The lot among the sealed or the open ones that loses least.
std::optional<NextCut> bestAmong(std::span<const CutSource> lots, bool sealed, Length piece,
                                 const RemnantValue& value) {
    std::optional<NextCut> best;
    const auto rank = [&](std::size_t lot, double lostMm) {
        return std::tuple(lostMm - lots[lot].pullMm, lots[lot].received, lot);
    };
    for (std::size_t i = 0; i < lots.size(); ++i) {
        if (lots[i].sealed != sealed || !lots[i].fits(piece)) {
            continue;
        }
        const double lostMm = value.lostByCutting(lots[i].usable(), piece);
        if (!best || rank(i, lostMm) < rank(best->lot, best->lostMm)) {
            best = NextCut{.lot = i, .lostMm = lostMm, .opens = std::nullopt};
        }
    }
    return best;
}
} // namespace

std::optional<NextCut> nextCut(std::span<const CutSource> lots, Length piece, const RemnantValue& value) {
    std::optional<NextCut> best = bestAmong(lots, false, piece, value);
    if (!best) {
        return bestAmong(lots, true, piece, value);
    }
    const bool fullEnough =
        std::ranges::any_of(lots, [](const CutSource& lot) { return !lot.sealed && lot.length > kFullEnough; });
    if (!fullEnough && best->lostMm > kWorthOpeningMm) {
        if (const auto sealed = bestAmong(lots, true, piece, value)) {
            best->opens = sealed->lot;
        }
    }
    return best;
}

double agePullMm(Instant received, Instant now, int months) {
    const std::chrono::duration<double, std::chrono::months::period> age = now - received;
    return std::max(0.0, age.count() - months) * kPullMmPerMonth;
}

} // namespace rw::stock
