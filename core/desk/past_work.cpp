// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/past_work.h"

#include <algorithm>

namespace rw::desk {

namespace {
// A plan is made while somebody types; what is older than this says little about today's string and machine.
constexpr std::size_t kJobsOfRacket = 6;
constexpr int kJobsOfFrame = 12;

std::vector<Job> standing(Transaction& ledger, const std::vector<JobId>& ids, std::size_t atMost,
                          const std::optional<JobId>& before) {
    std::vector<Job> jobs;
    for (const JobId id : ids) {
        if (jobs.size() == atMost) {
            break;
        }
        // ids grow with time: a job that came later has a greater one
        if (before && id >= *before) {
            continue;
        }
        if (auto job = ledger.jobs().get(id); job && job->state != JobState::Withdrawn) {
            jobs.push_back(*std::move(job));
        }
    }
    return jobs;
}

std::vector<OtherRacket> othersOf(Transaction& ledger, const Racket& racket, Sport sport,
                                  const std::optional<JobId>& before) {
    std::vector<OtherRacket> others;
    for (const Racket& other : ledger.customers().racketsOf(racket.customer)) {
        const auto frame = ledger.frames().get(other.frame);
        if (other.id == racket.id || !frame || frame->sport != sport) {
            continue;
        }
        if (auto jobs = standing(ledger, ledger.jobs().ofRacket(*other.id), 1, before); !jobs.empty()) {
            others.push_back({other, *frame, std::move(jobs.front())});
        }
    }
    std::ranges::sort(others, [&](const OtherRacket& a, const OtherRacket& b) {
        const bool twinA = a.racket.frame == racket.frame;
        const bool twinB = b.racket.frame == racket.frame;
        return twinA != twinB ? twinA : *a.last.id > *b.last.id;
    });
    return others;
}
} // namespace

std::optional<Material> PastWork::materialOf(StringArticleId article) const {
    const auto found = std::ranges::find(articles, std::optional(article), &StringArticle::id);
    return found == articles.end() ? std::nullopt : std::optional(found->material);
}

PastWork recall(Transaction& ledger, const FrameModel& frame, const std::optional<Racket>& racket,
                const std::optional<JobId>& before) {
    PastWork past;
    if (racket) {
        past.ofRacket = standing(ledger, ledger.jobs().ofRacket(*racket->id), kJobsOfRacket, before);
        past.others = othersOf(ledger, *racket, frame.sport, before);
    }
    past.usualCuts = ledger.frames().usualCuts(*frame.id);
    past.articles = ledger.strings().all();
    return past;
}

std::vector<Job> jobsOnFrame(Transaction& ledger, FrameModelId frame) {
    return standing(ledger, ledger.jobs().ofFrame(frame, kJobsOfFrame), kJobsOfFrame, std::nullopt);
}

} // namespace rw::desk
