// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/command.h"

#include <string>

namespace rw::cli {

/// What the program can do; with a command, what that one takes.
[[nodiscard]] std::string helpText(const Command* command);

} // namespace rw::cli
