// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/sql/engines.h"

#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace rw::sql::test {

/// The small shop in a ledger of today, to be damaged and checked.
class OnCheckedShop : public OnEngine {
protected:
    void SetUp() override;
    [[nodiscard]] Connection& connection() { return *m_connection; }

    /// "rule: what" of each finding.
    [[nodiscard]] std::vector<std::string> findings();
    [[nodiscard]] std::vector<std::string> findingsAfter(const std::vector<std::string_view>& statements);

private:
    std::unique_ptr<Connection> m_connection;
};

} // namespace rw::sql::test
