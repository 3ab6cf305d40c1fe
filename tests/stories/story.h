// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/sql/engines.h"
#include "tests/stories/harbour_lane.h"

#include "core/sql/ledger_address.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace rw::stories {

/// Opens the ledger at `address`; a refusal ends the story.
[[nodiscard]] std::unique_ptr<desk::Ledger> openAt(const std::string& address);

/// Every fact a database holds, row by row: two moments with the same text differ in nothing.
[[nodiscard]] std::string everythingIn(sql::Connection& connection);

/// What `check` found, a line each; "" for a whole ledger.
[[nodiscard]] std::string findingsOf(desk::Ledger& ledger);

/// A story happens in Harbour Lane Strings, on a new ledger of each engine. At its end the ledger must be whole.
class Story : public sql::test::OnEngine {
protected:
    void SetUp() override;
    void TearDown() override;

    [[nodiscard]] desk::Ledger& ledger() { return *m_ledger; }
    [[nodiscard]] const HarbourLane& shop() const { return *m_shop; }
    void closeLedger() { m_ledger.reset(); }
    void openLedger();
    /// Everything in the ledger, seen from outside.
    [[nodiscard]] std::string everything();

private:
    std::unique_ptr<desk::Ledger> m_ledger;
    std::optional<HarbourLane> m_shop;
};

} // namespace rw::stories
