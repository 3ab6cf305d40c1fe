// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/counter.h"
#include "core/desk/lookups.h"
#include "core/desk/payment.h"

namespace rw::desk {

Result<HandedOver> handOver(Transaction& ledger, const HandOver& command) {
    auto job = jobOf(ledger, command.job);
    if (!job) {
        return tl::unexpected(job.error());
    }
    const Money paidBefore = ledger.jobs().paid(command.job);
    if (job->state == JobState::Collected) {
        return HandedOver{.job = *std::move(job), .already = true, .paidNow = std::nullopt, .paid = paidBefore};
    }
    if (const auto may = mayHappen(*job, JobEventKind::Collected); !may) {
        return tl::unexpected(may.error());
    }
    const auto takenBy = maybeWordsOf("name", command.takenBy, kLongestName);
    const auto way = maybeWordsOf("way of payment", command.way, kLongestMark);
    if (!takenBy || !way) {
        return tl::unexpected(takenBy ? way.error() : takenBy.error());
    }
    if (command.payment) {
        if (const auto payment = checkPayment(ledger, *command.payment, *way); !payment) {
            return tl::unexpected(payment.error());
        }
        ledger.jobs().pay(
            command.job,
            {.id = std::nullopt, .amount = *command.payment, .way = *way, .by = command.by, .corrects = std::nullopt});
    }
    const JobEventId event = ledger.jobs().record(
        {std::nullopt, command.job, JobEventKind::Collected, command.by, std::nullopt, std::nullopt});
    ledger.jobs().handOver(command.job, event, {*takenBy, command.onAccount});
    return HandedOver{.job = jobOf(ledger, command.job).value(),
                      .already = false,
                      .paidNow = command.payment,
                      .paid = ledger.jobs().paid(command.job)};
}

} // namespace rw::desk
