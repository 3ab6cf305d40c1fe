// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <string>
#include <vector>

// Money that goes back to a customer: all that was paid for a job that is withdrawn, what is too much for any other.
namespace rw::desk {

/// What is owed for a job of which `paid` is paid; negative: the customer's. A withdrawn job costs nothing.
[[nodiscard]] Money owedFor(const Job& job, const Money& paid);

struct GiveBack {
    std::string requestKey; ///< as of TakePayment
    JobId job;
    Money amount;    ///< more than nothing, at most what is the customer's; a part of it leaves the rest
    std::string way; ///< how it goes back, whatever way it came: 1 to 40 characters
    By by;
};
struct GivenBack {
    Job job;
    bool already = false; ///< the same request key gave it before; nothing was changed
    Money givenNow;
    Money left; ///< what is still the customer's
};
/// Books a payment of the opposite sign; the payment that came in stands as it was. Refusals of takePayment(), in any
/// state; ImpossibleValue {payment} beyond what is the customer's.
[[nodiscard]] Result<GivenBack> giveBack(Transaction& ledger, const GiveBack& command);

/// A job for which more is paid than it costs.
struct ToGiveBack {
    JobLine job;
    Money amount; ///< more than nothing
};
/// Withdrawn ones first, each by number.
[[nodiscard]] Result<std::vector<ToGiveBack>> toGiveBack(Transaction& ledger);

} // namespace rw::desk
