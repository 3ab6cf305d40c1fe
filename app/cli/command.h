// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace rw::cli {

/// What a command went well with, as the shell sees it. Documented in `--help`.
enum ExitCode {
    kDone = 0,
    kAnswerIsNo = 1,  ///< it looked, and something is wrong or nobody is there
    kRefused = 2,     ///< the request cannot be met; nothing was written to standard output
    kWorldBroken = 3, ///< the ledger or the machine gave way
};

/// An option as it is written behind a command.
struct Option {
    std::string_view name;  ///< "--ledger"
    std::string_view value; ///< what stands behind it, "" for a flag
    std::string_view help;
    bool needed = false;
};

/// The options that were given.
class Given {
public:
    [[nodiscard]] bool has(std::string_view name) const { return m_values.contains(std::string(name)); }
    [[nodiscard]] std::optional<std::string> maybe(std::string_view name) const {
        const auto found = m_values.find(std::string(name));
        return found == m_values.end() ? std::nullopt : std::optional(found->second);
    }
    /// Precondition: the option is needed by its command.
    [[nodiscard]] const std::string& value(std::string_view name) const { return m_values.at(std::string(name)); }
    void set(std::string_view name, std::string value) { m_values[std::string(name)] = std::move(value); }

private:
    std::map<std::string, std::string> m_values;
};

/// What a command has to say. Nothing is written before it has all been found, so a command that is refused half way
/// leaves standard output empty.
struct Answer {
    std::string out;
    std::string aside = {}; ///< for standard error
    int exitCode = kDone;
};

struct Command {
    std::string_view name;
    std::string_view summary; ///< one line
    std::string_view details; ///< more, for its own help
    std::vector<Option> options;
    bool (*paints)(const Given&); ///< whether a font and a painter will be needed
    Result<Answer> (*run)(const Given&);
};

} // namespace rw::cli
