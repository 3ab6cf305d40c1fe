// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/sqlite_copy.h"

#include "core/sql/connection.h"
#include "core/sql/new_file.h"
#include "core/sql/sqlite_error.h"

#include <sqlite3.h>

#include <memory>

namespace rw::sql {

namespace {

struct CloseSqlite {
    void operator()(sqlite3* handle) const { sqlite3_close(handle); }
};
using Handle = std::unique_ptr<sqlite3, CloseSqlite>;

[[noreturn]] void fail(sqlite3* handle, const std::string& doing) {
    throwSqliteError(sqlite3_extended_errcode(handle), sqlite3_system_errno(handle), sqlite3_errmsg(handle), doing);
}

Handle open(const std::string& path, int flags) {
    sqlite3* raw = nullptr;
    const int code = sqlite3_open_v2(path.c_str(), &raw, flags, nullptr);
    Handle handle(raw);
    if (code != SQLITE_OK) {
        fail(handle.get(), "opening " + path);
    }
    sqlite3_busy_timeout(handle.get(), kTurnMilliseconds);
    return handle;
}

} // namespace

void copySqlite(const std::string& from, const std::string& to) {
    NewFile file(to);
    {
        const auto source = open(from, SQLITE_OPEN_READWRITE);
        const auto target = open(file.path(), SQLITE_OPEN_READWRITE);
        auto* backup = sqlite3_backup_init(target.get(), "main", source.get(), "main");
        if (backup == nullptr) {
            fail(target.get(), "copying " + from);
        }
        sqlite3_backup_step(backup, -1);
        if (sqlite3_backup_finish(backup) != SQLITE_OK) {
            fail(target.get(), "copying " + from);
        }
    }
    file.publishOver();
}

} // namespace rw::sql
