// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/stat.h>

#include <optional>
#include <string>

namespace rw::sql {

/// Which file a path leads to. An open file lives on after it was removed, and what is written to it then is lost.
class FileIdentity {
public:
    [[nodiscard]] static std::optional<FileIdentity> of(const std::string& path) {
        struct stat facts {};
        if (stat(path.c_str(), &facts) != 0) {
            return std::nullopt;
        }
        return FileIdentity(path, facts.st_dev, facts.st_ino);
    }
    /// Whether the path still leads there.
    [[nodiscard]] bool stands() const {
        const auto now = of(m_path);
        return now && now->m_device == m_device && now->m_inode == m_inode;
    }

private:
    FileIdentity(std::string path, dev_t device, ino_t inode)
        : m_path(std::move(path))
        , m_device(device)
        , m_inode(inode) {}
    std::string m_path;
    dev_t m_device;
    ino_t m_inode;
};

} // namespace rw::sql
