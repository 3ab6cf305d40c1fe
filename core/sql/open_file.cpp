// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/open_file.h"

#include <sys/stat.h>

#include <mutex>
#include <set>

namespace rw::sql {

namespace {

struct Files {
    std::mutex mutex;
    std::multiset<std::pair<dev_t, ino_t>> open;
};

Files& files() {
    static Files all;
    return all;
}

} // namespace

OpenFile::OpenFile(const std::string& path) {
    struct stat facts {};
    if (stat(path.c_str(), &facts) == 0) {
        m_file = {facts.st_dev, facts.st_ino};
    }
    const std::lock_guard lock(files().mutex);
    files().open.insert(m_file);
}

OpenFile::~OpenFile() {
    const std::lock_guard lock(files().mutex);
    files().open.erase(files().open.find(m_file));
}

bool OpenFile::unlessOpen(dev_t device, ino_t inode, const std::function<void()>& look) {
    const std::lock_guard lock(files().mutex);
    if (files().open.contains({device, inode})) {
        return false;
    }
    look();
    return true;
}

} // namespace rw::sql
