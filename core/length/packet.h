// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/length/need.h"
#include "core/units/length.h"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace rw::length {

/// The job's pieces are held at the usual packet when the expected need and this much more fit it.
constexpr double kPacketMargin = 0.02;

/// Whether a first cut of these pieces is held at the packet: together they would be longer than it, and the
/// expected need + 2 % fits it.
[[nodiscard]] bool holdsAtPacket(std::span<const Need> parts, Length cutTogether, Length packet);

/// The packet shared over the parts so that the worse-off one is safest, in tape steps. When whole steps
/// would not leave the need + 2 % (a very coarse tape), the packet is used to the millimetre.
[[nodiscard]] std::vector<Length> shareOfPacket(std::span<const Need> parts, Length packet, Length tapeStep);

/// Whether a set does a job, by the chance that the job's need exceeds it.
enum class PacketVerdict {
    Enough, ///< up to 2 %
    Tight,  ///< up to 25 %: measure the mains first, one piece, a starting clamp
    NotEnough
};

[[nodiscard]] std::string_view packetVerdictText(PacketVerdict verdict); ///< "enough", "tight", "not enough"

/// The chance that all parts together need more than `length`. The parts are taken to be long and short
/// together, as one frame's usually are, which is the careful reading.
[[nodiscard]] double chanceAllExceed(std::span<const Need> parts, Length length);
[[nodiscard]] PacketVerdict judgePacket(std::span<const Need> parts, Length length);
/// The shortest length that is judged enough.
[[nodiscard]] Length enoughFrom(std::span<const Need> parts);

} // namespace rw::length
