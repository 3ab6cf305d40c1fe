// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <map>
#include <set>
#include <string>

namespace rw::house {

/// Which Qt modules have a header of that short name: "QString" → {"Core"}.
using QtHeaders = std::map<std::string, std::set<std::string>>;

/// Reads the module folders (QtCore, QtSql, ...) below Qt's include folder, so that the list is that of the
/// installed Qt. Throws std::filesystem::filesystem_error when there is no such folder.
QtHeaders readQtHeaders(const std::filesystem::path& includeFolder);

} // namespace rw::house
