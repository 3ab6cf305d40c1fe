// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <string>

namespace rw::cli {

/// The bytes of a file, or of standard input when `path` is "-": at most a little over 1 MB, which is more than any
/// request may have. FileUnreadable {file, reason}.
[[nodiscard]] Result<std::string> readInput(const std::string& path);

} // namespace rw::cli
