// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/promise_for.h"

#include <algorithm>
#include <vector>

namespace rw::desk {

namespace {
using std::chrono::minutes;
/// How many jobs a rush job leaves ahead of itself: it goes as far forward as no promise is broken by it that would
/// have been kept. `done`: when each place of the queue and one more is done; every job takes the same time.
std::size_t placeForRush(const std::vector<JobLine>& queue, const std::vector<Instant>& done, std::size_t onMachines) {
    const auto breaks = [&](std::size_t job) {
        const auto& promised = queue[job].promised;
        return promised && done[job] <= *promised && done[job + 1] > *promised;
    };
    std::size_t place = queue.size();
    while (place > onMachines && !breaks(place - 1)) {
        --place;
    }
    return place;
}

Instant earliest(Transaction& ledger, const ShopSettings& settings, const Workshop& workshop, Instant now, bool rush) {
    std::vector<JobLine> lines = ledger.jobs().inStates({JobState::Logged, JobState::OnTheMachine});
    const auto waiting = std::stable_partition(
        lines.begin(), lines.end(), [](const JobLine& line) { return line.state == JobState::OnTheMachine; });
    std::size_t ahead = lines.size();
    if (rush) {
        const std::vector<minutes> jobs(lines.size() + 1, settings.minutesPerJob);
        ahead = placeForRush(lines, workDone(workshop, now, jobs), static_cast<std::size_t>(waiting - lines.begin()));
    }
    return earliestPromise(workshop, now, std::vector<minutes>(ahead, settings.minutesPerJob), settings.minutesPerJob);
}
} // namespace

Instant promiseFor(Transaction& ledger, const ShopSettings& settings, Instant now, bool rush) {
    return earliest(ledger, settings, workshopOf(ledger.shop(), settings), now, rush);
}

bool canBeDoneBy(Transaction& ledger, const ShopSettings& settings, Instant now, bool rush, Instant told) {
    Workshop workshop = workshopOf(ledger.shop(), settings);
    workshop.marginPercent = 0;
    workshop.step = minutes(1);
    return earliest(ledger, settings, workshop, now, rush) <= told;
}

} // namespace rw::desk
