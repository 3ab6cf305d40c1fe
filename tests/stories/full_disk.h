// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/sql/engines.h"

#include <string>

namespace rw::stories {

/// A disk that fills up at a chosen write. On SQLite it is the file system below the library that has no room; on
/// PostgreSQL the server says so in its own words (class 53, disk_full), at the chosen row.
class FullDisk {
public:
    /// Precondition: the ledger at `place` is migrated and closed; at most one lives at a time.
    explicit FullDisk(sql::test::Place& place);
    ~FullDisk();
    FullDisk(const FullDisk&) = delete;
    FullDisk& operator=(const FullDisk&) = delete;

    /// There is room for `writes` more, and for none after them.
    void fillAfter(int writes);
    /// Gives the room back; whether something met the full disk since.
    bool makeRoom();

private:
    sql::test::Place& m_place;
    bool m_sqlite;
    bool m_filling = false; ///< on PostgreSQL: between fillAfter() and makeRoom()
};

} // namespace rw::stories
