// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/impossible.h"

#include <array>
#include <charconv>
#include <cmath>

namespace rw::length {

std::string plainNumber(double value) {
    constexpr double kLargestPlain = 1e12;
    constexpr double kSmallestPlain = 1e-6;
    constexpr double kSmallestWithThree = 1e-3;
    std::array<char, 64> room{};
    if (!std::isfinite(value) || std::abs(value) >= kLargestPlain || (value != 0 && std::abs(value) < kSmallestPlain)) {
        const auto end = std::to_chars(room.data(), room.data() + room.size(), value);
        return {room.data(), end.ptr};
    }
    const int decimals = value != 0 && std::abs(value) < kSmallestWithThree ? 6 : 3;
    const auto end = std::to_chars(room.data(), room.data() + room.size(), value, std::chars_format::fixed, decimals);
    std::string text(room.data(), end.ptr);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.')) {
        text.pop_back();
    }
    return text;
}

std::string between(double lowest, double highest) { return plainNumber(lowest) + " to " + plainNumber(highest); }

tl::unexpected<Refusal> impossible(std::string_view key, std::string text, std::string expected) {
    return refuse(Code::ImpossibleValue,
                  {{"key", std::string(key)}, {"text", std::move(text)}, {"expected", std::move(expected)}});
}

tl::unexpected<Refusal> impossible(std::string_view key, double value, std::string expected) {
    return impossible(key, plainNumber(value), std::move(expected));
}

} // namespace rw::length
