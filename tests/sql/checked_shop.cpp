// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/checked_shop.h"

#include "core/sql/check/ledger_check.h"
#include "tests/sql/damage.h"
#include "tests/sql/ledgers.h"
#include "tests/sql/pattern.h"
#include "tests/sql/small_shop.h"

namespace rw::sql::test {

namespace {
Pattern g_checkedShop{[](const Place& place) {
    (void)mustOpen(place.address());
    const auto connection = place.connect();
    damage(*connection, {"DELETE FROM ledger"}); // the small shop brings its own
    stockSmallShop(*connection);
}};
} // namespace

void OnCheckedShop::SetUp() {
    standIn(g_checkedShop.copy(GetParam()));
    m_connection = place().connect();
}

std::vector<std::string> OnCheckedShop::findings() {
    std::vector<std::string> result;
    for (const auto& finding : checkLedger(*m_connection)) {
        result.push_back(finding.rule + ": " + finding.what);
    }
    return result;
}

std::vector<std::string> OnCheckedShop::findingsAfter(const std::vector<std::string_view>& statements) {
    damage(*m_connection, statements);
    return findings();
}

} // namespace rw::sql::test
