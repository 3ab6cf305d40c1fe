// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

namespace rw {

enum class Sport { Tennis, Squash, Badminton };

[[nodiscard]] std::string_view sportText(Sport sport); ///< "tennis", "squash", "badminton"
[[nodiscard]] std::optional<Sport> sportFromText(std::string_view text);

/// Which end of the hoop: where the centre mains cross over outside the frame, where a string runs to.
enum class HoopEnd { Head, Throat };
/// Left and right as seen with the head pointing away and the frame's named mark facing up.
enum class Side { Left, Right };

[[nodiscard]] std::string_view hoopEndText(HoopEnd end); ///< "head", "throat"
[[nodiscard]] std::string_view sideText(Side side);      ///< "left", "right"
[[nodiscard]] constexpr Side otherSide(Side side) { return side == Side::Left ? Side::Right : Side::Left; }
[[nodiscard]] constexpr HoopEnd otherEnd(HoopEnd end) {
    return end == HoopEnd::Head ? HoopEnd::Throat : HoopEnd::Head;
}

} // namespace rw
