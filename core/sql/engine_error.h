// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

class QSqlError;

namespace rw::sql {

class Connection;

/// Throws the WorldError that `error` means. `doing` names the query and the ids it was given; no words of people.
/// A guard's name comes first in what(): "movement_append_only (insert_movement :lot=5)".
[[noreturn]] void throwEngineError(Connection& connection, const QSqlError& error, std::string_view doing);

} // namespace rw::sql
