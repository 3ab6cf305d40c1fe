// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/file_set.h"

#include "ui/documents/whole_file.h"

#include <QFileInfo>

#include <utility>

namespace rw::ui {

Result<void> FileSet::add(const QString& path, const QByteArray& bytes) {
    const QFileInfo there(path);
    if (there.exists() && !there.isFile()) {
        return unwritable(path, QStringLiteral("there is something that is no file"));
    }
    auto file = std::make_unique<QSaveFile>(path);
    if (const auto written = writeInto(*file, bytes); !written) {
        return written;
    }
    m_files.push_back(std::move(file));
    return {};
}

void FileSet::putInPlace() {
    for (const auto& file : m_files) {
        commitFile(*file);
    }
    m_files.clear();
}

} // namespace rw::ui
