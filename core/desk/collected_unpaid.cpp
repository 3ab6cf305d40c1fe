// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/counter.h"

#include <algorithm>

namespace rw::desk {

Result<std::vector<UnpaidJob>> collectedUnpaid(Transaction& ledger) {
    std::vector<UnpaidJob> unpaid;
    for (OpenMatter& matter : ledger.reports().openMatters()) {
        if (matter.collected && matter.owed().minor() > 0) {
            const Money owed = matter.owed();
            Handover handover = ledger.jobs().handover(matter.job.id).value_or(Handover());
            unpaid.push_back({std::move(matter.job), *matter.collected, owed, std::move(handover)});
        }
    }
    std::ranges::stable_sort(unpaid, {}, &UnpaidJob::collected);
    return unpaid;
}

} // namespace rw::desk
