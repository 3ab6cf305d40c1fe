// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/counter.h"

#include "core/desk/lookups.h"
#include "core/length/cut_plan.h"

#include <algorithm>

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

constexpr int kNamesakes = 100; ///< more people, or frames, of one name than any shop has

/// Somebody who is stored just so and has no racket yet.
std::optional<CustomerId> addedBefore(Transaction& ledger, const Customer& customer) {
    for (const Customer& other : ledger.customers().find(customer.name, kNamesakes)) {
        if (other.name == customer.name && other.contacts == customer.contacts &&
            ledger.customers().racketsOf(*other.id).empty()) {
            return other.id;
        }
    }
    return std::nullopt;
}

/// A frame that is stored just so.
std::optional<FrameModelId> addedBefore(Transaction& ledger, FrameModel frame) {
    for (const FrameModel& other : ledger.frames().find(frame.name, kNamesakes)) {
        frame.id = other.id;
        if (other == frame) {
            return other.id;
        }
    }
    return std::nullopt;
}

/// `openLots`: all of the ledger.
Result<PersonFound> withRackets(Transaction& ledger, Customer customer, const std::vector<Lot>& openLots) {
    PersonFound found{std::move(customer), {}, {}};
    std::ranges::copy_if(openLots, std::back_inserter(found.lots),
                         [&](const Lot& lot) { return lot.owner == found.customer.id; });
    for (Racket& racket : ledger.customers().racketsOf(*found.customer.id)) {
        auto frame = frameOf(ledger, racket.frame);
        if (!frame) {
            return tl::unexpected(frame.error());
        }
        Visits visits = visitsOf(ledger, *racket.id);
        found.rackets.push_back({std::move(racket), *std::move(frame), std::move(visits.last), visits.newest});
    }
    std::ranges::stable_sort(found.rackets, std::ranges::greater{}, &RacketSummary::newest);
    return found;
}

Result<void> checkMarked(const MarkedRange& marked) {
    if (marked.lowest && marked.highest && marked.lowest->newtons() > marked.highest->newtons()) {
        return refuse(Code::ImpossibleValue, {{"key", "marked range"},
                                              {"text", marked.lowest->text() + " – " + marked.highest->text()},
                                              {"expected", "the lower value first"}});
    }
    return {};
}
} // namespace

Result<std::vector<PersonFound>> findPeople(Transaction& ledger, std::string_view text, int atMost) {
    std::vector<PersonFound> people;
    const std::vector<Lot> openLots = ledger.lots().open();
    for (Customer& customer : ledger.customers().find(text, atMost)) {
        auto found = withRackets(ledger, std::move(customer), openLots);
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
    return withRackets(ledger, *std::move(customer), ledger.lots().open());
}

Result<CustomerId> addCustomer(Transaction& ledger, const Customer& customer) {
    Customer kept = customer;
    auto name = wordsOf("name", customer.name, kLongestName);
    if (!name) {
        return tl::unexpected(name.error());
    }
    kept.name = *std::move(name);
    for (Contact& contact : kept.contacts) {
        auto text = wordsOf("contact", contact.text, kLongestName);
        if (!text) {
            return tl::unexpected(text.error());
        }
        contact.text = *std::move(text);
    }
    if (const auto before = addedBefore(ledger, kept)) {
        return *before;
    }
    return ledger.customers().add(kept);
}

Result<RacketId> addRacket(Transaction& ledger, const Racket& racket) {
    auto mark = maybeWordsOf("mark", racket.mark, kLongestMark);
    if (!mark) {
        return tl::unexpected(mark.error());
    }
    if (const auto customer = customerOf(ledger, racket.customer); !customer) {
        return tl::unexpected(customer.error());
    }
    if (const auto frame = frameOf(ledger, racket.frame); !frame) {
        return tl::unexpected(frame.error());
    }
    for (const Racket& other : ledger.customers().racketsOf(racket.customer)) {
        if (other.frame != racket.frame) {
            continue;
        }
        if (other.mark == *mark && ledger.jobs().ofRacket(*other.id).empty()) {
            return *other.id;
        }
        if (mark->empty()) {
            return refuse(Code::Missing, {{"what", "mark"}});
        }
        if (other.mark == *mark) {
            return refuse(Code::ImpossibleValue,
                          {{"key", "mark"}, {"text", *mark}, {"expected", "a mark that its twin does not have"}});
        }
    }
    Racket kept = racket;
    kept.mark = *std::move(mark);
    return ledger.customers().addRacket(kept);
}

Result<FrameModelId> addFrame(Transaction& ledger, const FrameModel& frame) {
    FrameModel kept = frame;
    auto name = wordsOf("frame", frame.name, kLongestFrameName);
    if (!name) {
        return tl::unexpected(name.error());
    }
    kept.name = *std::move(name);
    auto text = maybeWordsOf("bench note", frame.note.text, kLongestNote);
    if (!text) {
        return tl::unexpected(text.error());
    }
    kept.note.text = *std::move(text);
    if (kept.note.mountingMark.empty()) {
        kept.note.mountingMark = BenchNote().mountingMark;
    }
    if (const auto marked = checkMarked(frame.marked); !marked) {
        return tl::unexpected(marked.error());
    }
    // The length model names what no frame can be; two pieces go into any frame, so nothing else is asked of it.
    length::CutRequest request = length::defaultRequest(frame.sport);
    request.hoop = frame.hoop;
    request.pattern = frame.pattern;
    request.method = Method::TwoPiece;
    if (const auto plan = length::planCut(request); !plan) {
        return tl::unexpected(plan.error());
    }
    if (const auto before = addedBefore(ledger, kept)) {
        return *before;
    }
    return ledger.frames().add(kept);
}

Result<std::vector<FrameModel>> findFrames(Transaction& ledger, std::string_view text, int atMost) {
    return ledger.frames().find(text, atMost);
}

Result<std::vector<JobLine>> onTheRack(Transaction& ledger) { return ledger.jobs().inStates({JobState::Strung}); }

} // namespace rw::desk
