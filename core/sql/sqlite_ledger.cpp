// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/sqlite_ledger.h"

#include "core/base/world_error.h"
#include "core/sql/first_facts.h"
#include "core/sql/ledger_file.h"
#include "core/sql/migration.h"
#include "core/sql/new_file.h"
#include "core/sql/sqlite_copy.h"

namespace rw::sql {

namespace {

void useLog(Connection& connection) {
    if (const auto mode = connection.scalar("PRAGMA journal_mode = WAL"); mode != "wal") {
        throw WorldError("the ledger's log is " + mode + ", not wal");
    }
}

void createLedger(const std::string& path, Instant now) {
    NewFile file(path);
    {
        const auto connection = Connection::openSqlite(file.path());
        connection->execute("PRAGMA application_id = " + std::to_string(kApplicationId));
        useLog(*connection);
        migrate(*connection, migrations(Dialect::Sqlite), now);
        writeFirstFacts(*connection, now);
        // Closing would move the log into the file too, but would not say when the disk had no room for it.
        if (connection->scalar("PRAGMA wal_checkpoint(TRUNCATE)") != "0") {
            throw LedgerBusy("somebody reads the new ledger before it has its name");
        }
    }
    (void)file.publishUnlessTaken(); // somebody else's, written meanwhile, serves as well
}

/// Reads before anything is written: a ledger that is refused stays as it was.
Result<void> checkContents(Connection& connection, const std::string& given) {
    const auto damaged = [&](std::string reason) {
        return refuse(Code::LedgerDamaged, {{"ledger", given}, {"reason", std::move(reason)}});
    };
    if (const auto verdict = connection.scalar("PRAGMA quick_check(1)"); verdict != "ok") {
        return damaged(verdict);
    }
    const int found = schemaVersion(connection);
    if (found > latestVersion()) {
        return refuse(Code::LedgerNewer,
                      {{"ledger", given}, {"found", std::int64_t{found}}, {"known", std::int64_t{latestVersion()}}});
    }
    if (found == 0) {
        return damaged("its tables are missing");
    }
    return {};
}

Result<std::unique_ptr<Connection>> openExisting(const std::string& path, const std::string& given, Instant now) {
    auto connection = Connection::openSqlite(path);
    if (auto contents = checkContents(*connection, given); !contents) {
        return tl::unexpected(contents.error());
    }
    useLog(*connection);
    migrate(*connection, migrations(Dialect::Sqlite), now,
            [&](int version) { copySqlite(path, path + ".version-" + std::to_string(version)); });
    return connection;
}

} // namespace

Result<std::unique_ptr<Connection>> openSqliteLedger(const std::string& path, IfMissing ifMissing) {
    const auto now = SystemClock().now();
    auto file = inspectLedgerFile(path, latestVersion());
    if (!file) {
        return tl::unexpected(file.error());
    }
    const auto refused = [&](Code code, const std::string& reason) {
        return refuse(code, {{"ledger", path}, {"reason", reason}});
    };
    if (!file->exists && ifMissing == IfMissing::Refuse) {
        return refused(Code::LedgerUnreachable, "there is no such file");
    }
    sweepNewFiles(file->path);
    // Nobody has worked here yet and nothing of it can be lost: what stands in the way is a refusal.
    try {
        if (!file->exists) {
            createLedger(file->path, now);
        }
        return openExisting(file->path, path, now);
    } catch (const LedgerCorrupt& error) {
        return refused(Code::LedgerDamaged, error.what());
    } catch (const LedgerReadOnly& error) {
        return refused(Code::LedgerNotWritable, error.what());
    } catch (const LedgerLost& error) {
        return refused(Code::LedgerUnreachable, error.what());
    }
}

} // namespace rw::sql
