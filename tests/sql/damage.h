// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sql/connection.h"

#include <string_view>
#include <vector>

namespace rw::sql::test {

/// Does to a ledger what its guards forbid, and leaves the guards as they were: as if a program, a person or a disk had
/// been at the rows. On PostgreSQL CHECK stays awake; a test that wants to break one drops it first.
void damage(Connection& connection, const std::vector<std::string_view>& statements);

} // namespace rw::sql::test
