// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/engines.h"

#include "tests/sql/pattern.h"

#include <QFile>
#include <QString>
#include <QTemporaryDir>
#include <QUrl>

#include <unistd.h>

#include <atomic>
#include <cstdlib>
#include <stdexcept>

namespace rw::sql::test {

namespace {

class SqlitePlace final : public Place {
public:
    std::string address() const override { return m_folder.filePath(QStringLiteral("shop.ledger")).toStdString(); }
    std::unique_ptr<Connection> connect() const override { return Connection::openSqlite(address()); }
    Dialect dialect() const override { return Dialect::Sqlite; }
    std::unique_ptr<Place> copy() const override {
        auto other = std::make_unique<SqlitePlace>();
        if (!QFile::copy(QString::fromStdString(address()), QString::fromStdString(other->address()))) {
            throw std::runtime_error("the file of the test is not copied: " + address());
        }
        return other;
    }

private:
    QTemporaryDir m_folder;
};

class PostgresPlace final : public Place {
public:
    /// template0: what somebody put into template1 is none of a ledger's business.
    explicit PostgresPlace(const std::string& pattern = "template0") {
        const char* server = std::getenv("REELWRIGHT_TEST_POSTGRES");
        if (server == nullptr || *server == '\0') {
            throw std::runtime_error("REELWRIGHT_TEST_POSTGRES names no PostgreSQL server: run the tests through "
                                     "packaging/verify, or this one through packaging/with-postgres");
        }
        static std::atomic<int> count{0};
        m_server = server;
        m_database = "reelwright_" + std::to_string(getpid()) + "_" + std::to_string(++count);
        Connection::openPostgres(m_server)->execute("CREATE DATABASE " + m_database + " TEMPLATE " + pattern +
                                                    " ENCODING 'UTF8'");
    }
    ~PostgresPlace() override {
        if (m_database.empty()) {
            return;
        }
        try {
            Connection::openPostgres(m_server)->execute("DROP DATABASE " + m_database + " WITH (FORCE)");
        } catch (const std::exception& error) {
            ADD_FAILURE() << "the test's database stays behind: " << error.what();
        }
    }
    PostgresPlace(const PostgresPlace&) = delete;
    PostgresPlace& operator=(const PostgresPlace&) = delete;

    std::string address() const override {
        QUrl url(QString::fromStdString(m_server));
        url.setPath(QStringLiteral("/") + QString::fromStdString(m_database));
        return url.toString(QUrl::FullyEncoded).toStdString();
    }
    std::unique_ptr<Connection> connect() const override { return Connection::openPostgres(address()); }
    Dialect dialect() const override { return Dialect::Postgres; }
    std::unique_ptr<Place> copy() const override { return std::make_unique<PostgresPlace>(m_database); }

private:
    std::string m_server;
    std::string m_database;
};

} // namespace

std::unique_ptr<Place> makePlace(Dialect dialect) {
    if (dialect == Dialect::Sqlite) {
        return std::make_unique<SqlitePlace>();
    }
    return std::make_unique<PostgresPlace>();
}

Place& OnEngine::place() {
    if (!m_place) {
        m_place = makePlace(GetParam());
    }
    return *m_place;
}

std::unique_ptr<Connection> OnEngine::connectMigrated() {
    standIn(migrated().copy(GetParam()));
    return place().connect();
}

std::string engineName(const testing::TestParamInfo<Dialect>& info) {
    return info.param == Dialect::Sqlite ? "Sqlite" : "Postgres";
}

} // namespace rw::sql::test
