// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/postgres_error.h"

#include "core/base/world_error.h"

#include <algorithm>
#include <vector>

namespace rw::sql {

namespace {

/// The first line without its "ERROR:  ", whatever language that is in. The lines after it may hold people's words.
std::string_view firstLine(std::string_view message) {
    auto line = message.substr(0, message.find('\n'));
    const auto colon = line.find(":  ");
    return colon == std::string_view::npos ? line : line.substr(colon + 3);
}

/// What stands in double quotes.
std::vector<std::string> quotedNames(std::string_view line) {
    std::vector<std::string> names;
    for (auto open = line.find('"'); open != std::string_view::npos;) {
        const auto close = line.find('"', open + 1);
        if (close == std::string_view::npos) {
            break;
        }
        names.emplace_back(line.substr(open + 1, close - open - 1));
        open = line.find('"', close + 1);
    }
    return names;
}

} // namespace

std::string postgresGuard(std::string_view sqlState, std::string_view message) {
    const auto line = firstLine(message);
    if (sqlState == "RW001") {
        return std::string(line);
    }
    const auto names = quotedNames(line);
    if (names.empty()) {
        return std::string(line); // a server that speaks another language quotes otherwise
    }
    if (sqlState == "23502" && names.size() >= 2) { // null value in column "tag" of relation "lot"
        return names[1] + "_" + names[0] + "_not_null";
    }
    constexpr std::string_view before = "constraint \"";
    const auto constraint = line.find(before);
    if (constraint == std::string_view::npos) {
        return names.back();
    }
    const auto start = constraint + before.size();
    return std::string(line.substr(start, line.find('"', start) - start));
}

void throwPostgresError(std::string_view sqlState, std::string_view message, std::string_view doing) {
    const auto aside = " (" + std::string(doing) + ")";
    const auto what = std::string(firstLine(message)) + aside;
    const auto klass = sqlState.substr(0, 2);
    if (sqlState == "428C9") {
        throw LedgerGuard("id_generated_always" + aside);
    }
    if (klass == "23" || sqlState == "RW001") {
        throw LedgerGuard(postgresGuard(sqlState, message) + aside);
    }
    if (sqlState == "40001" || sqlState == "40P01" || sqlState == "55P03") {
        throw LedgerBusy(what);
    }
    if (sqlState == "53100") {
        throw LedgerFull(what);
    }
    // 57: the server is going down or ended this session; 25P03: it ended a transaction that stood still too long.
    if (sqlState.empty() || klass == "08" || klass == "57" || klass == "53" || klass == "58" || klass == "28" ||
        sqlState == "25P03") {
        throw LedgerLost(what);
    }
    if (sqlState == "25006" || sqlState == "42501") {
        throw LedgerReadOnly(what);
    }
    // 42P01 and 42703: the program's own SQL is prepared by tests, so what is not there the ledger lacks.
    if (klass == "XX" || sqlState == "42P01" || sqlState == "42703" || sqlState == "42883") {
        throw LedgerCorrupt(what);
    }
    throw WorldError(std::string(sqlState) + " " + what);
}

} // namespace rw::sql
