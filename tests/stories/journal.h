// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/stories/step.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace rw::stories {

/// A job as a journal or a ledger has it: "on-the-machine; mains 1:6200 kinked 2:-; crosses 1:-". "" for no job.
[[nodiscard]] std::string storyOf(const Job& job);

/// What a ledger must hold, worked out from the commands alone: an own small book beside the ledger's.
class ExpectedBook {
public:
    void apply(const Step& step);
    /// The story of the job under a key; of a lot's tag "on the shelf" or "".
    [[nodiscard]] std::string storyOf(const std::string& key) const;
    [[nodiscard]] std::vector<std::string> jobKeys() const;

private:
    struct Try {
        std::optional<Length> cut;
        std::optional<LostReason> lost;
    };
    struct Entry {
        JobState state = JobState::Logged;
        std::map<PieceRole, std::vector<Try>> pieces; ///< mains before crosses
    };
    std::map<std::string, Entry> m_jobs;
    std::map<std::string, bool> m_lots;
};

/// The lines of a worker that was killed.
class Journal {
public:
    void hear(const std::string& line);
    /// What is known to be done.
    [[nodiscard]] const ExpectedBook& done() const { return m_done; }
    [[nodiscard]] const std::vector<Step>& doneSteps() const { return m_doneSteps; }
    /// The command that was given when the worker died, of which nobody knows whether it was carried out.
    [[nodiscard]] const std::optional<Step>& pending() const { return m_pending; }
    /// Says that the pending command has been carried out.
    void settle();

private:
    ExpectedBook m_done;
    std::vector<Step> m_doneSteps;
    std::optional<Step> m_pending;
};

} // namespace rw::stories
