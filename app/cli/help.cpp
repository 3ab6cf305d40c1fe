// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/help.h"

#include "app/cli/commands.h"

#include <algorithm>

namespace rw::cli {

namespace {
constexpr std::size_t kWidth = 80;

/// Text broken between words; the first line begins where the cursor is, the others `indent` in.
std::string folded(std::string_view text, std::size_t indent) {
    std::string out;
    std::size_t column = indent;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        const std::string_view word = text.substr(at, end - at);
        if (column > indent && column + 1 + word.size() > kWidth) {
            out += "\n" + std::string(indent, ' ');
            column = indent;
        } else if (column > indent) {
            out += ' ';
            ++column;
        }
        out += word;
        column += word.size();
        at = end + 1;
    }
    return out;
}

std::string row(std::string_view head, std::string_view text, std::size_t indent) {
    std::string line = "  " + std::string(head);
    if (line.size() + 2 > indent) {
        line += "\n" + std::string(indent, ' ');
    } else {
        line += std::string(indent - line.size(), ' ');
    }
    return line + folded(text, indent) + "\n";
}

std::string spelled(const Option& option) {
    return std::string(option.name) + (option.value.empty() ? "" : " " + std::string(option.value));
}

std::string usage(const Command& command) {
    std::string line = std::string(command.name);
    for (const Option& option : command.options) {
        line += option.needed ? " " + spelled(option) : " [" + spelled(option) + "]";
    }
    return line;
}

constexpr std::string_view kCodes = "Exit codes:\n"
                                    "  0  done\n"
                                    "  1  it looked, and the answer is no: check found something wrong, history\n"
                                    "     found nobody\n"
                                    "  2  the request cannot be met: standard error says why in one sentence,\n"
                                    "     standard output is empty\n"
                                    "  3  the ledger or the computer gave way: no room, server gone\n";
} // namespace

std::string helpText(const Command* command) {
    std::string text;
    if (command == nullptr) {
        text = "reelwright-cli: the work of a racket-stringing shop, without windows\n\n"
               "usage: reelwright-cli COMMAND [OPTION...]\n"
               "       reelwright-cli COMMAND --help\n"
               "       reelwright-cli --version\n\n";
        for (const Command& each : commands()) {
            text += row(each.name, each.summary, 12);
        }
        text += "\nA ledger is the path of a file or a postgresql:// address. Text is for people;\n"
                "--json gives the same facts to programs.\n\n";
        return text + std::string(kCodes);
    }
    text = "usage: reelwright-cli " + folded(usage(*command), 22) + "\n\n";
    text += folded(command->summary, 0) + "\n";
    if (!command->details.empty()) {
        text += "\n" + folded(command->details, 0) + "\n";
    }
    text += "\n";
    for (const Option& option : command->options) {
        text += row(spelled(option), option.help, 20);
    }
    return text + "\n" + std::string(kCodes);
}

} // namespace rw::cli
