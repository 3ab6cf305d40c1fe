// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/job_paper.h"

#include "core/desk/settings.h"

namespace rw::desk {

Result<JobPaper> jobPaper(Transaction& ledger, JobId job, const std::optional<MachineId>& machine) {
    auto card = jobCard(ledger, job, machine);
    if (!card) {
        return tl::unexpected(card.error());
    }
    return JobPaper{*std::move(card), ledger.shop().setting(setting::kShopName).value_or(std::string()),
                    ledger.jobs().paid(job)};
}

} // namespace rw::desk
