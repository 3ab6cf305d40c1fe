// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/id.h"
#include "core/money/money.h"
#include "core/stock/movement.h"

#include <optional>
#include <string>

namespace rw {

/// Money that came in for a job. Never altered; one that was a mistake is corrected by another of the opposite amount.
struct Payment {
    std::optional<PaymentId> id;
    Money amount;
    std::string way; ///< "cash", "card"; 1 to 40 characters
    By by;
    std::optional<PaymentId> corrects;
    std::string requestKey = {}; ///< of who asked for it once; "" where what it belongs to happens but once
};

} // namespace rw
