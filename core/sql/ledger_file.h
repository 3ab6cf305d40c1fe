// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <optional>
#include <string>

namespace rw::sql {

/// Stands in the header of every ledger file ("Rlwt"), so that another program's database is told from ours before
/// SQLite opens it. Set while the file is still under another name.
constexpr std::int32_t kApplicationId = 0x526c7774;

/// What can be known of a ledger file by looking, without SQLite and without touching it.
struct LedgerFile {
    std::string path; ///< absolute, symbolic links followed
    bool exists = false;
};

/// Refusals: LedgerUnreachable (a folder, no such folder, not to be entered; a file with a second name, because SQLite
/// keeps its log under the name that it was given: sqlite.org, "How To Corrupt An SQLite Database File", 2.6),
/// LedgerForeign (no SQLite database, or not of this program; an empty file too: a ledger gets its name when it is
/// whole, so an empty one is not ours, or was), LedgerNewer, LedgerDamaged (shorter than its header says),
/// LedgerNotWritable (the file, or its folder, where SQLite keeps its log), LedgerOnNetwork. `known` is the schema
/// version that this program writes.
[[nodiscard]] Result<LedgerFile> inspectLedgerFile(const std::string& given, int known);

/// The name of a file system whose disk is in another machine, by the type that statfs() gives. SQLite's log needs
/// memory and locks shared between processes, which those do not keep.
[[nodiscard]] std::optional<std::string> networkFileSystem(std::uint32_t type);

} // namespace rw::sql
