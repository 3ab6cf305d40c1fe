// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/counter.h"

#include "core/desk/lookups.h"
#include "core/length/cut_plan.h"

#include <algorithm>

namespace rw::desk {

namespace {
bool wasStrung(const Job& job) { return job.state == JobState::Strung || job.state == JobState::Collected; }

std::optional<Job> lastJobOf(Transaction& ledger, RacketId racket) {
    std::optional<Job> newest;
    for (const JobId id : ledger.jobs().ofRacket(racket)) {
        auto job = ledger.jobs().get(id);
        if (job && wasStrung(*job)) {
            return job;
        }
        if (!newest) {
            newest = std::move(job);
        }
    }
    return newest;
}

Result<PersonFound> withRackets(Transaction& ledger, Customer customer) {
    PersonFound found{std::move(customer), {}};
    for (Racket& racket : ledger.customers().racketsOf(*found.customer.id)) {
        auto frame = frameOf(ledger, racket.frame);
        if (!frame) {
            return tl::unexpected(frame.error());
        }
        auto last = lastJobOf(ledger, *racket.id);
        found.rackets.push_back({std::move(racket), *std::move(frame), std::move(last)});
    }
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
    for (Customer& customer : ledger.customers().find(text, atMost)) {
        auto found = withRackets(ledger, std::move(customer));
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
    return withRackets(ledger, *std::move(customer));
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
    return ledger.frames().add(kept);
}

Result<std::vector<FrameModel>> findFrames(Transaction& ledger, std::string_view text, int atMost) {
    return ledger.frames().find(text, atMost);
}

Result<std::vector<JobLine>> onTheRack(Transaction& ledger) { return ledger.jobs().inStates({JobState::Strung}); }

} // namespace rw::desk
