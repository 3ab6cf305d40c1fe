// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace rw::sql {

/// Copies the committed state of the SQLite database `from` to the file `to` (mode 0600), replacing one of that name.
/// Works while others use `from`. The copy appears under its name when it is whole and on the disk. Throws WorldError.
void copySqlite(const std::string& from, const std::string& to);

} // namespace rw::sql
