// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/settings.h"

#include "core/calendar/civil_date_text.h"
#include "core/calendar/day_hours_text.h"
#include "core/desk/setting_rules.h"
#include "core/units/decimal.h"

#include <algorithm>
#include <charconv>

namespace rw::desk {

namespace {
using std::chrono::minutes;

/// The settings of a shop as their rules keep them.
class Stored {
public:
    explicit Stored(Shop& shop)
        : m_shop(shop)
        , m_currency(shop.currency()) {}

    /// Nothing when none is stored, or none that can be read.
    [[nodiscard]] std::optional<std::string> readable(std::string_view name) const {
        const auto stored = m_shop.setting(name);
        const auto kept = stored ? settingAsKept(name, *stored, m_currency) : refuse(Code::Missing);
        return kept ? std::optional(*kept) : std::nullopt;
    }
    [[nodiscard]] std::string text(std::string_view name) const {
        return readable(name).value_or(std::string(usualSetting(name)));
    }
    [[nodiscard]] int number(std::string_view name) const {
        const std::string digits = text(name);
        int value = 0;
        std::from_chars(digits.data(), digits.data() + digits.size(), value); // the rule has read it before
        return value;
    }
    [[nodiscard]] double share(std::string_view percent) const {
        const std::string typed = text(percent);
        const auto decimal = parseDecimal(percent, typed);
        const auto hundredths = decimal ? scaledTo(2, *decimal, percent, typed) : tl::unexpected(decimal.error());
        return static_cast<double>(hundredths.value_or(0)) / 10'000.0;
    }
    [[nodiscard]] Mass mass(std::string_view grams) const {
        return Mass::tryParse(text(grams)).value_or(Mass::fromMilligrams(1'000));
    }
    [[nodiscard]] std::optional<Money> amount(std::string_view name) const {
        const std::string typed = text(name);
        const auto money = Money::tryParse(typed, m_currency);
        return typed.empty() || !money ? std::nullopt : std::optional(*money);
    }

private:
    Shop& m_shop;
    Currency m_currency;
};

WeekHours usualWeek() {
    WeekHours week;
    std::fill_n(week.begin(), 6, DayHours{minutes(10 * 60), minutes(18 * 60)});
    return week;
}

/// Days that can be read count, whatever stands between them.
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

OpeningHours openingHours(Shop& shop) {
    OpeningHours hours;
    if (const auto zone = shop.setting(setting::kTimeZone); zone && isTimeZone(*zone)) {
        hours.timeZone = *zone; // one that this machine does not know must not stop the shop
    }
    for (std::size_t day = 0; day < hours.week.size(); ++day) {
        hours.week[day] = dayHoursFromText(shop.setting(setting::kHours[day]).value_or(""));
    }
    if (std::ranges::none_of(hours.week, [](const auto& day) { return day.has_value(); })) {
        hours.week = usualWeek();
    }
    hours.closedDays = datesOf(shop.setting(setting::kClosedDays).value_or(""));
    return hours;
}

CivilDate today(Shop& shop, Instant now) { return localDate(openingHours(shop), now); }

ShopSettings readSettings(Shop& shop) {
    const Stored stored(shop);
    ShopSettings settings;
    settings.hours = openingHours(shop);
    settings.marginPercent = stored.number(setting::kMarginPercent);
    settings.step = minutes(stored.number(setting::kStepMinutes));
    settings.minutesPerJob = minutes(stored.number(setting::kMinutesPerJob));
    settings.runningShortJobs = stored.number(setting::kRunningShortJobs);
    settings.tapeStep = Length::fromMillimetres(stored.number(setting::kTapeStepMm));
    settings.ceiling = stored.share(setting::kCeilingPercent);
    settings.shortSide = stored.text(setting::kShortSide) == sideText(Side::Right) ? Side::Right : Side::Left;
    settings.spoiledJobCost = stored.amount(setting::kSpoiledJobCost);
    settings.scaleStep = stored.mass(setting::kScaleStep);
    settings.labourRate = stored.amount(setting::kLabourRate);
    for (const Machine& machine : machinesInUse(shop)) {
        settings.reach = std::max(settings.reach, machine.reach);
    }
    return settings;
}

Workshop workshopOf(Shop& shop, const ShopSettings& settings) {
    const int machines = std::max(1, static_cast<int>(machinesInUse(shop).size()));
    return {.hours = settings.hours,
            .people = stringers(shop, machines),
            .machines = machines,
            .marginPercent = settings.marginPercent,
            .step = settings.step};
}

std::int64_t nextJobNumber(Transaction& ledger) {
    const Stored stored(ledger.shop());
    if (!stored.readable(setting::kFirstJobNumber)) {
        return 0;
    }
    const int first = stored.number(setting::kFirstJobNumber);
    return ledger.jobs().byNumber(first) ? 0 : first;
}

} // namespace rw::desk
