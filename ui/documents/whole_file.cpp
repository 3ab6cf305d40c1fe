// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/whole_file.h"

#include "core/base/world_error.h"

#include <QSaveFile>

namespace rw::ui {

Result<void> writeWholeFile(const QString& path, const QByteArray& bytes) {
    QSaveFile file(path);
    // Without a buffer: what is kept back for later fails later, where Qt has forgotten why.
    if (!file.open(QIODevice::WriteOnly | QIODevice::Unbuffered)) {
        return refuse(Code::FileUnwritable,
                      {{"file", path.toStdString()}, {"reason", file.errorString().toStdString()}});
    }
    const auto lost = [&] { return FileLost(path.toStdString() + ": " + file.errorString().toStdString()); };
    for (qsizetype written = 0; written < bytes.size();) {
        const qint64 more = file.write(bytes.constData() + written, bytes.size() - written);
        if (more <= 0) {
            throw lost();
        }
        written += more;
    }
    if (!file.commit()) {
        throw lost();
    }
    return {};
}

} // namespace rw::ui
