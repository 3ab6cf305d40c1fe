// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/connection.h"

#include "core/base/world_error.h"
#include "core/sql/engine_error.h"
#include "core/sql/postgres_address.h"
#include "core/sql/resource_text.h"
#include "core/sql/sql_scanner.h"

#include <QSqlDriver>
#include <QSqlError>
#include <QSqlRecord>
#include <QVariant>

#include <sqlite3.h>

#include <algorithm>
#include <atomic>
#include <stdexcept>

namespace rw::sql {

namespace {

QString qstring(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

QString freshName() {
    static std::atomic<int> count{0};
    return QStringLiteral("ledger-%1").arg(++count);
}

} // namespace

Connection::Connection(Dialect dialect, const QString& driver)
    : m_dialect(dialect)
    , m_name(freshName())
    , m_database(QSqlDatabase::addDatabase(driver, m_name)) {
    if (!m_database.isValid()) {
        throw LedgerLost("Qt's driver " + driver.toStdString() + " is not installed");
    }
}

Connection::~Connection() {
    m_database.close();
    m_database = QSqlDatabase(); // removeDatabase wants no copy left
    QSqlDatabase::removeDatabase(m_name);
    // Only now the prepared queries go: with a lost server behind them each would complain that it cannot be freed.
}

void Connection::open(const QString& what) {
    if (!m_database.open()) {
        throwEngineError(*this, m_database.lastError(), "opening " + what.toStdString());
    }
}

std::unique_ptr<Connection> Connection::openSqlite(const std::string& path) {
    std::unique_ptr<Connection> connection(new Connection(Dialect::Sqlite, QStringLiteral("QSQLITE")));
    connection->m_file = std::make_unique<OpenFile>(path);
    connection->m_database.setDatabaseName(qstring(path));
    connection->open(qstring(path));
    connection->set("busy_timeout", std::to_string(kTurnMilliseconds));
    connection->set("foreign_keys", "1");
    connection->set("recursive_triggers", "1");
    connection->set("synchronous", "2"); // FULL: a commit has reached the disk
    return connection;
}

std::unique_ptr<Connection> Connection::openPostgres(const std::string& address) {
    const auto parts = PostgresAddress::parse(address);
    if (!parts) {
        throw LedgerLost("not an address of a PostgreSQL database");
    }
    std::unique_ptr<Connection> connection(new Connection(Dialect::Postgres, QStringLiteral("QPSQL")));
    auto& database = connection->m_database;
    database.setHostName(parts->host);
    if (parts->port > 0) {
        database.setPort(parts->port);
    }
    database.setUserName(parts->user);
    database.setPassword(parts->password);
    database.setDatabaseName(parts->database);
    database.setConnectOptions(parts->options);
    connection->open(parts->database);
    connection->set("lock_timeout", std::to_string(kTurnMilliseconds / 1000) + "s");
    connection->set("client_min_messages", "warning"); // notices would go to standard error
    connection->set("synchronous_commit", "on");
    connection->set("standard_conforming_strings", "on");
    // A station that hangs in the middle of its work must not hold up the others for ever.
    connection->set("idle_in_transaction_session_timeout", "1min");
    return connection;
}

void Connection::set(std::string_view setting, std::string_view value) {
    const std::string name(setting);
    const auto wanted = std::string(value);
    std::string found;
    if (m_dialect == Dialect::Sqlite) {
        execute("PRAGMA " + name + " = " + wanted);
        found = scalar("PRAGMA " + name);
    } else {
        execute("SET " + name + " TO '" + wanted + "'");
        found = scalar("SELECT current_setting('" + name + "')");
    }
    if (found != wanted) {
        throw WorldError("the setting " + name + " is " + found + ", not " + wanted);
    }
}

sqlite3* Connection::sqliteHandle() const {
    if (m_dialect != Dialect::Sqlite || !m_database.isOpen()) {
        return nullptr;
    }
    const QVariant handle = m_database.driver()->handle();
    return handle.isValid() && qstrcmp(handle.typeName(), "sqlite3*") == 0
               ? *static_cast<sqlite3* const*>(handle.constData())
               : nullptr;
}

int Connection::systemError() const {
    auto* handle = sqliteHandle();
    return handle == nullptr ? 0 : sqlite3_system_errno(handle);
}

void Connection::mustBeOpen() const {
    if (!m_database.isOpen()) { // QPSQL closes it when the server is gone
        throw LedgerLost("the connection is closed");
    }
}

QSqlQuery Connection::run(std::string_view sql) {
    mustBeOpen();
    QSqlQuery query(m_database);
    if (m_dialect == Dialect::Sqlite) {
        query.setForwardOnly(true);
    }
    if (!query.exec(qstring(sql))) {
        throwEngineError(*this, query.lastError(), sql.substr(0, 60));
    }
    return query;
}

void Connection::execute(std::string_view sql) { run(sql).finish(); }

std::string Connection::scalar(std::string_view sql) {
    const auto all = rows(sql);
    return all.empty() || all.front().empty() ? std::string() : all.front().front();
}

std::vector<std::vector<std::string>> Connection::rows(std::string_view sql) {
    auto query = run(sql);
    std::vector<std::vector<std::string>> result;
    while (query.next()) {
        auto& row = result.emplace_back();
        for (int column = 0; column < query.record().count(); ++column) {
            row.push_back(query.value(column).toString().toStdString());
        }
    }
    if (query.lastError().isValid()) {
        throwEngineError(*this, query.lastError(), sql.substr(0, 60));
    }
    return result;
}

void Connection::enterWork() {
    if (m_inWork) {
        throw std::logic_error("a transaction inside a transaction");
    }
    m_inWork = true;
}

std::unique_ptr<Connection::Prepared> Connection::borrow(std::string_view queryName) {
    mustBeOpen();
    if (const auto found = m_prepared.find(queryName); found != m_prepared.end()) {
        auto prepared = std::move(found->second);
        m_prepared.erase(found);
        return prepared;
    }
    // Comments go before Qt looks for placeholders: it would take an apostrophe in one for a quote.
    const auto text = queryText(queryName, m_dialect);
    auto prepared = std::make_unique<Prepared>();
    std::string sql;
    for (const SqlToken& token : scanSql(text, m_dialect)) {
        if (token.kind == SqlToken::Kind::Comment || token.text == ";") {
            continue;
        }
        sql += token.text;
        const auto name = qstring(token.text);
        auto& known = prepared->placeholders;
        if (token.kind == SqlToken::Kind::Placeholder && std::find(known.begin(), known.end(), name) == known.end()) {
            known.push_back(name);
        }
    }
    prepared->query = QSqlQuery(m_database);
    // QPSQL would hold the connection until the last row is read; SQLite would keep every row twice.
    prepared->query.setForwardOnly(m_dialect == Dialect::Sqlite);
    if (!prepared->query.prepare(qstring(sql))) {
        throwEngineError(*this, prepared->query.lastError(), queryName);
    }
    return prepared;
}

void Connection::giveBack(std::string_view queryName, std::unique_ptr<Prepared> prepared) {
    prepared->query.finish();
    m_prepared.insert_or_assign(std::string(queryName), std::move(prepared));
}

} // namespace rw::sql
