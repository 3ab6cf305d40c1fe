// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/file_set.h"

#include "core/base/world_error.h"

#include <QFileInfo>

#include <utility>

namespace rw::ui {

namespace {
tl::unexpected<Refusal> unwritable(const QString& path, const QString& reason) {
    return refuse(Code::FileUnwritable, {{"file", path.toStdString()}, {"reason", reason.toStdString()}});
}

FileLost lost(const QSaveFile& file) {
    return FileLost(file.fileName().toStdString() + ": " + file.errorString().toStdString());
}
} // namespace

Result<void> FileSet::add(const QString& path, const QByteArray& bytes) {
    const QFileInfo there(path);
    if (there.exists() && !there.isFile()) {
        return unwritable(path, QStringLiteral("there is something that is no file"));
    }
    auto file = std::make_unique<QSaveFile>(path);
    // Without a buffer: what is kept back for later fails later, where Qt has forgotten why.
    if (!file->open(QIODevice::WriteOnly | QIODevice::Unbuffered)) {
        return unwritable(path, file->errorString());
    }
    for (qsizetype written = 0; written < bytes.size();) {
        const qint64 more = file->write(bytes.constData() + written, bytes.size() - written);
        if (more <= 0) {
            throw lost(*file);
        }
        written += more;
    }
    m_files.push_back(std::move(file));
    return {};
}

void FileSet::putInPlace() {
    for (const auto& file : m_files) {
        if (!file->commit()) {
            throw lost(*file);
        }
    }
    m_files.clear();
}

} // namespace rw::ui
