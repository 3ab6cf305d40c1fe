// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/new_file.h"

#include "core/base/world_error.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>

namespace rw::sql {

namespace {

[[noreturn]] void throwSystemError(int error, const std::string& doing) {
    const auto what = std::string(std::strerror(error)) + " (" + doing + ")";
    if (error == ENOSPC || error == EDQUOT || error == EFBIG) {
        throw LedgerFull(what);
    }
    if (error == EACCES || error == EPERM || error == EROFS) {
        throw LedgerReadOnly(what);
    }
    throw LedgerLost(what);
}

/// Puts a file, or the names in a folder, on the disk. Some file systems do not know that of a folder and say so;
/// nothing can be done about it there.
bool sync(const std::string& path) {
    const int fd = open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (fd < 0) {
        return false;
    }
    const bool done = fsync(fd) == 0;
    close(fd);
    return done;
}

} // namespace

NewFile::NewFile(std::string target)
    : m_target(std::move(target))
    , m_path(m_target + ".new-XXXXXX") {
    const int fd = mkstemp(m_path.data());
    if (fd < 0) {
        throwSystemError(errno, "creating " + m_target);
    }
    fchmod(fd, S_IRUSR | S_IWUSR); // a umask may have taken the owner's bits away
    close(fd);
}

NewFile::~NewFile() {
    if (!m_path.empty()) {
        unlink(m_path.c_str());
        unlink((m_path + "-wal").c_str());
        unlink((m_path + "-shm").c_str());
        unlink((m_path + "-journal").c_str());
    }
}

void NewFile::finish() {
    if (!sync(m_path)) {
        throwSystemError(errno, "writing " + m_target);
    }
}

bool NewFile::publishUnlessTaken() {
    finish();
    if (renameat2(AT_FDCWD, m_path.c_str(), AT_FDCWD, m_target.c_str(), RENAME_NOREPLACE) == 0) {
        published();
        return true;
    }
    if (errno == EEXIST) {
        return false;
    }
    if (errno != EINVAL && errno != ENOSYS) {
        throwSystemError(errno, "naming " + m_target);
    }
    // A file system that cannot do that may still know hard links, which do not replace either.
    if (link(m_path.c_str(), m_target.c_str()) == 0) {
        unlink(m_path.c_str());
        published();
        return true;
    }
    if (errno == EEXIST) {
        return false;
    }
    throwSystemError(errno, "naming " + m_target);
}

void NewFile::publishOver() {
    finish();
    if (rename(m_path.c_str(), m_target.c_str()) != 0) {
        throwSystemError(errno, "naming " + m_target);
    }
    published();
}

void NewFile::published() {
    m_path.clear();
    sync(std::filesystem::path(m_target).parent_path());
}

} // namespace rw::sql
