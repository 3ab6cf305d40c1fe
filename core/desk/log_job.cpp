// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/intake.h"
#include "core/desk/logged_wish.h"
#include "core/desk/lookups.h"
#include "core/desk/promise_for.h"
#include "core/desk/replan.h"
#include "core/desk/settings.h"

namespace rw::desk {

namespace {
Result<void> checkBelongs(const Racket& racket, const LogJob& command) {
    if (racket.customer != command.customer) {
        return refuse(Code::ImpossibleValue,
                      {{"key", "racket"}, {"text", racket.mark}, {"expected", "a racket of this customer"}});
    }
    if (racket.frame != command.draft.frame) {
        return refuse(Code::ImpossibleValue,
                      {{"key", "frame"}, {"text", racket.mark}, {"expected", "the frame of this racket"}});
    }
    return {};
}

/// A customer's own set is as long as somebody said, if anybody did.
Result<void> checkSets(const IntakeDraft& draft) {
    for (const WantedString& wanted : {draft.mains, draft.crosses.value_or(draft.mains)}) {
        if (wanted.setLength) {
            if (auto length = checkLength("set", *wanted.setLength, Length::fromMillimetres(1)); !length) {
                return length;
            }
        }
    }
    return {};
}

bool isPinned(const IntakeDraft& draft, PieceRole role) {
    const WantedString& wanted = role == PieceRole::Crosses ? draft.crosses.value_or(draft.mains) : draft.mains;
    return wanted.lot.has_value();
}

/// The free words of a wish, as they would be kept.
struct LoggedWords {
    std::string note;
    Inspection inspection;
};

/// The job of a request key that was met before, when it is what is wished for now.
Result<Job> loggedBefore(Transaction& ledger, JobId id, const LogJob& command, const LoggedWords& words) {
    auto job = jobOf(ledger, id);
    const auto frame = frameOf(ledger, command.draft.frame);
    if (!job || !frame) {
        return job ? tl::unexpected(frame.error()) : job;
    }
    const auto standsFor = [&](LotId wanted, LotId planned) {
        const auto one = ledger.lots().get(wanted);
        const auto other = ledger.lots().get(planned);
        return wanted == planned || (one && other && one->kind == LotKind::Packet && other->kind == LotKind::Packet &&
                                     one->article == other->article && one->nominal == other->nominal);
    };
    const bool sameWords = isLoggedWish(*job, command, words.note, *frame, standsFor) &&
                           ledger.jobs().inspection(id) == words.inspection &&
                           isLoggedYes(ledger.jobs().consents(id), job->logged, command, *frame);
    if (!sameWords) {
        return refuse(Code::ChangedMeanwhile, {{"what", "job"}, {"job", job->number}});
    }
    return job;
}

Job jobFrom(const LogJob& command, const IntakePreview& preview, std::string note) {
    Job job{.id = std::nullopt,
            .requestKey = command.requestKey,
            .customer = command.customer,
            .racket = command.racket,
            .method = preview.plan.method,
            .route = preview.plan.route,
            .shortSideLength = std::nullopt,
            .asked = command.draft.tensions,
            .pieces = {},
            .charges = preview.quote.charges,
            .total = preview.quote.total,
            .promised = command.promised.value_or(preview.promise),
            .mustBy = command.draft.mustBy,
            .note = std::move(note),
            .logged = command.by.at,
            .strung = std::nullopt,
            .collected = std::nullopt};
    if (preview.shortSide) {
        job.shortSide = preview.shortSide->side;
        job.shortSideLength = preview.shortSide->measure;
    }
    for (const PieceProposal& piece : preview.pieces) {
        job.pieces.push_back({.id = std::nullopt,
                              .role = piece.role,
                              .article = *piece.article.id,
                              .source = piece.source,
                              .lot = piece.lot ? piece.lot->id : std::nullopt,
                              .pinned = isPinned(command.draft, piece.role),
                              .planned = piece.cut,
                              .expected = piece.expected,
                              .attempts = {},
                              .setLength = piece.setLength});
    }
    return job;
}

/// As it is kept.
Result<Inspection> inspectionOf(const Inspection& typed) {
    auto cameWith = maybeWordsOf("came with", typed.cameWith, kLongestNote);
    auto remarks = maybeWordsOf("remarks", typed.remarks, kLongestNote);
    if (!cameWith || !remarks) {
        return tl::unexpected(cameWith ? remarks.error() : cameWith.error());
    }
    return Inspection{*std::move(cameWith), *std::move(remarks)};
}

/// Stores the job with everything that is kept beside it.
Result<Job> store(Transaction& ledger, const Job& job, const Inspection& inspection, const LogJob& command) {
    const JobId id = ledger.jobs().add(job, command.by);
    ledger.jobs().inspect(id, inspection);
    replanStringsOf(ledger, job, command.by.at);
    auto stored = jobOf(ledger, id);
    const auto frame = frameOf(ledger, command.draft.frame);
    if (!stored || !frame || !command.yes) {
        return frame ? stored : tl::unexpected(frame.error());
    }
    const auto kept = keepYes(ledger, *stored, *frame, *command.yes, command.by);
    return kept ? stored : tl::unexpected(kept.error());
}
} // namespace

Result<Job> logJob(Transaction& ledger, const LogJob& command) {
    const auto key = wordsOf("request key", command.requestKey, kLongestRequestKey);
    if (!key) {
        return tl::unexpected(key.error());
    }
    auto note = maybeWordsOf("note", command.note, kLongestNote);
    if (!note) {
        return tl::unexpected(note.error());
    }
    const auto inspection = inspectionOf(command.inspection);
    if (!inspection) {
        return tl::unexpected(inspection.error());
    }
    if (const auto before = ledger.jobs().byRequestKey(command.requestKey)) {
        return loggedBefore(ledger, *before, command, {*note, *inspection});
    }
    if (const auto sets = checkSets(command.draft); !sets) {
        return tl::unexpected(sets.error());
    }
    const auto customer = presentCustomerOf(ledger, command.customer);
    const auto racket = racketOf(ledger, command.racket);
    if (!customer || !racket) {
        return tl::unexpected(customer ? racket.error() : customer.error());
    }
    if (const auto belongs = checkBelongs(*racket, command); !belongs) {
        return tl::unexpected(belongs.error());
    }
    IntakeDraft draft = command.draft;
    draft.racket = command.racket;
    const auto preview = previewIntake(ledger, draft, command.by.at);
    if (!preview) {
        return tl::unexpected(preview.error());
    }
    Job job = jobFrom(command, *preview, *std::move(note));
    if (!command.promised && command.told &&
        canBeDoneBy(ledger, readSettings(ledger.shop()), command.by.at, draft.rush, *command.told)) {
        job.promised = command.told;
    }
    job.number = nextJobNumber(ledger);
    return store(ledger, job, *inspection, command);
}

} // namespace rw::desk
