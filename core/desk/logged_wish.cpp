// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/logged_wish.h"

#include <algorithm>

namespace rw::desk {

namespace {
using StandsFor = std::function<bool(LotId, LotId)>;

bool isAsWished(const JobPiece& piece, const IntakeDraft& draft, const StandsFor& standsFor) {
    if (piece.role == PieceRole::Whole && !isOneString(draft.mains, draft.crosses.value_or(draft.mains))) {
        return false;
    }
    const WantedString& wanted = piece.role == PieceRole::Crosses ? draft.crosses.value_or(draft.mains) : draft.mains;
    const bool sameLot = wanted.lot ? piece.pinned && piece.lot && standsFor(*wanted.lot, *piece.lot) : !piece.pinned;
    return piece.article == wanted.article && piece.source == wanted.source && sameLot;
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
           isSideAsWished(job, draft, frame) && areExtrasAsWished(job, draft) && isNoteAsWished(job, note) &&
           (!command.promised || job.promised == command.promised);
}

} // namespace rw::desk
