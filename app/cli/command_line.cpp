// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command_line.h"

#include "app/cli/commands.h"

#include <algorithm>

namespace rw::cli {

namespace {
template<class Range, class Name>
std::string listed(const Range& range, Name name) {
    std::string text;
    for (const auto& each : range) {
        text += (text.empty() ? "" : ", ") + std::string(name(each));
    }
    return text;
}

const Command* commandCalled(std::string_view name) {
    const auto& all = commands();
    const auto found = std::ranges::find(all, name, &Command::name);
    return found == all.end() ? nullptr : &*found;
}

bool asksForHelp(std::string_view word) { return word == "--help" || word == "-h"; }

Result<Given> optionsOf(const Command& command, std::span<const std::string> words) {
    Given given;
    for (std::size_t i = 0; i < words.size(); ++i) {
        // "--ledger shop" and "--ledger=shop" are the same.
        const std::string& word = words[i];
        const auto equals = word.starts_with("--") ? word.find('=') : std::string::npos;
        const std::string name = word.substr(0, equals);
        const auto option = std::ranges::find(command.options, std::string_view(name), &Option::name);
        if (option == command.options.end()) {
            return refuse(Code::UnknownKey,
                          {{"key", word},
                           {"known", listed(command.options, [](const Option& o) { return o.name; }) + ", --help"}});
        }
        if (given.has(name)) {
            return refuse(Code::ImpossibleValue, {{"key", name}, {"text", "given twice"}, {"expected", "given once"}});
        }
        if (option->value.empty()) {
            if (equals != std::string::npos) {
                return refuse(Code::UnknownKey, {{"key", word}, {"known", name}});
            }
            given.set(name, {});
            continue;
        }
        std::string value;
        if (equals != std::string::npos) {
            value = word.substr(equals + 1);
        } else if (i + 1 < words.size()) {
            value = words[++i];
        }
        if (value.find_first_not_of(" \t\r\n") == std::string::npos) {
            return refuse(Code::Missing, {{"what", "value of " + name}});
        }
        given.set(name, std::move(value));
    }
    for (const Option& option : command.options) {
        if (option.needed && !given.has(option.name)) {
            return refuse(Code::Missing, {{"what", "option " + std::string(option.name)}});
        }
    }
    return given;
}
} // namespace

Result<CommandLine> parseCommandLine(std::span<const std::string> words) {
    CommandLine line;
    line.command = words.empty() ? nullptr : commandCalled(words.front());
    if (std::ranges::any_of(words, asksForHelp)) {
        line.help = true;
        return line;
    }
    if (words.size() == 1 && words.front() == "--version") {
        line.version = true;
        return line;
    }
    if (words.empty()) {
        return refuse(Code::Missing, {{"what", "command"}});
    }
    if (line.command == nullptr) {
        return refuse(Code::UnknownKey,
                      {{"key", words.front()}, {"known", listed(commands(), [](const Command& c) { return c.name; })}});
    }
    auto given = optionsOf(*line.command, words.subspan(1));
    if (!given) {
        return tl::unexpected(given.error());
    }
    line.given = *std::move(given);
    return line;
}

} // namespace rw::cli
