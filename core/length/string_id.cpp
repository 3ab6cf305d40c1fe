// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/string_id.h"

#include <charconv>

namespace rw::length {

namespace {
/// A number from 1 on, with nothing before or behind it.
std::optional<int> countingNumber(std::string_view digits) {
    int number = 0;
    const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), number);
    const bool whole = read.ec == std::errc() && read.ptr == digits.data() + digits.size();
    return whole && number > 0 && digits.front() != '0' ? std::optional(number) : std::nullopt;
}
} // namespace

bool StringId::isInPattern(int mains, int crosses) const {
    switch (kind) {
    case Kind::MainLeft:
    case Kind::MainRight:
        return 1 <= number && number <= mains / 2;
    case Kind::MainCentre:
        return number == 0 && mains % 2 != 0;
    case Kind::Cross:
        break;
    }
    return 1 <= number && number <= crosses;
}

std::string StringId::text() const {
    switch (kind) {
    case Kind::MainLeft:
        return std::to_string(number) + "L";
    case Kind::MainRight:
        return std::to_string(number) + "R";
    case Kind::MainCentre:
        return "C";
    case Kind::Cross:
        break;
    }
    return "X" + std::to_string(number);
}

std::optional<StringId> StringId::fromText(std::string_view text) {
    if (text == "C") {
        return StringId{Kind::MainCentre, 0};
    }
    if (text.size() < 2) {
        return std::nullopt;
    }
    const bool cross = text.front() == 'X';
    const char side = text.back();
    if (!cross && side != 'L' && side != 'R') {
        return std::nullopt;
    }
    const auto number = countingNumber(cross ? text.substr(1) : text.substr(0, text.size() - 1));
    if (!number) {
        return std::nullopt;
    }
    return StringId{cross ? Kind::Cross : (side == 'L' ? Kind::MainLeft : Kind::MainRight), *number};
}

std::string stringsOfPattern(int mains, int crosses) {
    const std::string half = std::to_string(mains / 2);
    return std::string(mains % 2 != 0 ? "C, " : "") + "1L to " + half + "L, 1R to " + half + "R, X1 to X" +
           std::to_string(crosses);
}

} // namespace rw::length
