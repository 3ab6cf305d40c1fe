// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/types.h>

#include <functional>
#include <string>
#include <utility>

namespace rw::sql {

/// A SQLite file that a connection of this process has open, from before SQLite opens it until after SQLite closed it.
///
/// A process that closes any descriptor of a file loses all its locks on it, also those that SQLite holds through
/// another one (sqlite.org, "How To Corrupt An SQLite Database File", 2.2). Another process may then take the log away
/// that this one still writes to. So nobody may open such a file beside SQLite, and who wants to asks here.
class OpenFile {
public:
    explicit OpenFile(const std::string& path); ///< a file that is not there yet is not remembered
    ~OpenFile();
    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;

    /// Runs `look`, which opens and closes the file, unless a connection has it open; none opens it meanwhile. False
    /// when one has.
    static bool unlessOpen(dev_t device, ino_t inode, const std::function<void()>& look);

private:
    std::pair<dev_t, ino_t> m_file{0, 0};
};

} // namespace rw::sql
