// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/promise_for.h"

#include <algorithm>

namespace rw::desk {

namespace {
using std::chrono::minutes;
using Queue = std::vector<std::optional<Instant>>; ///< the promise of each job, in the order they will be strung

class Schedule {
public:
    Schedule(const ShopSettings& settings, Instant now)
        : m_exact(settings.workshop)
        , m_now(now)
        , m_each(settings.minutesPerJob) {
        m_exact.marginPercent = 0;
        m_exact.step = minutes(1);
    }

    /// Of each job from `from` on, whether its promise is kept with `more` jobs put in before it.
    [[nodiscard]] std::vector<bool> kept(const Queue& queue, std::size_t from, std::size_t more) const {
        std::vector<bool> result;
        for (std::size_t i = from; i < queue.size(); ++i) {
            result.push_back(!queue[i] || finished(i + more) <= *queue[i]);
        }
        return result;
    }

private:
    [[nodiscard]] Instant finished(std::size_t ahead) const {
        return earliestPromise(m_exact, m_now, std::vector<minutes>(ahead, m_each), m_each);
    }

    Workshop m_exact; ///< without margin and step: when the work itself is done
    Instant m_now;
    minutes m_each;
};

/// How many jobs a rush job leaves ahead of itself.
std::size_t placeForRush(const Schedule& schedule, const Queue& queue, std::size_t onMachines) {
    for (std::size_t place = onMachines; place < queue.size(); ++place) {
        const auto without = schedule.kept(queue, place, 0);
        const auto with = schedule.kept(queue, place, 1);
        if (std::ranges::equal(without, with, [](bool before, bool after) { return after || !before; })) {
            return place;
        }
    }
    return queue.size();
}
} // namespace

Instant promiseFor(Transaction& ledger, const ShopSettings& settings, Instant now, bool rush) {
    std::vector<JobLine> lines = ledger.jobs().inStates({JobState::Logged, JobState::OnTheMachine});
    const auto waiting = std::stable_partition(
        lines.begin(), lines.end(), [](const JobLine& line) { return line.state == JobState::OnTheMachine; });
    std::size_t ahead = lines.size();
    if (rush) {
        Queue queue;
        for (const JobLine& line : lines) {
            queue.push_back(line.promised);
        }
        ahead = placeForRush(Schedule(settings, now), queue, static_cast<std::size_t>(waiting - lines.begin()));
    }
    return earliestPromise(settings.workshop, now, std::vector<minutes>(ahead, settings.minutesPerJob),
                           settings.minutesPerJob);
}

} // namespace rw::desk
