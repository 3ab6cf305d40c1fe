// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace rw::house {

/// What the files of one folder may include.
struct Row {
    std::string folder;            ///< "core/stock"; its subfolders have the same row
    std::set<std::string> own;     ///< folders of ours, the folder itself among them
    std::set<std::string> qt;      ///< Qt modules without the "Qt": "Core", "Sql"
    std::set<std::string> foreign; ///< beginnings of other headers: "boost/math/", "sqlite3.h"
    bool system = false;           ///< POSIX and C headers such as <unistd.h>
};

/// Every folder that may hold source files. A folder that no row covers has no place in the house.
const std::vector<Row>& rows();

/// The row of a file's folder, by the longest name that fits; null when there is none.
const Row* rowOf(std::string_view path);

/// What may stand at the top of the tree beside dotfiles and build folders.
const std::set<std::string>& topLevel();

} // namespace rw::house
