// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <string>

namespace rw::app {

/// FileUnwritable when a file at `path` would be the ledger, or what SQLite keeps beside it, by whatever name and
/// through whatever link: a paper written over it would be the end of the shop's books.
[[nodiscard]] Result<void> mustNotReplaceLedger(const std::string& path, const std::string& ledger);

} // namespace rw::app
