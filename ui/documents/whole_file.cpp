// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/whole_file.h"

#include "core/base/world_error.h"

#include <QFileInfo>

namespace rw::ui {

namespace {
FileLost lost(const QFileDevice& file) {
    return FileLost(file.fileName().toStdString() + ": " + file.errorString().toStdString());
}
} // namespace

tl::unexpected<Refusal> unwritable(const QString& path, const QString& reason) {
    return refuse(Code::FileUnwritable, {{"file", path.toStdString()}, {"reason", reason.toStdString()}});
}

Result<void> writeInto(QFileDevice& file, const QByteArray& bytes) {
    // Without a buffer: what is kept back for later fails later, where Qt has forgotten why.
    if (!file.open(QIODevice::WriteOnly | QIODevice::Unbuffered)) {
        return unwritable(file.fileName(), file.errorString());
    }
    for (qsizetype written = 0; written < bytes.size();) {
        const qint64 more = file.write(bytes.constData() + written, bytes.size() - written);
        if (more <= 0) {
            throw lost(file);
        }
        written += more;
    }
    return {};
}

void commitFile(QSaveFile& file) {
    if (!file.commit()) {
        throw lost(file);
    }
}

Result<void> writeWholeFile(const QString& path, const QByteArray& bytes) {
    const QFileInfo there(path);
    if (there.exists() && !there.isFile()) {
        // A QSaveFile would put a file in the place of a device, if this user may.
        QFile device(path);
        return there.isDir() ? unwritable(path, QStringLiteral("it is a folder")) : writeInto(device, bytes);
    }
    QSaveFile file(path);
    const auto written = writeInto(file, bytes);
    if (written) {
        commitFile(file);
    }
    return written;
}

} // namespace rw::ui
