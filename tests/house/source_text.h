// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace rw::house {

/// One `#include`, as written.
struct Include {
    std::string name;
    bool quoted = false; ///< "name" rather than <name>
    int line = 0;        ///< from 1
};

/// C++ source with comments and the insides of literals blanked out, line breaks kept. Include lines keep
/// their names, since those are not literals to the compiler either.
std::string codeOnly(std::string_view source);

/// The includes of `code`, which codeOnly gave back.
std::vector<Include> includesOf(std::string_view code);

/// Lines of `code` that hold anything but white space.
int codeLines(std::string_view code);

} // namespace rw::house
