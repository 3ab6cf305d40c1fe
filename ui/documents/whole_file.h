// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QByteArray>
#include <QFileDevice>
#include <QSaveFile>
#include <QString>

namespace rw::ui {

/// Writes a file whole or not at all; one that was there is kept until then. A device, such as /dev/full, is written to
/// directly. FileUnwritable {file, reason} for a path at which no file can be; throws FileLost when the disk gives way
/// while it is written.
[[nodiscard]] Result<void> writeWholeFile(const QString& path, const QByteArray& bytes);

// What a whole file is made of, for files that come into place together (file_set.h).

/// Opens the file and writes all of it. FileUnwritable {file, reason}; throws FileLost.
[[nodiscard]] Result<void> writeInto(QFileDevice& file, const QByteArray& bytes);
/// Puts a written file in its place. Throws FileLost.
void commitFile(QSaveFile& file);
/// FileUnwritable {file, reason}.
[[nodiscard]] tl::unexpected<Refusal> unwritable(const QString& path, const QString& reason);

} // namespace rw::ui
