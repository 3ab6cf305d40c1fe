// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/tagged_job.h"

#include "core/desk/lookups.h"

#include <algorithm>
#include <cassert>
#include <charconv>

namespace rw::desk {

namespace {
std::optional<std::int64_t> numberIn(std::string_view text) {
    std::int64_t number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool isOne = error == std::errc{} && end == text.data() + text.size() && number > 0 && text.front() != '0';
    return isOne ? std::optional(number) : std::nullopt;
}
} // namespace

const RacketSummary& TaggedJob::racket() const {
    const auto found = std::ranges::find(person.rackets, std::optional(job.racket),
                                         [](const RacketSummary& summary) { return summary.racket.id; });
    assert(found != person.rackets.end());
    return *found;
}

Result<std::optional<TaggedJob>> jobByTag(Transaction& ledger, std::string_view text) {
    const auto number = numberIn(text);
    const auto id = number ? ledger.jobs().byNumber(*number) : std::nullopt;
    if (!id) {
        return std::optional<TaggedJob>();
    }
    auto job = jobOf(ledger, *id);
    if (!job) {
        return tl::unexpected(job.error());
    }
    auto whose = person(ledger, job->customer);
    if (!whose) {
        return tl::unexpected(whose.error());
    }
    if (whose->customer.removed) {
        return std::optional<TaggedJob>();
    }
    return std::optional(TaggedJob{*std::move(job), *std::move(whose)});
}

} // namespace rw::desk
