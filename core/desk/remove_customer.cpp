// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/remove_customer.h"

#include "core/desk/lookups.h"

#include <algorithm>

namespace rw::desk {

namespace {
void append(std::string& list, const std::string& item) { list += (list.empty() ? "" : ", ") + item; }

/// Numbers of the jobs whose rackets have not left.
std::string jobsStillHere(Transaction& ledger, CustomerId customer) {
    std::string numbers;
    for (const JobId id : ledger.jobs().ofCustomer(customer)) {
        const auto job = ledger.jobs().get(id);
        if (job && job->state != JobState::Collected && job->state != JobState::Withdrawn) {
            append(numbers, std::to_string(job->number));
        }
    }
    return numbers;
}

std::string lotsStillHere(Transaction& ledger, CustomerId customer) {
    std::string tags;
    for (const Lot& lot : ledger.lots().open()) {
        if (lot.owner == customer) {
            append(tags, lot.tag);
        }
    }
    return tags;
}
} // namespace

Result<void> removeCustomer(Transaction& ledger, CustomerId id, Instant now) {
    const auto customer = customerOf(ledger, id);
    if (!customer) {
        return tl::unexpected(customer.error());
    }
    if (customer->removed) {
        return {};
    }
    const std::string jobs = jobsStillHere(ledger, id);
    const std::string lots = lotsStillHere(ledger, id);
    if (!jobs.empty() || !lots.empty()) {
        return refuse(Code::RacketStillHere, {{"jobs", jobs}, {"lots", lots}});
    }
    ledger.customers().erase(id, now);
    return {};
}

} // namespace rw::desk
