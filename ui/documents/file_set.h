// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QByteArray>
#include <QSaveFile>
#include <QString>

#include <memory>
#include <vector>

namespace rw::ui {

/// Files that come into place together: each is written under a name of its own first, and none of them is there before
/// all are whole. A set that is dropped before leaves nothing, and what was there stays.
class FileSet {
public:
    /// FileUnwritable {file, reason} for a path at which no file can be; throws FileLost when the disk gives way.
    [[nodiscard]] Result<void> add(const QString& path, const QByteArray& bytes);
    /// Each in place of a file that has its name. Throws FileLost.
    void putInPlace();

private:
    std::vector<std::unique_ptr<QSaveFile>> m_files;
};

} // namespace rw::ui
