// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/journal.h"

#include <stdexcept>

namespace rw::stories {

namespace {
std::string tryText(int number, const std::optional<Length>& cut, const std::optional<LostReason>& lost) {
    return " " + std::to_string(number) + ":" + (cut ? std::to_string(cut->millimetres()) : "-") +
           (lost ? " " + std::string(lostReasonText(*lost)) : "");
}
} // namespace

std::string storyOf(const Job& job) {
    std::string text(jobStateText(job.state));
    for (const JobPiece& piece : job.pieces) {
        text += "; " + std::string(pieceRoleText(piece.role));
        for (const Attempt& attempt : piece.attempts) {
            text +=
                tryText(attempt.number, attempt.cut ? std::optional(attempt.cut->length) : std::nullopt, attempt.lost);
        }
    }
    return text;
}

void ExpectedBook::apply(const Step& step) {
    if (step.kind == Step::Kind::Receive) {
        m_lots[step.key] = true;
        return;
    }
    if (step.kind == Step::Kind::Log) {
        auto& pieces = m_jobs.try_emplace(step.key).first->second.pieces;
        if (step.what == "hybrid") {
            pieces = {{PieceRole::Mains, {Try{}}}, {PieceRole::Crosses, {Try{}}}};
        } else {
            pieces = {{PieceRole::Whole, {Try{}}}};
        }
        return;
    }
    Entry& entry = m_jobs.at(step.key);
    const auto attempt = static_cast<std::size_t>(step.attempt - 1);
    switch (step.kind) {
    case Step::Kind::Take:
        entry.state = JobState::OnTheMachine;
        break;
    case Step::Kind::Cut:
        entry.pieces.at(step.role).at(attempt).cut = step.length;
        break;
    case Step::Kind::Lose:
        entry.pieces.at(step.role).at(attempt).lost = step.lost;
        entry.pieces.at(step.role).push_back({});
        break;
    case Step::Kind::Finish:
        entry.state = JobState::Strung;
        break;
    default:
        entry.state = JobState::Collected;
        break;
    }
}

std::string ExpectedBook::storyOf(const std::string& key) const {
    if (m_lots.contains(key)) {
        return "on the shelf";
    }
    const auto found = m_jobs.find(key);
    if (found == m_jobs.end()) {
        return "";
    }
    std::string text(jobStateText(found->second.state));
    for (const auto& [role, tries] : found->second.pieces) {
        text += "; " + std::string(pieceRoleText(role));
        for (std::size_t i = 0; i < tries.size(); ++i) {
            text += tryText(static_cast<int>(i) + 1, tries[i].cut, tries[i].lost);
        }
    }
    return text;
}

std::vector<std::string> ExpectedBook::jobKeys() const {
    std::vector<std::string> keys;
    for (const auto& [key, entry] : m_jobs) {
        keys.push_back(key);
    }
    return keys;
}

void Journal::hear(const std::string& line) {
    const auto space = line.find(' ');
    const std::string word = line.substr(0, space);
    if (word == "open") {
        return;
    }
    const Step step = Step::parse(line.substr(space + 1));
    if (word == "intend") {
        m_pending = step;
    } else if (word == "done") {
        settle();
    } else {
        throw std::runtime_error("no line of a journal: " + line);
    }
}

void Journal::settle() {
    m_done.apply(*m_pending);
    m_doneSteps.push_back(*m_pending);
    m_pending.reset();
}

} // namespace rw::stories
