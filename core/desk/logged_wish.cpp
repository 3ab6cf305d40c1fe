// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/logged_wish.h"

#include "core/units/decimal.h"

#include <algorithm>

namespace rw::desk {

namespace {
constexpr int kHundredPercent = 10'000; // hundredths of a percent

using StandsFor = std::function<bool(LotId, LotId)>;

bool isAsWished(const JobPiece& piece, const IntakeDraft& draft, const StandsFor& standsFor) {
    if (piece.role == PieceRole::Whole && !isOneString(draft.mains, draft.crosses.value_or(draft.mains))) {
        return false;
    }
    const WantedString& wanted = piece.role == PieceRole::Crosses ? draft.crosses.value_or(draft.mains) : draft.mains;
    const bool sameLot = wanted.lot ? piece.pinned && piece.lot && standsFor(*wanted.lot, *piece.lot) : !piece.pinned;
    const bool ownSet = wanted.source == PieceSource::CustomersSet;
    return piece.article == wanted.article && piece.source == wanted.source && sameLot &&
           piece.setLength == (ownSet ? wanted.setLength : std::nullopt);
}

/// A frame's own side wins even over a choice, and two pieces have no side to choose.
bool isSideAsWished(const Job& job, const IntakeDraft& draft, const FrameModel& frame) {
    return !draft.shortSide || !job.shortSideLength || frame.note.forcedSide || job.shortSide == *draft.shortSide;
}

bool areExtrasAsWished(const Job& job, const IntakeDraft& draft) {
    std::vector<std::pair<std::string, int>> extras;
    bool rush = false;
    for (const Charge& charge : job.charges) {
        if (charge.kind == ChargeKind::Extra) {
            extras.emplace_back(charge.label, charge.count);
        }
        rush = rush || charge.kind == ChargeKind::Rush;
    }
    return extras == draft.extras && rush == draft.rush;
}

bool isDiscountAsWished(const Job& job, const IntakeDraft& draft) {
    const Money nothing = Money::zero(job.total.currency());
    Money before = nothing;
    Money given = nothing;
    std::string reason;
    for (const Charge& charge : job.charges) {
        if (charge.kind == ChargeKind::Discount) {
            given += -charge.amount;
            reason = charge.label;
        } else if (charge.kind != ChargeKind::Tax) {
            before += charge.amount;
        }
    }
    if (!draft.discount) {
        return given == nothing;
    }
    const Money wished = draft.discount->fixed.value_or(
        before.timesRatioHalfAway(draft.discount->hundredthsPercent, kHundredPercent));
    return given == wished && (given == nothing || reason == trimmed(draft.discount->reason));
}

/// The bench adds words to a job's note later.
bool isNoteAsWished(const Job& job, const std::string& note) {
    return job.state == JobState::Logged ? job.note == note : job.note.starts_with(note);
}
} // namespace

bool isLoggedWish(const Job& job, const LogJob& command, const std::string& note, const FrameModel& frame,
                  const StandsFor& standsFor) {
    const IntakeDraft& draft = command.draft;
    const bool anyRoute = !draft.route || draft.route->empty();
    return job.customer == command.customer && job.racket == command.racket && job.asked == draft.tensions &&
           std::ranges::all_of(job.pieces,
                               [&](const JobPiece& piece) { return isAsWished(piece, draft, standsFor); }) &&
           (!draft.method || job.method == *draft.method) && (anyRoute || job.route == *draft.route) &&
           isSideAsWished(job, draft, frame) && areExtrasAsWished(job, draft) && isDiscountAsWished(job, draft) &&
           job.mustBy == draft.mustBy && isNoteAsWished(job, note) &&
           (!command.promised || job.promised == command.promised);
}

bool isLoggedYes(const std::vector<Consent>& consents, Instant logged, const LogJob& command, const FrameModel& frame) {
    const auto kept =
        std::ranges::find_if(consents, [&](const Consent& consent) { return consent.by.at == logged; });
    const bool wished = command.yes && aboveMarked(frame.marked, command.draft.tensions);
    return wished == (kept != consents.end()) && (!wished || kept->agreedBy == trimmed(command.yes->agreedBy));
}

} // namespace rw::desk
