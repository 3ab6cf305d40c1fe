// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/row.h"

#include "core/base/world_error.h"
#include "core/calendar/civil_date_text.h"
#include "core/sql/repositories/stored_texts.h"

#include <limits>

namespace rw::sql {

bool Row::flag(std::string_view column) const {
    const std::int64_t value = wide(column);
    if (value != 0 && value != 1) {
        corrupt(column, std::to_string(value));
    }
    return value == 1;
}

int Row::number(std::string_view column) const {
    const std::int64_t value = wide(column);
    if (value < std::numeric_limits<int>::min() || value > std::numeric_limits<int>::max()) {
        corrupt(column, std::to_string(value));
    }
    return static_cast<int>(value);
}

std::optional<std::int64_t> Row::optionalWide(std::string_view column) const {
    return isNull(column) ? std::nullopt : std::optional(wide(column));
}

std::optional<double> Row::optionalReal(std::string_view column) const {
    return isNull(column) ? std::nullopt : std::optional(m_statement.real(column));
}

Length Row::length(std::string_view column) const { return Length::fromMillimetres(wide(column)); }

std::optional<Length> Row::optionalLength(std::string_view column) const {
    return isNull(column) ? std::nullopt : std::optional(length(column));
}

std::optional<Money> Row::optionalMoney(std::string_view column, Currency currency) const {
    return isNull(column) ? std::nullopt : std::optional(Money::fromMinor(wide(column), currency));
}

Instant Row::instant(std::string_view column) const { return Instant(std::chrono::milliseconds(wide(column))); }

std::optional<Instant> Row::optionalInstant(std::string_view column) const {
    return isNull(column) ? std::nullopt : std::optional(instant(column));
}

CivilDate Row::date(std::string_view column) const { return oneOf(column, civilDateFromText); }

Currency Row::currency(std::string_view column) const {
    const auto currency = Currency::fromCode(text(column));
    if (!currency) {
        corrupt(column, text(column));
    }
    return *currency;
}

Tension Row::tension(std::string_view name) const {
    const std::string column = std::string(name) + "_hundredths";
    const std::int64_t hundredths = wide(column);
    const auto tension = Tension::fromHundredths(hundredths, oneOf(std::string(name) + "_unit", storedUnit));
    if (!tension) {
        corrupt(column, std::to_string(hundredths));
    }
    return *tension;
}

std::optional<Tension> Row::optionalTension(std::string_view name) const {
    return isNull(std::string(name) + "_hundredths") ? std::nullopt : std::optional(tension(name));
}

TensionPair Row::tensionPair() const { return {tension("mains"), tension("crosses")}; }

By Row::by() const { return {id<StaffId>("staff_id"), text("station"), instant("at")}; }

void Row::corrupt(std::string_view column, std::string_view found) const {
    std::string what(m_table);
    what += ' ' + std::to_string(wide(m_key)) + ": " + std::string(column) + " is \"" + std::string(found) + '"';
    throw LedgerCorrupt(what);
}

} // namespace rw::sql
