// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frames/pattern_text.h"

#include <cstdint>
#include <string>
#include <vector>

namespace rw {

namespace {
constexpr int kFewest = 6;
constexpr int kMostMains = 30;
constexpr int kMostCrosses = 34;

bool isDigit(char c) { return c >= '0' && c <= '9'; }

Result<int> inRange(std::string_view what, std::string_view digits, int most) {
    // Two digits hold every number that can be right, so longer ones need no reading.
    const int count = digits.size() > 2 ? most + 1 : std::stoi(std::string(digits));
    if (count < kFewest || count > most) {
        return refuse(Code::OutOfRange, {{"what", std::string(what)},
                                         {"text", std::string(digits)},
                                         {"lowest", std::int64_t{kFewest}},
                                         {"highest", std::int64_t{most}}});
    }
    return count;
}
} // namespace

Result<Pattern> patternFromText(std::string_view text) {
    // What stands between the two numbers is one of the usual signs; anything else is a typing error.
    std::vector<std::string_view> numbers;
    std::string between;
    for (std::size_t i = 0; i < text.size();) {
        std::size_t end = i;
        while (end < text.size() && isDigit(text[end])) {
            ++end;
        }
        if (end > i) {
            numbers.push_back(text.substr(i, end - i));
            i = end;
        } else {
            if (text[i] != ' ' && text[i] != '\t') {
                between += text[i];
            }
            ++i;
        }
    }
    const bool separated = between.empty() || between == "x" || between == "X" || between == "/" || between == "*" ||
                           between == "\xC3\x97"; // ×
    const bool atBothEnds =
        !text.empty() && (isDigit(text.front()) || text.front() == ' ') && (isDigit(text.back()) || text.back() == ' ');
    if (numbers.size() != 2 || !separated || !atBothEnds) {
        return refuse(Code::Unreadable, {{"what", "pattern"}, {"text", std::string(text)}});
    }
    const auto mains = inRange("mains", numbers[0], kMostMains);
    if (!mains) {
        return tl::unexpected<Refusal>(mains.error());
    }
    const auto crosses = inRange("crosses", numbers[1], kMostCrosses);
    if (!crosses) {
        return tl::unexpected<Refusal>(crosses.error());
    }
    Pattern pattern;
    pattern.mains = *mains;
    pattern.crosses = *crosses;
    return pattern;
}

} // namespace rw
