// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/working_day.h"

#include <algorithm>
#include <optional>
#include <stdexcept>
#include <vector>

namespace rw::stories {

namespace {
constexpr int kJobsAReel = 8;

Job look(desk::Ledger& ledger, const std::string& key) {
    return read(ledger, [&](desk::Transaction& open) { return Result<Job>(jobOf(open, key)); });
}

/// The first piece that is still to be cut, as a command; nothing when all are.
std::optional<Step> nextCut(const Job& job) {
    const auto piece = std::ranges::find_if(job.pieces, [](const JobPiece& each) { return !each.isCut(); });
    if (piece == job.pieces.end()) {
        return std::nullopt;
    }
    return Step{.kind = Step::Kind::Cut,
                .key = job.requestKey,
                .role = piece->role,
                .attempt = piece->current().number,
                .length = piece->planned};
}
} // namespace

void WorkingDay::give(const Step& step) {
    if (!m_give(step)) {
        throw std::runtime_error("refused: " + step.text());
    }
}

void WorkingDay::takeUpWhatWasLeft(desk::Ledger& ledger) {
    const auto left = read(ledger, [](desk::Transaction& open) {
        std::vector<std::string> keys;
        for (const desk::JobLine& line : open.jobs().inStates({JobState::Logged, JobState::OnTheMachine})) {
            keys.push_back(open.jobs().get(line.id)->requestKey);
        }
        return Result<std::vector<std::string>>(std::move(keys));
    });
    for (const std::string& key : left) {
        finish(ledger, key);
    }
}

void WorkingDay::nextJob(desk::Ledger& ledger) {
    if (m_jobs % kJobsAReel == 0) {
        const std::string number = std::to_string(m_jobs / kJobsAReel);
        give({.kind = Step::Kind::Receive, .key = "K-" + m_prefix + number, .what = "K", .length = mm(200'000)});
        give({.kind = Step::Kind::Receive, .key = "L-" + m_prefix + number, .what = "L", .length = mm(200'000)});
    }
    const std::string key = m_prefix + "-" + std::to_string(++m_jobs);
    give({.kind = Step::Kind::Log, .key = key, .what = oneIn(2) ? "hybrid" : "whole"});
    finish(ledger, key);
    if (oneIn(2)) {
        give({.kind = Step::Kind::Collect, .key = key});
    }
}

void WorkingDay::finish(desk::Ledger& ledger, const std::string& key) {
    give({.kind = Step::Kind::Take, .key = key});
    for (auto cut = nextCut(look(ledger, key)); cut; cut = nextCut(look(ledger, key))) {
        give(*cut);
        if (cut->attempt == 1 && oneIn(4)) {
            Step lost = *cut;
            lost.kind = Step::Kind::Lose;
            lost.lost = oneIn(2) ? LostReason::CameShort : LostReason::Kinked;
            give(lost);
        }
    }
    give({.kind = Step::Kind::Finish, .key = key});
}

} // namespace rw::stories
