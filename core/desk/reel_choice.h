// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"
#include "core/stock/next_cut.h"
#include "core/stock/queue_reasons.h"

#include <optional>
#include <string>
#include <vector>

// Which reel the next piece of a string comes off, among the lots as the ledger has them.
namespace rw::desk {

/// What there is to say about cutting a piece off a lot, beside whether it fits.
struct CutReason {
    std::optional<stock::QueueReason> left = std::nullopt; ///< when the job's last piece off this lot is cut
    bool opens = false;                                    ///< nothing was ever cut from it
    /// The opened reel that it would fit on too, and loses too much there: why another is opened.
    struct Spared {
        std::string tag;
        double lostMm;
        bool operator==(const Spared&) const = default;
    };
    std::optional<Spared> spared = std::nullopt;
    bool onTheMachine = false; ///< the last cut on the machine came off it
};

/// A lot as planning sees it, with `committed` of it spoken for. The end of an open reel pulls the longer it has lain
/// here; one that is spoken for will be open when its turn comes.
[[nodiscard]] stock::CutSource cutSource(const Lot& lot, Length committed, Instant now);

struct ReelChoice {
    LotId lot;
    std::optional<CutReason::Spared> spared = std::nullopt;
};
/// The open lot of `owner` that loses least by the piece (core/stock/next_cut.h), beside what is planned there and with
/// the planner's gap; a sealed one when it fits on no open one, or is better opened. No full packet: those have a price
/// of their own. Nothing when it fits nowhere.
[[nodiscard]] std::optional<ReelChoice> chooseReel(const std::vector<Lot>& lots, const std::vector<PlannedCut>& planned,
                                                   Length piece, const std::optional<CustomerId>& owner,
                                                   const stock::RemnantValue& value, Instant now);

} // namespace rw::desk
