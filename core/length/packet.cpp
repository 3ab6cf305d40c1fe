// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/packet.h"

#include "core/length/recommended_cut.h"

#include <numeric>

namespace rw::length {

namespace {
double expected(std::span<const Need> parts) {
    return std::accumulate(parts.begin(), parts.end(), 0.0,
                           [](double sum, const Need& need) { return sum + need.medianMm(); });
}

double asMm(Length length) { return static_cast<double>(length.millimetres()); }
} // namespace

bool holdsAtPacket(std::span<const Need> parts, Length cutTogether, Length packet) {
    return cutTogether > packet && expected(parts) * (1 + kPacketMargin) <= asMm(packet);
}

std::vector<Length> shareOfPacket(std::span<const Need> parts, Length packet, Length tapeStep) {
    const Length inSteps = tapeStep * packet.wholeTimes(tapeStep);
    const Length kMillimetre = Length::fromMillimetres(1);
    return expected(parts) * (1 + kPacketMargin) <= asMm(inSteps) ? splitEvenly(parts, inSteps, tapeStep)
                                                                  : splitEvenly(parts, packet, kMillimetre);
}

double chanceAllExceed(std::span<const Need> parts, Length length) {
    // Together the parts are nearly lognormal with their median summed and their spreads weighted by length.
    const double median = expected(parts);
    double spread = 0;
    for (const Need& need : parts) {
        spread += need.sdLog() * need.medianMm() / median;
    }
    return Need::withSpread(median, spread).chanceAbove(asMm(length));
}

PacketVerdict judgePacket(std::span<const Need> parts, Length length) {
    constexpr double kEnough = 0.02;
    constexpr double kTight = 0.25;
    const double chance = chanceAllExceed(parts, length);
    if (chance <= kEnough) {
        return PacketVerdict::Enough;
    }
    return chance <= kTight ? PacketVerdict::Tight : PacketVerdict::NotEnough;
}

} // namespace rw::length
