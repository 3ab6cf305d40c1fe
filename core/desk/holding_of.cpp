// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/holding_of.h"

namespace rw::desk {

Holding holdingOf(const std::vector<Lot>& lots, const std::vector<PlannedCut>& planned, StringArticleId article,
                  const std::optional<CustomerId>& owner) {
    Holding holding{Length::fromMillimetres(0), Length::fromMillimetres(0)};
    for (const Lot& lot : lots) {
        if (lot.isOpen() && lot.article == article && lot.owner == owner) {
            holding.left += lot.length;
        }
    }
    for (const PlannedCut& cut : planned) {
        if (cut.article == article && cut.owner == owner) {
            holding.promised += cut.length;
        }
    }
    return holding;
}

} // namespace rw::desk
