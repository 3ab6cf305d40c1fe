// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sql/connection.h"

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace rw::sql {

/// A thing that the schema is made of.
struct SchemaPart {
    bool awake = true;
    std::string body;       ///< of a function, what it does
    std::string definition; ///< in the engine's own words; of things by one name, one after the other
};
using PostgresSchema = std::map<std::pair<std::string, std::string>, SchemaPart>; ///< by kind and name

/// The schema of the connection; inside a transaction, whose search path is that schema afterwards.
[[nodiscard]] PostgresSchema schemaOf(Connection& connection);

/// What only the migrations have touched: made in a transaction of its own, listed, and rolled back. Nothing when this
/// user may not make it.
[[nodiscard]] std::optional<PostgresSchema> schemaAsMade(Connection& connection);

/// What is to be said of `found`: held against `made` to the letter, or without it against the names that the
/// migrations promise.
[[nodiscard]] std::vector<std::string> schemaDifferences(const PostgresSchema& found,
                                                         const std::optional<PostgresSchema>& made);

} // namespace rw::sql
