// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/new_file.h"

#include "core/base/world_error.h"
#include "core/sql/open_file.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <ctime>
#include <filesystem>
#include <string_view>
#include <utility>
#include <vector>

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

/// Puts the names in a folder on the disk. Some file systems do not know that of a folder and say so; nothing can be
/// done about it there.
void syncFolder(const std::filesystem::path& folder) {
    const int fd = open(folder.c_str(), O_RDONLY | O_CLOEXEC);
    if (fd >= 0) {
        fsync(fd);
        close(fd);
    }
}

void removeWithSqlitesFiles(const std::string& path) {
    for (const char* beside : {"", "-wal", "-shm", "-journal"}) {
        unlink((path + beside).c_str());
    }
}

/// Whether somebody is still making it. A lock of this kind ends with its process, however that ends, and has nothing
/// to do with the locks that SQLite holds.
bool isBeingMade(const std::string& path) {
    const int fd = open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK);
    if (fd < 0) {
        return true;
    }
    const bool free = flock(fd, LOCK_EX | LOCK_NB) == 0;
    close(fd);
    return !free;
}

bool isLeftOver(const std::string& path) {
    constexpr std::time_t kHour = 3600; // a ledger is made in seconds; its copy takes as long as the disk does
    struct stat facts {};
    if (lstat(path.c_str(), &facts) != 0 || !S_ISREG(facts.st_mode) || facts.st_uid != geteuid() ||
        facts.st_mtime > std::time(nullptr) - kHour) {
        return false;
    }
    bool leftOver = false;
    (void)OpenFile::unlessOpen(facts.st_dev, facts.st_ino, [&] { leftOver = !isBeingMade(path); });
    return leftOver;
}

/// "shop.ledger.new-XXXXXX" and "shop.ledger.version-2.new-XXXXXX" belong to shop.ledger.
bool isNewFileOf(std::string_view name, std::string_view target) {
    constexpr std::string_view kNew = ".new-";
    constexpr std::string_view kVersion = ".version-";
    constexpr std::size_t kRandom = 6;
    if (!name.starts_with(target) || name.size() < target.size() + kNew.size() + kRandom) {
        return false;
    }
    std::string_view rest = name.substr(target.size());
    if (rest.starts_with(kVersion)) {
        rest.remove_prefix(std::min(rest.find_first_not_of("0123456789", kVersion.size()), rest.size()));
    }
    return rest.starts_with(kNew) && rest.size() == kNew.size() + kRandom;
}

/// Listed before anything is done to them: a folder that changes meanwhile may be listed wrongly.
std::vector<std::string> newFilesOf(const std::string& target) {
    const std::filesystem::path path(target);
    std::vector<std::string> files;
    std::error_code error;
    for (std::filesystem::directory_iterator each(path.parent_path(), error), end; !error && each != end;
         each.increment(error)) {
        if (isNewFileOf(each->path().filename().string(), path.filename().string())) {
            files.push_back(each->path().string());
        }
    }
    return files;
}

} // namespace

NewFile::NewFile(std::string target)
    : m_target(std::move(target))
    , m_path(m_target + ".new-XXXXXX")
    , m_fd(mkostemp(m_path.data(), O_CLOEXEC)) {
    if (m_fd < 0) {
        throwSystemError(errno, "creating " + m_target);
    }
    fchmod(m_fd, S_IRUSR | S_IWUSR); // a umask may have taken the owner's bits away
    flock(m_fd, LOCK_EX | LOCK_NB);
}

NewFile::~NewFile() {
    if (m_fd >= 0) {
        close(m_fd);
    }
    if (!m_path.empty()) {
        removeWithSqlitesFiles(m_path);
    }
}

/// The descriptor goes before the file has its name: from then on a connection may have it open (see OpenFile).
void NewFile::finish() {
    const bool synced = fsync(m_fd) == 0;
    const int error = errno;
    close(std::exchange(m_fd, -1));
    if (!synced) {
        throwSystemError(error, "writing " + m_target);
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
    syncFolder(std::filesystem::path(m_target).parent_path());
}

std::size_t newNamesOf(const std::string& target) {
    const auto files = newFilesOf(target);
    return static_cast<std::size_t>(std::ranges::count_if(files, [&](const std::string& file) {
        std::error_code error;
        return std::filesystem::equivalent(file, target, error);
    }));
}

void sweepNewFiles(const std::string& target) {
    for (const std::string& file : newFilesOf(target)) {
        if (isLeftOver(file)) {
            removeWithSqlitesFiles(file);
        }
    }
}

} // namespace rw::sql
