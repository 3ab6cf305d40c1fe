// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/desk/fake_own_cuts.h"

#include "core/base/world_error.h"

namespace rw::desk::test {

void FakeOwnCuts::keepTails(AttemptId attempt, const TailsOf& tails, const By&) {
    const bool cut = std::ranges::any_of(m_rows.events, [&](const JobEvent& event) {
        return event.kind == JobEventKind::Cut && event.attempt == attempt;
    });
    if (!cut) {
        throw LedgerGuard("tails_after_cut");
    }
    m_rows.tails.push_back({attempt, tails});
}

std::optional<Tails> FakeOwnCuts::toldOf(AttemptId attempt, bool shortSide) const {
    std::optional<Tails> newest;
    for (const Rows::ToldTails& told : m_rows.tails) {
        if (told.attempt == attempt && told.of.shortSide == shortSide) {
            newest = told.of.tails;
        }
    }
    return newest;
}

std::optional<std::pair<MovementId, OwnCut>> FakeOwnCuts::endedIn(const Job& job, const JobPiece& piece,
                                                                  const Attempt& attempt) {
    const bool strung = job.state == JobState::Strung || job.state == JobState::Collected;
    const bool cameShort = attempt.lost == LostReason::CameShort;
    if (!attempt.cut || !attempt.cut->lot || attempt.cut->takenBack || !((strung && !attempt.lost) || cameShort)) {
        return std::nullopt;
    }
    const auto movement = std::ranges::find(m_rows.movements, attempt.id, &Movement::attempt);
    return std::pair(*movement->id, OwnCut{.job = *job.id,
                                           .number = job.number,
                                           .frame = rowOf(m_rows.rackets, job.racket)->frame,
                                           .at = attempt.cut->at,
                                           .method = job.method,
                                           .route = job.route,
                                           .shortSide = job.shortSideLength,
                                           .pulled = job.strung ? job.strung->tensions : job.asked,
                                           .role = piece.role,
                                           .mains = job.pieces.front().article,
                                           .crosses = job.pieces.back().article,
                                           .length = attempt.cut->length,
                                           .allThereWas = attempt.cut->allThereWas,
                                           .cameShort = cameShort,
                                           .tails = toldOf(*attempt.id, false),
                                           .shortSideTails = toldOf(*attempt.id, true)});
}

std::vector<OwnCut> FakeOwnCuts::cuts(FrameModelId frame, Sport sport, int jobs, int elsewhere) {
    std::vector<JobId> newest;
    for (const Job& job : m_rows.jobs) {
        if (rowOf(m_rows.rackets, job.racket)->frame == frame) {
            newest.push_back(*job.id);
        }
    }
    std::ranges::sort(newest, std::greater<>());
    newest.erase(newest.begin() + std::min<std::ptrdiff_t>(jobs, std::ssize(newest)), newest.end());
    std::vector<AttemptId> told;
    for (auto tails = m_rows.tails.rbegin(); tails != m_rows.tails.rend(); ++tails) {
        const Job job = *m_jobs.get(*m_jobs.ofAttempt(tails->attempt));
        const FrameModel& of = *rowOf(m_rows.frames, rowOf(m_rows.rackets, job.racket)->frame);
        const bool counts =
            of.sport == sport && of.id != frame && std::ranges::find(told, tails->attempt) == told.end();
        if (counts && std::ssize(told) < elsewhere) {
            told.push_back(tails->attempt);
        }
    }
    std::vector<std::pair<MovementId, OwnCut>> found;
    for (const Job& row : m_rows.jobs) {
        const Job job = *m_jobs.get(*row.id);
        const bool ofFrame = std::ranges::find(newest, *job.id) != newest.end();
        for (const JobPiece& piece : job.pieces) {
            for (const Attempt& attempt : piece.attempts) {
                if (ofFrame || std::ranges::find(told, *attempt.id) != told.end()) {
                    if (auto cut = endedIn(job, piece, attempt)) {
                        found.push_back(*std::move(cut));
                    }
                }
            }
        }
    }
    std::ranges::sort(found, std::greater<>(), [](const auto& cut) { return cut.first; });
    std::vector<OwnCut> cuts;
    std::ranges::transform(found, std::back_inserter(cuts), [](const auto& cut) { return cut.second; });
    return cuts;
}

} // namespace rw::desk::test
