// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/consent.h"

#include "core/desk/lookups.h"

namespace rw::desk {

std::optional<Consent> consentTo(Transaction& ledger, JobId job, const Tension& pull) {
    std::optional<Consent> found;
    for (Consent& consent : ledger.jobs().consents(job)) {
        if (consent.covers(pull)) {
            found = std::move(consent);
        }
    }
    return found;
}

namespace {
Result<Consent> consentOf(const AboveMarked& above, const std::string& agreedBy, const std::string& words,
                          const By& by) {
    const auto name = maybeWordsOf("name", agreedBy, kLongestName);
    const auto told = maybeWordsOf("words", words, kLongestNote);
    if (!name || !told) {
        return tl::unexpected(name ? told.error() : name.error());
    }
    return Consent{above, *name, *told, by};
}
} // namespace

Result<void> keepYes(Transaction& ledger, const Job& job, const FrameModel& frame, const InformedYes& yes,
                     const By& by) {
    const auto above = aboveMarked(frame.marked, job.asked);
    if (!above) {
        return {};
    }
    const auto consent = consentOf(*above, yes.agreedBy, yes.words, by);
    if (!consent) {
        return tl::unexpected(consent.error());
    }
    ledger.jobs().addConsent(*job.id, *consent);
    return {};
}

void noteNotAgreed(Transaction& ledger, std::vector<JobLine>& lines) {
    for (JobLine& line : lines) {
        const auto above = aboveMarked({.lowest = std::nullopt, .highest = line.highestMarked}, line.asked);
        line.notAgreed = above && !consentTo(ledger, line.id, above->pull);
    }
}

Result<Consent> agreeAboveMarked(Transaction& ledger, const Agree& command) {
    const auto job = jobOf(ledger, command.job);
    if (!job) {
        return tl::unexpected(job.error());
    }
    if (const auto may = mayStillChange(*job); !may) {
        return tl::unexpected(may.error());
    }
    const auto racket = racketOf(ledger, job->racket);
    const auto frame = racket ? frameOf(ledger, racket->frame) : tl::unexpected(racket.error());
    if (!frame) {
        return tl::unexpected(frame.error());
    }
    const auto above = aboveMarked(frame->marked, job->asked);
    if (!above) {
        return refuse(Code::ImpossibleValue, {{"key", "consent"},
                                              {"text", highestPull(job->asked).text()},
                                              {"expected", "a pull above the marked maximum"}});
    }
    if (auto already = consentTo(ledger, command.job, above->pull)) {
        return *std::move(already);
    }
    auto consent = consentOf(*above, command.agreedBy, command.words, command.by);
    if (consent) {
        ledger.jobs().addConsent(command.job, *consent);
    }
    return consent;
}

} // namespace rw::desk
