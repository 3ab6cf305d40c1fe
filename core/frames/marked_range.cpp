// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/frames/marked_range.h"

namespace rw {

const Tension& highestPull(const TensionPair& tensions) {
    return tensions.crosses.newtons() > tensions.mains.newtons() ? tensions.crosses : tensions.mains;
}

std::optional<AboveMarked> aboveMarked(const MarkedRange& range, const TensionPair& tensions) {
    const Tension& pull = highestPull(tensions);
    if (!range.highest || pull.newtons() <= range.highest->newtons()) {
        return std::nullopt;
    }
    return AboveMarked{pull, *range.highest};
}

} // namespace rw
