// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/stored_texts.h"

#include "core/base/named_texts.h"

#include <cassert>
#include <charconv>
#include <initializer_list>

namespace rw::sql {

namespace {
constexpr NamedTexts<Contact::Kind, 3> kContactKinds(
    {{{Contact::Kind::Phone, "phone"}, {Contact::Kind::Email, "email"}, {Contact::Kind::Other, "other"}}});
constexpr NamedTexts<LotKind, 3> kLotKinds(
    {{{LotKind::Reel, "reel"}, {LotKind::Packet, "packet"}, {LotKind::Remnant, "remnant"}}});
constexpr NamedTexts<TaxRule, 2> kTaxRules({{{TaxRule::Included, "included"}, {TaxRule::Added, "added"}}});

template<class Enum>
std::optional<Enum> oneOf(std::initializer_list<Enum> values, std::string_view (*textOf)(Enum), std::string_view text) {
    for (const Enum value : values) {
        if (textOf(value) == text) {
            return value;
        }
    }
    return std::nullopt;
}

/// Digits only, all of them, or nothing.
std::optional<int> wholeNumber(std::string_view digits) {
    int value = 0;
    const char* end = digits.data() + digits.size();
    const auto [stopped, error] = std::from_chars(digits.data(), end, value);
    if (error != std::errc() || stopped != end || value < 0) {
        return std::nullopt;
    }
    return value;
}

std::string padded(int value, std::size_t width) {
    std::string digits = std::to_string(value);
    return std::string(width > digits.size() ? width - digits.size() : 0, '0') + digits;
}
} // namespace

std::string_view contactKindText(Contact::Kind kind) { return kContactKinds.text(kind); }
std::optional<Contact::Kind> contactKindFromText(std::string_view text) { return kContactKinds.value(text); }
std::string_view lotKindText(LotKind kind) { return kLotKinds.text(kind); }
std::optional<LotKind> lotKindFromText(std::string_view text) { return kLotKinds.value(text); }
std::string_view taxRuleText(TaxRule rule) { return kTaxRules.text(rule); }
std::optional<TaxRule> taxRuleFromText(std::string_view text) { return kTaxRules.value(text); }

std::optional<Side> storedSide(std::string_view text) { return oneOf({Side::Left, Side::Right}, sideText, text); }
std::optional<HoopEnd> storedHoopEnd(std::string_view text) {
    return oneOf({HoopEnd::Head, HoopEnd::Throat}, hoopEndText, text);
}
std::optional<TensionUnit> storedUnit(std::string_view text) {
    return oneOf({TensionUnit::Pound, TensionUnit::Kilogram}, unitText, text);
}

std::string dateText(CivilDate date) {
    const int year = static_cast<int>(date.year());
    assert(date.ok() && year >= 0 && year <= 9999);
    return padded(year, 4) + '-' + padded(static_cast<int>(static_cast<unsigned>(date.month())), 2) + '-' +
           padded(static_cast<int>(static_cast<unsigned>(date.day())), 2);
}

std::optional<CivilDate> dateFromText(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') {
        return std::nullopt;
    }
    const auto year = wholeNumber(text.substr(0, 4));
    const auto month = wholeNumber(text.substr(5, 2));
    const auto day = wholeNumber(text.substr(8, 2));
    if (!year || !month || !day) {
        return std::nullopt;
    }
    const CivilDate date{std::chrono::year(*year), std::chrono::month(static_cast<unsigned>(*month)),
                         std::chrono::day(static_cast<unsigned>(*day))};
    return date.ok() ? std::optional(date) : std::nullopt;
}

} // namespace rw::sql
