// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sql/connection.h"
#include "core/sql/ledger_address.h"

#include <gtest/gtest.h>

#include <memory>
#include <string>
#include <utility>

namespace rw::sql::test {

/// A database of one engine for one test, gone with it: a file in a folder of its own, or a database on the server
/// that REELWRIGHT_TEST_POSTGRES names. Without that variable a test on PostgreSQL fails.
class Place {
public:
    virtual ~Place() = default;
    /// For openLedger(): a path where nothing is yet, or the address of an empty database.
    [[nodiscard]] virtual std::string address() const = 0;
    /// A raw connection, without any migration.
    [[nodiscard]] virtual std::unique_ptr<Connection> connect() const = 0;
    [[nodiscard]] virtual Dialect dialect() const = 0;
    /// Another that holds what this one does. Nobody may be connected to this one.
    [[nodiscard]] virtual std::unique_ptr<Place> copy() const = 0;
};

/// Throws std::runtime_error with the sentence that says what is missing.
[[nodiscard]] std::unique_ptr<Place> makePlace(Dialect dialect);

/// A test that runs on both engines: TEST_P(Name, ...) with Name derived from this, and ON_BOTH_ENGINES(Name).
class OnEngine : public testing::TestWithParam<Dialect> {
protected:
    /// Where the test stands: an empty place, unless it chose another before. Made when first asked for, by one thread.
    [[nodiscard]] Place& place();
    void standIn(std::unique_ptr<Place> place) { m_place = std::move(place); }
    /// A connection to a database with every migration, in which place() then stands.
    [[nodiscard]] std::unique_ptr<Connection> connectMigrated();
    [[nodiscard]] bool onSqlite() const { return GetParam() == Dialect::Sqlite; }

private:
    std::unique_ptr<Place> m_place;
};

[[nodiscard]] std::string engineName(const testing::TestParamInfo<Dialect>& info);

} // namespace rw::sql::test

#define ON_BOTH_ENGINES(Suite)                                                                                         \
    INSTANTIATE_TEST_SUITE_P(Engines, Suite, testing::Values(rw::sql::Dialect::Sqlite, rw::sql::Dialect::Postgres),    \
                             rw::sql::test::engineName)
