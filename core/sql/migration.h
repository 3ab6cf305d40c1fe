// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/sql/connection.h"

#include <functional>
#include <string>
#include <vector>

namespace rw::sql {

/// One step of the schema: migrations/NNNN_name.sql and then NNNN_name.<dialect>.sql, either of which may be missing.
struct Migration {
    int version;
    std::string name;
    std::vector<std::string> statements;
};

/// All steps, 1, 2, 3 without a gap. Throws std::logic_error for files that do not line up.
[[nodiscard]] std::vector<Migration> migrations(Dialect dialect);

/// The version that this program writes.
[[nodiscard]] int latestVersion();

/// The version of an open database; 0 while it has no tables of ours.
[[nodiscard]] int schemaVersion(Connection& connection);

/// Called inside the first transaction, before its first statement, with the version that is about to change: nobody
/// else writes then. Not called for an empty database.
using BeforeChange = std::function<void(int version)>;

/// Brings the database to the last of `steps`, each in a transaction of its own; steps that another process took
/// meanwhile are left out. Throws WorldError; a step that failed has left nothing behind.
void migrate(Connection& connection, const std::vector<Migration>& steps, Instant now,
             const BeforeChange& beforeChange = {});

} // namespace rw::sql
