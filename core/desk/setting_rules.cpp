// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/setting_rules.h"

#include "core/calendar/civil_date_text.h"
#include "core/calendar/day_hours_text.h"
#include "core/desk/lookups.h"
#include "core/desk/settings.h"
#include "core/jobs/crosses_rise.h"
#include "core/units/decimal.h"

#include <algorithm>
#include <array>

namespace rw::desk {

namespace {
enum class Kind { Words, Zone, Hours, Days, Number, Percent, Grams, Side, Amount, Rise };

struct Rule {
    std::string_view name;
    Kind kind;
    std::string_view usual = {};
    int lowest = 0; ///< of a number; of a percentage and of grams in hundredths
    int highest = 0;
};

constexpr int kLongestWords = 2000;
constexpr int kMostMinutes = 8 * 60;
constexpr std::int64_t kMostClosedDays = 800; ///< two years of them; the ledger keeps 10 000 characters

constexpr std::array kRules{
    Rule{setting::kShopName, Kind::Words, "", 0, static_cast<int>(kLongestName)},
    Rule{setting::kTimeZone, Kind::Zone, "UTC"},
    Rule{setting::kHours[0], Kind::Hours},
    Rule{setting::kHours[1], Kind::Hours},
    Rule{setting::kHours[2], Kind::Hours},
    Rule{setting::kHours[3], Kind::Hours},
    Rule{setting::kHours[4], Kind::Hours},
    Rule{setting::kHours[5], Kind::Hours},
    Rule{setting::kHours[6], Kind::Hours},
    Rule{setting::kClosedDays, Kind::Days},
    Rule{setting::kMinutesPerJob, Kind::Number, "25", 1, kMostMinutes},
    Rule{setting::kMarginPercent, Kind::Number, "15", 0, 500},
    Rule{setting::kStepMinutes, Kind::Number, "15", 1, kMostMinutes},
    Rule{setting::kRunningShortJobs, Kind::Number, "2", 0, 1000},
    Rule{setting::kTapeStepMm, Kind::Number, "50", 1, 1000},
    Rule{setting::kCeilingPercent, Kind::Percent, "1", 1, 5000}, // what the length model takes
    Rule{setting::kFirstJobNumber, Kind::Number, "1001", 1, 999'999'999},
    Rule{setting::kLabourRate, Kind::Amount},
    Rule{setting::kShortSide, Kind::Side, "left"},
    Rule{setting::kBadmintonCrosses, Kind::Rise},
    Rule{setting::kAboveMarkedWords, Kind::Words, "", 0, kLongestWords},
    Rule{setting::kSpoiledJobCost, Kind::Amount},
    Rule{setting::kScaleStep, Kind::Grams, "1", 1, 10'000}, // hundredths of a gram: letter scales to luggage scales
};

const Rule* ruleOf(std::string_view name) {
    const auto* const rule = std::ranges::find(kRules, name, &Rule::name);
    return rule == kRules.end() ? nullptr : rule;
}

tl::unexpected<Refusal> unreadable(std::string_view name, std::string_view text) {
    return refuse(Code::Unreadable, {{"what", std::string(name)}, {"text", std::string(text)}});
}

/// A number in units of 10^-places within the rule's limits, as text.
Result<std::string> numberAsKept(const Rule& rule, std::string_view text, int places) {
    const auto decimal = parseDecimal(rule.name, text);
    const bool bare = decimal && (decimal->rest.empty() || (rule.kind == Kind::Percent && decimal->rest == "%") ||
                                  (rule.kind == Kind::Grams && decimal->rest == "g"));
    if (!bare) {
        return unreadable(rule.name, text);
    }
    const auto number = scaledTo(places, *decimal, rule.name, text);
    if (!number) {
        return tl::unexpected<Refusal>(number.error());
    }
    if (*number < rule.lowest || *number > rule.highest) {
        return refuse(Code::OutOfRange, {{"what", std::string(rule.name)},
                                         {"text", std::string(text)},
                                         {"lowest", decimalText(rule.lowest, places)},
                                         {"highest", decimalText(rule.highest, places)}});
    }
    return decimalText(*number, places);
}

Result<std::string> daysAsKept(std::string_view name, std::string_view text) {
    const auto days = daysFromText(text);
    if (!days) {
        return unreadable(name, days.error().text("text"));
    }
    if (std::ssize(*days) > kMostClosedDays) {
        return refuse(Code::TooLong,
                      {{"what", std::string(name)}, {"length", std::ssize(*days)}, {"most", kMostClosedDays}});
    }
    std::string kept;
    for (const CivilDate day : *days) {
        kept += (kept.empty() ? "" : " ") + civilDateText(day);
    }
    return kept;
}

Result<std::string> amountAsKept(std::string_view name, std::string_view text, const Currency& currency) {
    const auto amount = Money::tryParse(text, currency);
    if (!amount) {
        return unreadable(name, text);
    }
    if (amount->minor() < 0) {
        return refuse(
            Code::ImpossibleValue,
            {{"key", std::string(name)}, {"text", std::string(text)}, {"expected", std::string("nothing or more")}});
    }
    return amount->text();
}

Result<std::string> zoneAsKept(std::string_view name, std::string_view text) {
    if (!isTimeZone(text)) {
        return refuse(Code::ImpossibleValue, {{"key", std::string(name)},
                                              {"text", std::string(text)},
                                              {"expected", std::string("a time zone that this machine knows")}});
    }
    return std::string(text);
}

Result<std::string> valueAsKept(const Rule& rule, std::string_view text, const Currency& currency) {
    switch (rule.kind) {
    case Kind::Zone:
        return zoneAsKept(rule.name, text);
    case Kind::Hours:
        if (const auto hours = dayHoursFromText(text)) {
            return dayHoursText(*hours);
        }
        return unreadable(rule.name, text);
    case Kind::Days:
        return daysAsKept(rule.name, text);
    case Kind::Number:
        return numberAsKept(rule, text, 0);
    case Kind::Percent:
    case Kind::Grams:
        return numberAsKept(rule, text, 2);
    case Kind::Side:
        if (text == sideText(Side::Left) || text == sideText(Side::Right)) {
            return std::string(text);
        }
        return unreadable(rule.name, text);
    case Kind::Amount:
        return amountAsKept(rule.name, text, currency);
    case Kind::Rise:
        if (const auto rise = CrossesRise::tryParse(text)) {
            return rise->text();
        }
        return unreadable(rule.name, text);
    case Kind::Words:
        break;
    }
    return std::string(text);
}

bool mayBeNothing(Kind kind) {
    return kind == Kind::Words || kind == Kind::Hours || kind == Kind::Days || kind == Kind::Amount ||
           kind == Kind::Rise;
}
} // namespace

std::vector<std::string_view> settingNames() {
    std::vector<std::string_view> names;
    for (const Rule& rule : kRules) {
        names.push_back(rule.name);
    }
    return names;
}

Result<std::string> settingAsKept(std::string_view name, std::string_view typed, const Currency& currency) {
    const Rule* rule = ruleOf(name);
    if (rule == nullptr) {
        return refuse(Code::UnknownKey, {{"key", std::string(name)}});
    }
    const auto text = maybeWordsOf(name, typed, rule->kind == Kind::Words ? rule->highest : kLongestSetting);
    if (!text) {
        return text;
    }
    if (text->empty()) {
        return mayBeNothing(rule->kind) ? text : refuse(Code::Missing, {{"what", std::string(name)}});
    }
    return valueAsKept(*rule, *text, currency);
}

std::string_view usualSetting(std::string_view name) {
    const Rule* rule = ruleOf(name);
    return rule == nullptr ? std::string_view() : rule->usual;
}

} // namespace rw::desk
