// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/change_settings.h"

#include "core/calendar/day_hours_text.h"
#include "core/desk/setting_rules.h"
#include "core/desk/settings.h"

#include <algorithm>

namespace rw::desk {

namespace {
/// What a setting says now: of a day, its hours in the week that holds.
std::string heldNow(Shop& shop, std::string_view name, const WeekHours& week, const Currency& currency) {
    const auto day = std::ranges::find(setting::kHours, name);
    if (day != setting::kHours.end()) {
        const auto& hours = week.at(static_cast<std::size_t>(day - setting::kHours.begin()));
        return hours ? dayHoursText(*hours) : std::string();
    }
    const auto stored = shop.setting(name);
    const auto kept = stored ? settingAsKept(name, *stored, currency) : refuse(Code::Missing);
    return kept ? *kept : std::string(usualSetting(name));
}

bool isHours(std::string_view name) { return std::ranges::find(setting::kHours, name) != setting::kHours.end(); }

/// A week is written whole: a day that is not stored is closed as soon as another one is.
void writeWeek(Shop& shop, const std::vector<SettingText>& kept, const WeekHours& before) {
    for (std::size_t day = 0; day < before.size(); ++day) {
        const auto changed = std::ranges::find(kept, setting::kHours[day], &SettingText::name);
        const std::string held = before[day] ? dayHoursText(*before[day]) : std::string();
        shop.set(setting::kHours[day], changed == kept.end() ? held : changed->value);
    }
}

Result<void> checkOpen(const std::vector<SettingText>& kept, WeekHours week) {
    for (std::size_t day = 0; day < week.size(); ++day) {
        const auto changed = std::ranges::find(kept, setting::kHours[day], &SettingText::name);
        if (changed != kept.end()) {
            week[day] = dayHoursFromText(changed->value);
        }
    }
    if (std::ranges::none_of(week, [](const auto& day) { return day.has_value(); })) {
        return refuse(Code::ImpossibleValue, {{"key", std::string("hours")},
                                              {"expected", std::string("open on one day of the week at least")}});
    }
    return {};
}
} // namespace

Result<std::vector<SettingText>> settingTexts(Transaction& ledger) {
    Shop& shop = ledger.shop();
    const WeekHours week = openingHours(shop).week;
    const Currency currency = shop.currency();
    std::vector<SettingText> texts;
    for (const std::string_view name : settingNames()) {
        texts.push_back({std::string(name), heldNow(shop, name, week, currency)});
    }
    return texts;
}

Result<void> changeSettings(Transaction& ledger, const std::vector<SettingChange>& changes) {
    Shop& shop = ledger.shop();
    const WeekHours week = openingHours(shop).week;
    const Currency currency = shop.currency();
    std::vector<SettingText> wanted;
    for (const SettingChange& change : changes) {
        const auto kept = settingAsKept(change.name, change.value, currency);
        if (!kept) {
            return tl::unexpected<Refusal>(kept.error());
        }
        const std::string now = heldNow(shop, change.name, week, currency);
        if (now != change.before && now != *kept) {
            return refuse(Code::ChangedMeanwhile, {{"what", change.name}, {"mine", *kept}, {"theirs", now}});
        }
        if (change.name == setting::kFirstJobNumber && now != *kept && ledger.jobs().hasAny()) {
            return refuse(Code::ImpossibleValue, {{"key", change.name},
                                                  {"text", change.value},
                                                  {"expected", std::string("set before the first job is logged")}});
        }
        wanted.push_back({change.name, *kept});
    }
    if (const auto open = checkOpen(wanted, week); !open) {
        return open;
    }
    if (std::ranges::any_of(wanted, isHours, &SettingText::name)) {
        writeWeek(shop, wanted, week);
    }
    for (const SettingText& setting : wanted) {
        if (!isHours(setting.name)) {
            shop.set(setting.name, setting.value);
        }
    }
    return {};
}

} // namespace rw::desk
