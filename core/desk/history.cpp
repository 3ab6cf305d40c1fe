// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/counter.h"
#include "core/desk/lookups.h"

#include <algorithm>

namespace rw::desk {

namespace {
std::string machineName(const std::vector<Machine>& machines, MachineId id) {
    const auto found = std::ranges::find(machines, std::optional(id), &Machine::id);
    return found == machines.end() ? std::string() : found->name;
}

Result<HistoryEntry> entryOf(Transaction& ledger, JobId id, const std::vector<Machine>& machines) {
    auto job = jobOf(ledger, id);
    if (!job) {
        return tl::unexpected(job.error());
    }
    const auto customer = customerOf(ledger, job->customer);
    const auto racket = racketOf(ledger, job->racket);
    if (!customer || !racket) {
        return tl::unexpected(customer ? racket.error() : customer.error());
    }
    const auto frame = frameOf(ledger, racket->frame);
    if (!frame) {
        return tl::unexpected(frame.error());
    }
    HistoryEntry entry{*std::move(job), customer->name, frame->name, racket->mark, {}, {}};
    for (const JobPiece& piece : entry.job.pieces) {
        auto article = articleOf(ledger, piece.article);
        if (!article) {
            return tl::unexpected(article.error());
        }
        entry.strings.push_back(*std::move(article));
    }
    if (entry.job.strung) {
        entry.machine = machineName(machines, entry.job.strung->machine);
    }
    return entry;
}

Result<std::vector<HistoryEntry>> entriesOf(Transaction& ledger, const std::vector<JobId>& jobs) {
    const std::vector<Machine> machines = ledger.shop().machines();
    std::vector<HistoryEntry> entries;
    entries.reserve(jobs.size());
    for (const JobId id : jobs) {
        auto entry = entryOf(ledger, id, machines);
        if (!entry) {
            return tl::unexpected(entry.error());
        }
        entries.push_back(*std::move(entry));
    }
    return entries;
}
} // namespace

Result<std::vector<HistoryEntry>> historyOfCustomer(Transaction& ledger, CustomerId customer) {
    return entriesOf(ledger, ledger.jobs().ofCustomer(customer));
}

Result<std::vector<HistoryEntry>> historyOfRacket(Transaction& ledger, RacketId racket) {
    return entriesOf(ledger, ledger.jobs().ofRacket(racket));
}

Result<std::vector<HistoryEntry>> historyOfFrame(Transaction& ledger, FrameModelId frame, int atMost) {
    return entriesOf(ledger, ledger.jobs().ofFrame(frame, atMost));
}

} // namespace rw::desk
