// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/settings.h"

#include "core/calendar/civil_date_text.h"
#include "core/units/decimal.h"

#include <algorithm>
#include <charconv>

namespace rw::desk {

namespace {
using std::chrono::minutes;

std::optional<int> wholeNumber(std::string_view text, int lowest, int highest) {
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size() || value < lowest || value > highest) {
        return std::nullopt;
    }
    return value;
}

int number(Shop& shop, std::string_view name, int otherwise, int lowest, int highest) {
    const auto stored = shop.setting(name);
    return stored ? wholeNumber(*stored, lowest, highest).value_or(otherwise) : otherwise;
}

/// "10:00" in minutes after midnight; 24:00 is the end of the day.
std::optional<minutes> timeOfDay(std::string_view text) {
    const auto colon = text.find(':');
    if (colon == std::string_view::npos) {
        return std::nullopt;
    }
    const auto hour = wholeNumber(text.substr(0, colon), 0, 24);
    const auto minute = wholeNumber(text.substr(colon + 1), 0, 59);
    if (!hour || !minute || *hour * 60 + *minute > 24 * 60) {
        return std::nullopt;
    }
    return minutes(*hour * 60 + *minute);
}

std::optional<DayHours> dayHours(std::string_view text) {
    const auto dash = text.find('-');
    if (dash == std::string_view::npos) {
        return std::nullopt;
    }
    const auto from = timeOfDay(trimmed(text.substr(0, dash)));
    const auto to = timeOfDay(trimmed(text.substr(dash + 1)));
    if (!from || !to || *from >= *to) {
        return std::nullopt;
    }
    return DayHours{*from, *to};
}

std::array<std::optional<DayHours>, 7> usualWeek() {
    std::array<std::optional<DayHours>, 7> week;
    std::fill_n(week.begin(), 6, DayHours{minutes(10 * 60), minutes(18 * 60)});
    return week;
}

std::vector<CivilDate> datesOf(std::string_view text) {
    std::vector<CivilDate> dates;
    for (text = trimmed(text); !text.empty(); text = trimmed(text)) {
        const std::string_view word = text.substr(0, text.find(' '));
        text.remove_prefix(word.size());
        if (const auto date = civilDateFromText(word)) {
            dates.push_back(*date);
        }
    }
    return dates;
}

OpeningHours openingHours(Shop& shop) {
    OpeningHours hours;
    hours.timeZone = shop.setting(setting::kTimeZone).value_or(hours.timeZone);
    for (std::size_t day = 0; day < hours.week.size(); ++day) {
        hours.week[day] = dayHours(shop.setting(setting::kHours[day]).value_or(""));
    }
    if (std::ranges::none_of(hours.week, [](const auto& day) { return day.has_value(); })) {
        hours.week = usualWeek();
    }
    hours.closedDays = datesOf(shop.setting(setting::kClosedDays).value_or(""));
    return hours;
}

double ceilingOf(Shop& shop, double otherwise) {
    const auto stored = shop.setting(setting::kCeilingPercent);
    if (!stored) {
        return otherwise;
    }
    const auto decimal = parseDecimal(setting::kCeilingPercent, *stored);
    if (!decimal) {
        return otherwise;
    }
    const auto hundredths = scaledTo(2, *decimal, setting::kCeilingPercent, *stored);
    // 0.01 % to 50 %: what the length model takes
    return hundredths && *hundredths >= 1 && *hundredths <= 5000 ? static_cast<double>(*hundredths) / 10000.0
                                                                 : otherwise;
}
/// Who strings; a shop that has named nobody has somebody at each machine.
std::vector<Worker> stringers(Shop& shop, int machines) {
    std::vector<Worker> workers;
    for (const StaffMember& member : shop.staff()) {
        if (member.strings && !member.retired) {
            workers.push_back(member.worker);
        }
    }
    return workers.empty() ? std::vector<Worker>(static_cast<std::size_t>(machines)) : workers;
}
} // namespace

std::vector<Machine> machinesInUse(Shop& shop) {
    std::vector<Machine> machines = shop.machines();
    std::erase_if(machines, &Machine::retired);
    return machines;
}

ShopSettings readSettings(Shop& shop) {
    ShopSettings settings;
    const std::vector<Machine> machines = machinesInUse(shop);
    settings.workshop.hours = openingHours(shop);
    settings.workshop.machines = std::max(1, static_cast<int>(machines.size()));
    settings.workshop.people = stringers(shop, settings.workshop.machines);
    settings.workshop.marginPercent = number(shop, setting::kMarginPercent, settings.workshop.marginPercent, 0, 500);
    settings.workshop.step = minutes(number(shop, setting::kStepMinutes, 15, 1, 8 * 60));
    settings.minutesPerJob = minutes(number(shop, setting::kMinutesPerJob, 25, 1, 8 * 60));
    if (const int rate = number(shop, setting::kLabourRate, 0, 1, 1'000'000'000); rate != 0) {
        settings.labourRate = Money::fromMinor(rate, shop.currency());
    }
    settings.runningShortJobs = number(shop, setting::kRunningShortJobs, settings.runningShortJobs, 0, 1000);
    settings.tapeStep = Length::fromMillimetres(number(shop, setting::kTapeStepMm, 50, 1, 1000));
    settings.ceiling = ceilingOf(shop, settings.ceiling);
    settings.shortSide = shop.setting(setting::kShortSide) == sideText(Side::Right) ? Side::Right : Side::Left;
    for (const Machine& machine : machines) {
        settings.reach = std::max(settings.reach, machine.reach);
    }
    return settings;
}

std::int64_t nextJobNumber(Transaction& ledger) {
    const int first = number(ledger.shop(), setting::kFirstJobNumber, 0, 1, 999'999'999);
    return first != 0 && !ledger.jobs().byNumber(first) ? first : 0;
}

} // namespace rw::desk
