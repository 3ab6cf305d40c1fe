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
    const auto agreedBy = maybeWordsOf("name", command.agreedBy, kLongestName);
    const auto words = maybeWordsOf("words", command.words, kLongestNote);
    if (!agreedBy || !words) {
        return tl::unexpected(agreedBy ? words.error() : agreedBy.error());
    }
    Consent consent{*above, *agreedBy, *words, command.by};
    ledger.jobs().addConsent(command.job, consent);
    return consent;
}

} // namespace rw::desk
