// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QByteArray>
#include <QString>

namespace rw::ui {

/// Writes a file whole or not at all; one that was there is kept until then. A device, such as /dev/full, is written to
/// directly. FileUnwritable {file, reason} for a path at which no file can be; throws FileLost when the disk gives way
/// while it is written.
[[nodiscard]] Result<void> writeWholeFile(const QString& path, const QByteArray& bytes);

} // namespace rw::ui
