// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace rw::sql {

/// The one place where PostgreSQL's errors become ours. `sqlState` is empty when the server gave no answer.
/// Source of the codes: PostgreSQL 15 manual, Appendix A. 'RW001' is what our own triggers raise.
[[noreturn]] void throwPostgresError(std::string_view sqlState, std::string_view message, std::string_view doing);

/// The guard behind an error of class 23 or RW001.
[[nodiscard]] std::string postgresGuard(std::string_view sqlState, std::string_view message);

} // namespace rw::sql
