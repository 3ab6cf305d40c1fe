// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/pattern.h"

#include "core/sql/migration.h"
#include "tests/sql/small_shop.h"

#include <utility>

namespace rw::sql::test {

namespace {
/// Lets go of the places while the server can still be asked to.
class LettingGo final : public testing::Environment {
public:
    explicit LettingGo(std::map<Dialect, std::unique_ptr<Place>>& places)
        : m_places(places) {}
    void TearDown() override { m_places.clear(); }

private:
    std::map<Dialect, std::unique_ptr<Place>>& m_places;
};

void migrateAll(const Place& place) {
    const auto connection = place.connect();
    if (place.dialect() == Dialect::Sqlite) {
        connection->execute("PRAGMA journal_mode = WAL"); // as in a ledger: who reads stops nobody
    }
    migrate(*connection, migrations(place.dialect()), SystemClock().now());
}

Pattern g_migrated{migrateAll};
Pattern g_smallShop{[](const Place& place) {
    migrateAll(place);
    stockSmallShop(*place.connect());
}};
} // namespace

Pattern::Pattern(Fill fill)
    : m_fill(std::move(fill)) {
    testing::AddGlobalTestEnvironment(new LettingGo(m_places)); // which GoogleTest owns
}

std::unique_ptr<Place> Pattern::copy(Dialect dialect) {
    std::unique_ptr<Place>& place = m_places[dialect];
    if (!place) {
        auto made = makePlace(dialect);
        m_fill(*made);
        place = std::move(made);
    }
    return place->copy();
}

Pattern& migrated() { return g_migrated; }
Pattern& smallShop() { return g_smallShop; }

} // namespace rw::sql::test
