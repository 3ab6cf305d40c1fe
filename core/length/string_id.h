// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace rw::length {

struct Point {
    double x; ///< mm, positive to the right, head pointing away
    double y; ///< mm, positive toward the head; 0 is the middle of the inside length
};

/// A string's place in the bed. Mains are counted 1 outward from the middle on each side, crosses from the head.
struct StringId {
    enum class Kind { MainLeft, MainRight, MainCentre, Cross };
    Kind kind;
    int number; ///< 1 is the middle main or the first cross; 0 for a centre main

    [[nodiscard]] bool isMain() const { return kind != Kind::Cross; }
    [[nodiscard]] bool isInPattern(int mains, int crosses) const;
    [[nodiscard]] std::string text() const; ///< "1L", "2R", "C", "X1"
    [[nodiscard]] static std::optional<StringId> fromText(std::string_view text);
    bool operator==(const StringId&) const = default;
};

/// Every string of a pattern by its name, for somebody who wrote one that is not there: "1L to 8L, 1R to 8R, X1 to
/// X19".
[[nodiscard]] std::string stringsOfPattern(int mains, int crosses);

} // namespace rw::length
