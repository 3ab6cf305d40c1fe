// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/dialect.h"

namespace rw::sql {

std::string_view dialectText(Dialect dialect) { return dialect == Dialect::Sqlite ? "sqlite" : "postgres"; }

} // namespace rw::sql
