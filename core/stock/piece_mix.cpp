// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/piece_mix.h"

#include <algorithm>
#include <cassert>
#include <cstdlib>
#include <map>

namespace rw::stock {

namespace {
constexpr Length kCentimetre = Length::fromMillimetres(10);
constexpr Length kSpreadOfCuts = Length::fromMillimetres(150);
constexpr Length kSpreadOfFirstDay = Length::fromMillimetres(300);
constexpr std::size_t kCutsRemembered = 200;
constexpr double kWeightOfTheSport = 20; // in cuts
} // namespace

PieceMix PieceMix::of(std::vector<Share> shares) {
    std::map<Length, double> byLength;
    double whole = 0;
    for (const Share& share : shares) {
        assert(share.length.isPositive() && share.share >= 0);
        byLength[share.length] += share.share;
        whole += share.share;
    }
    assert(whole > 0);
    std::vector<Share> sorted;
    for (const auto& [length, share] : byLength) {
        if (share > 0) {
            sorted.push_back({length, share / whole});
        }
    }
    return PieceMix(std::move(sorted));
}

PieceMix PieceMix::around(std::span<const Length> lengths, Length reach) {
    assert(!lengths.empty());
    const std::int64_t steps = reach.wholeTimes(kCentimetre);
    std::vector<Share> shares;
    for (const Length length : lengths) {
        const Length middle = length.roundedUpTo(kCentimetre);
        for (std::int64_t step = 1 - steps; step < steps; ++step) {
            shares.push_back({middle + kCentimetre * step, static_cast<double>(steps - std::abs(step))});
        }
    }
    return of(std::move(shares));
}

PieceMix PieceMix::mixedWith(const PieceMix& other, double weight) const {
    assert(weight >= 0 && weight <= 1);
    std::vector<Share> shares;
    for (const Share& share : m_shares) {
        shares.push_back({share.length, share.share * (1 - weight)});
    }
    for (const Share& share : other.m_shares) {
        shares.push_back({share.length, share.share * weight});
    }
    return of(std::move(shares));
}

PieceMix mixOfString(std::span<const Length> cuts, const PieceMix& ofTheSport) {
    if (cuts.empty()) {
        return ofTheSport;
    }
    const auto last = cuts.last(std::min(cuts.size(), kCutsRemembered));
    const double weight = kWeightOfTheSport / (kWeightOfTheSport + static_cast<double>(last.size()));
    return PieceMix::around(last, kSpreadOfCuts).mixedWith(ofTheSport, weight);
}

PieceMix mixOfFirstDay(std::span<const Length> expectedCuts) {
    return PieceMix::around(expectedCuts, kSpreadOfFirstDay);
}

} // namespace rw::stock
