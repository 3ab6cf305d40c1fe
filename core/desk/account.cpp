// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/account.h"

namespace rw::desk {

Result<Money> accountOf(Transaction& ledger, CustomerId customer) {
    Money owed = Money::zero(ledger.shop().currency());
    for (const OpenMatter& matter : ledger.reports().openMatters()) {
        if (matter.job.customerId == customer && matter.job.state == JobState::Collected) {
            owed += matter.owed();
        }
    }
    return owed;
}

} // namespace rw::desk
