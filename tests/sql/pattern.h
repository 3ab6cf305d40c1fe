// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/sql/engines.h"

#include <functional>
#include <map>
#include <memory>

namespace rw::sql::test {

/// What many tests start from: made once for the program on each engine that asks for it, and copied for each test.
/// It stands at namespace scope, and is gone when the last test is through.
class Pattern {
public:
    /// Fills a new place, and leaves nobody connected to it.
    using Fill = std::function<void(const Place&)>;

    explicit Pattern(Fill fill);
    Pattern(const Pattern&) = delete;
    Pattern& operator=(const Pattern&) = delete;

    [[nodiscard]] std::unique_ptr<Place> copy(Dialect dialect);

private:
    Fill m_fill;
    std::map<Dialect, std::unique_ptr<Place>> m_places;
};

/// Every migration, and nothing in any table that they leave empty.
[[nodiscard]] Pattern& migrated();
/// The small shop (small_shop.h) in a migrated database.
[[nodiscard]] Pattern& smallShop();

} // namespace rw::sql::test
