// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "tests/house/qt_headers.h"

namespace rw::house {

/// Something in a file that the house does not allow.
struct Finding {
    std::string path;
    int line = 0; ///< 0: the file as a whole
    std::string what;
};

/// "core/stock/reel.cpp:12: includes ..."
std::string describe(const Finding& finding);

/// Holds C++ source at `path` (from the top of the tree, '/' between folders) to the row of its folder and to
/// the rules for every file.
std::vector<Finding> inspectSource(std::string_view path, std::string_view source, const QtHeaders& qt);

/// Holds any file of ours to what every file must have: the licence line on top, after a "#!" line if any.
std::vector<Finding> inspectLicence(std::string_view path, std::string_view text);

} // namespace rw::house
