// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/file_input.h"

#include <QFile>

#include <cstdio>

namespace rw::cli {

namespace {
constexpr qint64 kMost = (1 << 20) + 1; // one more than is read as a request, so that too much is noticed
}

Result<std::string> readInput(const std::string& path) {
    QFile file;
    const bool standardInput = path == "-";
    const QString name = QString::fromStdString(path);
    bool open = false;
    if (standardInput) {
        open = file.open(stdin, QIODevice::ReadOnly);
    } else {
        file.setFileName(name);
        open = file.open(QIODevice::ReadOnly);
    }
    const std::string shown = standardInput ? "standard input" : path;
    if (!open) {
        return refuse(Code::FileUnreadable, {{"file", shown}, {"reason", file.errorString().toStdString()}});
    }
    QByteArray bytes;
    while (bytes.size() < kMost) {
        const QByteArray more = file.read(kMost - bytes.size());
        if (more.isEmpty()) {
            break;
        }
        bytes += more;
    }
    if (file.error() != QFileDevice::NoError) {
        return refuse(Code::FileUnreadable, {{"file", shown}, {"reason", file.errorString().toStdString()}});
    }
    return bytes.toStdString();
}

} // namespace rw::cli
