// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/now.h"

#include "app/cli/moment.h"
#include "core/desk/settings.h"

namespace rw::cli {

Result<Instant> nowIn(desk::Transaction& ledger, const std::optional<std::string>& given) {
    return given ? parseMoment(*given, desk::openingHours(ledger.shop())) : Result<Instant>(SystemClock().now());
}

} // namespace rw::cli
