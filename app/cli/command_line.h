// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/command.h"

#include <span>
#include <string>

namespace rw::cli {

/// A command line understood.
struct CommandLine {
    const Command* command = nullptr; ///< nothing: help for all of them, or the version
    Given given;
    bool help = false;
    bool version = false;
};

/// The words behind the program's name. Refusals: Missing {what} for a command, a needed option or an option's value,
/// a blank one too; UnknownKey {key, known} for a word that is none of them; ImpossibleValue for an option given
/// twice. `--help` is understood anywhere, whatever else is wrong.
[[nodiscard]] Result<CommandLine> parseCommandLine(std::span<const std::string> words);

} // namespace rw::cli
