// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/sql/pattern.h"

namespace rw::cli::test {

/// The demo shop as the command `demo` makes it, on Thursday 12 March 2026 at five past ten.
[[nodiscard]] sql::test::Pattern& demoLedger();

} // namespace rw::cli::test
