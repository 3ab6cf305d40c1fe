// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sql/dialect.h"
#include "core/sql/open_file.h"

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QString>

#include <cstdint>
#include <map>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

struct sqlite3;

namespace rw::sql {

/// How long a connection waits for its turn before LedgerBusy.
constexpr int kTurnMilliseconds = 5000;

/// One connection to one database, under a name of its own. Used on the thread that opened it, and on no other.
class Connection {
public:
    /// Opens the file as it is; a missing one is created empty by SQLite. Foreign keys, recursive triggers, full
    /// synchronisation and the busy timeout are set and read back. Throws WorldError.
    [[nodiscard]] static std::unique_ptr<Connection> openSqlite(const std::string& path);
    /// `address` is a postgresql:// address. Throws LedgerLost when no server answers.
    [[nodiscard]] static std::unique_ptr<Connection> openPostgres(const std::string& address);

    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    [[nodiscard]] Dialect dialect() const { return m_dialect; }
    [[nodiscard]] QSqlDatabase& database() { return m_database; }
    /// SQLite's own handle, for what Qt has no call for. Null on PostgreSQL.
    [[nodiscard]] sqlite3* sqliteHandle() const;
    /// What the operating system said when SQLite last failed; 0 on PostgreSQL.
    [[nodiscard]] int systemError() const;

    /// One statement without placeholders; results are dropped. Throws WorldError.
    void execute(std::string_view sql);
    /// The first column of the first row as text; "" when there is none. For settings and catalogues.
    [[nodiscard]] std::string scalar(std::string_view sql);
    /// Every row as texts ("" for NULL). For settings and catalogues.
    [[nodiscard]] std::vector<std::vector<std::string>> rows(std::string_view sql);

    /// Said by Work, which is the only way into a transaction: there is at most one.
    void enterWork();
    void leaveWork() { m_inWork = false; }
    void countOwnTurn() { ++m_ownTurns; }
    /// How many writing transactions this connection has made last; counted on PostgreSQL only.
    [[nodiscard]] std::int64_t ownTurns() const { return m_ownTurns; }

    /// A query of queries/, prepared once a connection. Statement borrows and gives back.
    struct Prepared {
        QSqlQuery query;
        std::vector<QString> placeholders;               ///< each once, with its colon
        std::map<std::string, int, std::less<>> columns; ///< filled by the first run
    };
    /// Throws LedgerLost when the server has closed the connection.
    void mustBeOpen() const;
    [[nodiscard]] std::unique_ptr<Prepared> borrow(std::string_view queryName);
    void giveBack(std::string_view queryName, std::unique_ptr<Prepared> prepared);

private:
    Connection(Dialect dialect, const QString& driver);
    void open(const QString& what);
    void set(std::string_view setting, std::string_view value);
    [[nodiscard]] QSqlQuery run(std::string_view sql);

    std::unique_ptr<OpenFile> m_file; ///< of SQLite; outlives the database
    Dialect m_dialect;
    QString m_name;
    QSqlDatabase m_database;
    bool m_inWork = false;
    std::int64_t m_ownTurns = 0;
    std::map<std::string, std::unique_ptr<Prepared>, std::less<>> m_prepared;
};

} // namespace rw::sql
