// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/civil_date_text.h"

#include <algorithm>
#include <charconv>

namespace rw {

namespace {
/// The digits from `at` on, `count` of them; nothing when something else stands among them.
std::optional<unsigned> digits(std::string_view text, std::size_t at, std::size_t count) {
    const std::string_view part = text.substr(at, count);
    unsigned number = 0;
    const auto [end, error] = std::from_chars(part.data(), part.data() + part.size(), number);
    return error == std::errc() && end == part.data() + part.size() ? std::optional(number) : std::nullopt;
}

std::string padded(unsigned number, std::size_t width) {
    const std::string text = std::to_string(number);
    return std::string(width - std::min(width, text.size()), '0') + text;
}
} // namespace

std::optional<CivilDate> civilDateFromText(std::string_view text) {
    constexpr std::size_t kLength = 10;
    if (text.size() != kLength || text[4] != '-' || text[7] != '-') {
        return std::nullopt;
    }
    const auto year = digits(text, 0, 4);
    const auto month = digits(text, 5, 2);
    const auto day = digits(text, 8, 2);
    if (!year || !month || !day) {
        return std::nullopt;
    }
    const CivilDate date{std::chrono::year(static_cast<int>(*year)), std::chrono::month(*month),
                         std::chrono::day(*day)};
    return date.ok() && *year > 0 ? std::optional(date) : std::nullopt;
}

std::string civilDateText(CivilDate date) {
    return padded(static_cast<unsigned>(static_cast<int>(date.year())), 4) + "-" +
           padded(static_cast<unsigned>(date.month()), 2) + "-" + padded(static_cast<unsigned>(date.day()), 2);
}

} // namespace rw
