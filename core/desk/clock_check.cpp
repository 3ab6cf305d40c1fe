// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/clock_check.h"

#include <algorithm>

namespace rw::desk {

namespace {
constexpr Instant kBeyond = std::chrono::sys_days(std::chrono::year(2200) / 1 / 1); // no ledger holds what is later
}

Result<std::optional<Instant>> momentAhead(Transaction& ledger, Instant now) {
    const Instant soon = now + std::chrono::days(1);
    Instant newest = soon;
    for (const JobLine& job :
         ledger.jobs().inStates({JobState::Logged, JobState::OnTheMachine, JobState::Waiting, JobState::Strung})) {
        newest = std::max(newest, job.logged);
    }
    for (const StrungJob& job : ledger.reports().strung(soon, kBeyond)) {
        newest = std::max(newest, job.strung);
    }
    for (const PaymentLine& payment : ledger.reports().payments(soon, kBeyond)) {
        newest = std::max(newest, payment.at);
    }
    return newest > soon ? std::optional(newest) : std::nullopt;
}

} // namespace rw::desk
