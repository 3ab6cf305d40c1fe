// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/story.h"

#include <algorithm>

namespace rw::stories {

namespace {
std::vector<std::string> tablesIn(sql::Connection& connection) {
    const std::string_view catalogue =
        connection.dialect() == sql::Dialect::Sqlite
            ? "SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name"
            : "SELECT table_name FROM information_schema.tables WHERE table_schema = 'public' "
              "AND table_type = 'BASE TABLE' ORDER BY table_name";
    std::vector<std::string> tables;
    for (const auto& row : connection.rows(catalogue)) {
        tables.push_back(row.front());
    }
    return tables;
}
} // namespace

std::unique_ptr<desk::Ledger> openAt(const std::string& address) {
    return must(sql::openLedger(must(sql::LedgerAddress::parse(address))));
}

std::string everythingIn(sql::Connection& connection) {
    std::string text;
    for (const std::string& table : tablesIn(connection)) {
        if (table == "ledger_turn") {
            continue; // counts the turns of writers, also of those that changed nothing
        }
        auto rows = connection.rows("SELECT * FROM " + table);
        std::ranges::sort(rows);
        text += table + "\n";
        for (const auto& row : rows) {
            for (const std::string& value : row) {
                text += "\t" + value;
            }
            text += "\n";
        }
    }
    return text;
}

std::string findingsOf(desk::Ledger& ledger) {
    std::string text;
    for (const desk::Finding& finding : ledger.check()) {
        text += finding.rule + ": " + finding.what + "\n";
    }
    return text;
}

void Story::SetUp() {
    openLedger();
    m_shop = write(*m_ledger, [](desk::Transaction& ledger) { return Result<HarbourLane>(settle(ledger)); });
}

void Story::TearDown() {
    if (m_ledger) {
        EXPECT_EQ(findingsOf(*m_ledger), "");
    }
}

void Story::openLedger() { m_ledger = openAt(place().address()); }

std::string Story::everything() { return everythingIn(*place().connect()); }

} // namespace rw::stories
