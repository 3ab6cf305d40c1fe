// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/day_hours_text.h"

#include "core/calendar/civil_date_text.h"

#include <algorithm>
#include <charconv>

namespace rw {

namespace {
using std::chrono::days;
using std::chrono::minutes;
using std::chrono::sys_days;

constexpr days kLongestStretch{366};
constexpr std::string_view kTo = "to";

std::string_view withoutSpaces(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    return first == std::string_view::npos ? std::string_view()
                                           : text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

std::optional<int> wholeNumber(std::string_view text, std::size_t mostDigits) {
    int number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool whole = error == std::errc() && end == text.data() + text.size();
    return whole && number >= 0 && text.size() <= mostDigits ? std::optional(number) : std::nullopt;
}

/// "10", "10:30", "10.30" in minutes after midnight.
std::optional<minutes> timeOfDay(std::string_view text) {
    const auto mark = text.find_first_of(":.");
    const auto hour = wholeNumber(text.substr(0, mark), 2);
    const auto minute = mark == std::string_view::npos ? std::optional(0) : wholeNumber(text.substr(mark + 1), 2);
    if (!hour || !minute || *minute > 59 || *hour * 60 + *minute > 24 * 60) {
        return std::nullopt;
    }
    return minutes(*hour * 60 + *minute);
}

std::string clockText(minutes sinceMidnight) {
    const auto two = [](std::int64_t number) { return (number < 10 ? "0" : "") + std::to_string(number); };
    return two(sinceMidnight.count() / 60) + ":" + two(sinceMidnight.count() % 60);
}

std::vector<std::string_view> wordsOf(std::string_view text) {
    constexpr std::string_view kBetween = " \t\r\n,;";
    std::vector<std::string_view> words;
    while (true) {
        const auto first = text.find_first_not_of(kBetween);
        if (first == std::string_view::npos) {
            return words;
        }
        text.remove_prefix(first);
        words.push_back(text.substr(0, text.find_first_of(kBetween)));
        text.remove_prefix(words.back().size());
    }
}

tl::unexpected<Refusal> unreadable(std::string_view word) {
    return refuse(Code::Unreadable, {{"what", "days"}, {"text", std::string(word)}});
}
} // namespace

std::optional<DayHours> dayHoursFromText(std::string_view text) {
    constexpr std::string_view kDash = "–"; // the long one, which is three bytes
    const auto dash = text.find(kDash);
    const auto hyphen = dash == std::string_view::npos ? text.find('-') : dash;
    if (hyphen == std::string_view::npos) {
        return std::nullopt;
    }
    const auto from = timeOfDay(withoutSpaces(text.substr(0, hyphen)));
    const auto to = timeOfDay(withoutSpaces(text.substr(hyphen + (dash == hyphen ? kDash.size() : 1))));
    if (!from || !to || *from >= *to) {
        return std::nullopt;
    }
    return DayHours{*from, *to};
}

std::string dayHoursText(const DayHours& hours) { return clockText(hours.from) + "-" + clockText(hours.to); }

Result<std::vector<CivilDate>> daysFromText(std::string_view text) {
    const std::vector<std::string_view> words = wordsOf(text);
    std::vector<CivilDate> found;
    bool toNext = false;
    for (const std::string_view word : words) {
        if (word == kTo && !found.empty() && !toNext) {
            toNext = true;
            continue;
        }
        const auto date = civilDateFromText(word);
        if (!date || (toNext && (*date < found.back() || sys_days(*date) - sys_days(found.back()) > kLongestStretch))) {
            return unreadable(word);
        }
        if (toNext) {
            for (sys_days day = sys_days(found.back()) + days(1); day < sys_days(*date); day += days(1)) {
                found.emplace_back(day);
            }
        }
        found.push_back(*date);
        toNext = false;
    }
    if (toNext) {
        return unreadable(words.back());
    }
    std::ranges::sort(found);
    found.erase(std::unique(found.begin(), found.end()), found.end());
    return found;
}

std::string daysText(const std::vector<CivilDate>& all) {
    std::string text;
    for (auto first = all.begin(); first != all.end();) {
        auto last = first;
        while (last + 1 != all.end() && sys_days(*(last + 1)) == sys_days(*last) + days(1)) {
            ++last;
        }
        text += (text.empty() ? "" : ", ") + civilDateText(*first);
        if (last != first) {
            text += last - first == 1 ? ", " : " to ";
            text += civilDateText(*last);
        }
        first = last + 1;
    }
    return text;
}

} // namespace rw
