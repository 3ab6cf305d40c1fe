// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/checked_shop.h"

#include "core/sql/check/ledger_check.h"
#include "tests/sql/damage.h"
#include "tests/sql/ledgers.h"
#include "tests/sql/small_shop.h"

namespace rw::sql::test {

void OnCheckedShop::SetUp() {
    OnEngine::SetUp();
    (void)mustOpen(place().address());
    m_connection = place().connect();
    damage(*m_connection, {"DELETE FROM ledger"}); // the small shop brings its own
    stockSmallShop(*m_connection);
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
