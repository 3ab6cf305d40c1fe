// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/desk/fake_jobs.h"

namespace rw::desk::test {

/// What the cuts of a fake ledger tell, from its movements and from the tails that were told.
class FakeOwnCuts final : public OwnCuts {
public:
    FakeOwnCuts(Rows& rows, FakeJobs& jobs)
        : m_rows(rows)
        , m_jobs(jobs) {}
    void keepTails(AttemptId attempt, const TailsOf& tails, const By& by) override;
    std::vector<OwnCut> cuts(FrameModelId frame, Sport sport, int jobs, int elsewhere) override;

private:
    std::optional<Tails> toldOf(AttemptId attempt, bool shortSide) const;
    /// The cut of an attempt that came to its end, with the movement that made it.
    std::optional<std::pair<MovementId, OwnCut>> endedIn(const Job& job, const JobPiece& piece, const Attempt& attempt);

    Rows& m_rows;
    FakeJobs& m_jobs;
};

} // namespace rw::desk::test
