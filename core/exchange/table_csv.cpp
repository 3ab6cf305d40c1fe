// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_csv.h"

#include "core/calendar/civil_date_text.h"
#include "core/exchange/csv.h"

#include <chrono>
#include <cstdio>

namespace rw::exchange {

namespace {
/// "2026-03-02T10:00:00.000Z".
std::string momentText(std::int64_t milliseconds) {
    using namespace std::chrono;
    const Instant at{std::chrono::milliseconds(milliseconds)};
    const auto day = floor<days>(at);
    const hh_mm_ss time(at - day);
    std::string text(16, '\0');
    std::snprintf(text.data(), text.size(), "T%02d:%02d:%02d.%03dZ", static_cast<int>(time.hours().count()),
                  static_cast<int>(time.minutes().count()), static_cast<int>(time.seconds().count()),
                  static_cast<int>(time.subseconds().count()));
    return civilDateText(year_month_day(day)) + text.c_str();
}

std::string plainText(desk::ColumnKind kind, std::int64_t number, Currency currency) {
    switch (kind) {
    case desk::ColumnKind::Money:
        return Money::fromMinor(number, currency).text();
    case desk::ColumnKind::Moment:
        return momentText(number);
    default:
        return std::to_string(number);
    }
}
} // namespace

std::string tableCsv(const desk::LedgerTable& table, Currency currency) {
    std::vector<std::string> header;
    for (const desk::Column& column : table.columns) {
        header.push_back(column.name);
    }
    CsvTable csv(header);
    for (const auto& row : table.rows) {
        for (std::size_t i = 0; i < row.size(); ++i) {
            const desk::ColumnKind kind = table.columns[i].kind;
            if (const auto* words = std::get_if<std::string>(&row[i])) {
                kind == desk::ColumnKind::Words ? csv.addText(*words) : csv.addPlain(*words);
            } else if (const auto* number = std::get_if<std::int64_t>(&row[i])) {
                csv.addPlain(plainText(kind, *number, currency));
            } else {
                csv.addPlain("");
            }
        }
        csv.endRow();
    }
    return csv.text();
}

} // namespace rw::exchange
