// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/packet.h"

#include "core/length/recommended_cut.h"
#include "core/length/standard_normal.h"

#include <numeric>

namespace rw::length {

namespace {
constexpr double kEnough = 0.02;
constexpr double kTight = 0.25;

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

std::string_view packetVerdictText(PacketVerdict verdict) {
    switch (verdict) {
    case PacketVerdict::Enough:
        return "enough";
    case PacketVerdict::Tight:
        return "tight";
    case PacketVerdict::NotEnough:
        return "not enough";
    }
    return {};
}

double chanceAllExceed(std::span<const Need> parts, Length length) {
    return normalAbove(sharedSd(parts, asMm(length)));
}

PacketVerdict judgePacket(std::span<const Need> parts, Length length) {
    const double chance = chanceAllExceed(parts, length);
    if (chance <= kEnough) {
        return PacketVerdict::Enough;
    }
    return chance <= kTight ? PacketVerdict::Tight : PacketVerdict::NotEnough;
}

Length enoughFrom(std::span<const Need> parts) {
    return Length::roundedUp(std::accumulate(parts.begin(), parts.end(), 0.0, [](double sum, const Need& need) {
        return sum + need.exceededWith(kEnough);
    }));
}

} // namespace rw::length
