// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>

namespace rw::sql {

/// A file that is made under a name of its own beside `target` (mode 0600, whatever the umask is) and gets the target's
/// name when it is whole. Destroyed before that, it and SQLite's files beside it are gone. A process that is killed
/// leaves it; sweepNewFiles finds it then.
class NewFile {
public:
    explicit NewFile(std::string target); ///< throws WorldError
    ~NewFile();
    NewFile(const NewFile&) = delete;
    NewFile& operator=(const NewFile&) = delete;

    [[nodiscard]] const std::string& path() const { return m_path; }
    /// Gives it the target's name. False when there is a file of that name by now, which stays as it is.
    [[nodiscard]] bool publishUnlessTaken();
    /// Gives it the target's name in place of whatever has it.
    void publishOver();

private:
    void finish();
    void published();
    std::string m_target;
    std::string m_path;
    int m_fd; ///< locked until the file has its name, so that nobody sweeps it away
};

/// How many names of new files for `target` lead to the same file as it does: where a file system cannot rename without
/// replacing, a ledger has two for a moment, and keeps them when the process is killed then.
[[nodiscard]] std::size_t newNamesOf(const std::string& target);

/// Removes what killed processes left of new files for `target` and for the copies beside it: those of this user that
/// are an hour old and that no process is still making. What cannot be removed stays.
void sweepNewFiles(const std::string& target);

} // namespace rw::sql
