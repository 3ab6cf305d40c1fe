// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/stored_texts.h"

#include "core/base/named_texts.h"
#include "core/calendar/civil_date_text.h"

#include <cassert>
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
    assert(date.ok() && static_cast<int>(date.year()) >= 1 && static_cast<int>(date.year()) <= 9999);
    return civilDateText(date);
}

} // namespace rw::sql
