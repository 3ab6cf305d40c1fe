// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/counter.h"

#include "core/desk/lookups.h"

#include <algorithm>
#include <iterator>
#include <map>

namespace rw::desk {

namespace {
bool wasStrung(const Job& job) { return job.state == JobState::Strung || job.state == JobState::Collected; }

struct Visits {
    std::optional<Job> last;       ///< as RacketSummary::lastJob
    std::optional<Instant> newest; ///< when the racket came in last, whatever became of it
};

Visits visitsOf(Transaction& ledger, RacketId racket) {
    Visits visits;
    for (const JobId id : ledger.jobs().ofRacket(racket)) {
        auto job = ledger.jobs().get(id);
        if (!job) {
            continue;
        }
        const bool strung = wasStrung(*job);
        visits.newest = visits.newest.value_or(job->logged);
        if (strung || !visits.last) {
            visits.last = std::move(job);
        }
        if (strung) {
            break;
        }
    }
    return visits;
}

/// What is in the shop now, whoever's it is: looked up once for all that were found.
struct Shelves {
    std::vector<Lot> lots;
    std::vector<JobLine> jobs;
};

Shelves shelvesOf(Transaction& ledger) {
    return {ledger.lots().open(),
            ledger.jobs().inStates({JobState::Logged, JobState::OnTheMachine, JobState::Waiting, JobState::Strung})};
}

/// The jobs of one customer that are in the shop, by their rackets; of two on one racket the newer.
std::map<RacketId, JobLine> hereOf(Transaction& ledger, CustomerId customer, const std::vector<JobLine>& jobs) {
    std::map<RacketId, JobLine> here;
    for (const JobLine& line : jobs) {
        const auto job = line.customerId == customer ? ledger.jobs().get(line.id) : std::nullopt;
        if (!job) {
            continue;
        }
        const auto [stands, isFirst] = here.try_emplace(job->racket, line);
        if (!isFirst && stands->second.id < line.id) {
            stands->second = line;
        }
    }
    return here;
}

Result<PersonFound> withRackets(Transaction& ledger, Customer customer, const Shelves& shelves) {
    PersonFound found{std::move(customer), {}, {}};
    std::ranges::copy_if(shelves.lots, std::back_inserter(found.lots),
                         [&](const Lot& lot) { return lot.owner == found.customer.id; });
    const auto here = hereOf(ledger, *found.customer.id, shelves.jobs);
    for (Racket& racket : ledger.customers().racketsOf(*found.customer.id)) {
        auto frame = frameOf(ledger, racket.frame);
        if (!frame) {
            return tl::unexpected(frame.error());
        }
        Visits visits = visitsOf(ledger, *racket.id);
        const auto job = here.find(*racket.id);
        found.rackets.push_back({std::move(racket), *std::move(frame), std::move(visits.last), visits.newest,
                                 job == here.end() ? std::nullopt : std::optional(job->second)});
    }
    std::ranges::stable_sort(found.rackets, std::ranges::greater{}, &RacketSummary::newest);
    std::ranges::stable_partition(found.rackets, [](const RacketSummary& each) { return !each.here; });
    return found;
}
} // namespace

Result<std::vector<PersonFound>> listPeople(Transaction& ledger, std::string_view text, int atMost) {
    std::vector<PersonFound> people;
    std::map<FrameModelId, FrameModel> frames; // most people have one of a few
    for (Customer& customer : ledger.customers().find(text, atMost)) {
        if (people.empty()) {
            auto first = withRackets(ledger, std::move(customer), shelvesOf(ledger));
            if (!first) {
                return tl::unexpected(first.error());
            }
            people.push_back(*std::move(first));
            continue;
        }
        PersonFound found{std::move(customer), {}, {}, false};
        for (Racket& racket : ledger.customers().racketsOf(*found.customer.id)) {
            auto known = frames.find(racket.frame);
            if (known == frames.end()) {
                auto frame = frameOf(ledger, racket.frame);
                if (!frame) {
                    return tl::unexpected(frame.error());
                }
                known = frames.emplace(racket.frame, *std::move(frame)).first;
            }
            found.rackets.push_back({std::move(racket), known->second, std::nullopt, std::nullopt});
        }
        people.push_back(std::move(found));
    }
    return people;
}

Result<std::vector<PersonFound>> findPeople(Transaction& ledger, std::string_view text, int atMost) {
    std::vector<PersonFound> people;
    const Shelves shelves = shelvesOf(ledger);
    for (Customer& customer : ledger.customers().find(text, atMost)) {
        auto found = withRackets(ledger, std::move(customer), shelves);
        if (!found) {
            return tl::unexpected(found.error());
        }
        people.push_back(*std::move(found));
    }
    return people;
}

Result<PersonFound> person(Transaction& ledger, CustomerId id) {
    auto customer = customerOf(ledger, id);
    if (!customer) {
        return tl::unexpected(customer.error());
    }
    return withRackets(ledger, *std::move(customer), shelvesOf(ledger));
}

Result<std::vector<FrameModel>> findFrames(Transaction& ledger, std::string_view text, int atMost) {
    return ledger.frames().find(text, atMost);
}

Result<std::vector<JobLine>> onTheRack(Transaction& ledger) { return ledger.jobs().inStates({JobState::Strung}); }

} // namespace rw::desk
