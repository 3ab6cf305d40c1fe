// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <string>

// Money that comes in for a job: at the rack, on account, before it is strung.
namespace rw::desk {

struct TakePayment {
    std::string requestKey; ///< made once per form; pressing again after an answer that was lost takes nothing twice
    JobId job;
    Money amount;    ///< more than nothing; it may be more than is owed, which is then in the customer's favour
    std::string way; ///< "cash", "card": 1 to 40 characters
    By by;
};
struct PaymentTaken {
    Job job;
    bool already = false; ///< the same request key took it before; nothing was changed
    Money paidNow;
    Money paid; ///< for the job in all

    [[nodiscard]] Money owed() const { return job.total - paid; } ///< negative: in the customer's favour
};
/// In any state of the job but withdrawn (WrongState), also when the racket has left on account. CurrencyMismatch,
/// ImpossibleValue {payment}, Missing and TooLong {way of payment}; ChangedMeanwhile {what, added} when the request key
/// took another payment before.
[[nodiscard]] Result<PaymentTaken> takePayment(Transaction& ledger, const TakePayment& command);

/// What every payment must be: in the ledger's currency, more than nothing, and with a way.
[[nodiscard]] Result<void> checkPayment(Transaction& ledger, const Money& payment, const std::string& way);

} // namespace rw::desk
