// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/queue_reasons.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace rw::stock {

namespace {
using Kind = QueueReason::Kind;
}

QueueReason whatIsLeft(const CutSource& source, Length cut, const RemnantValue& value) {
    const Length leaves = source.length - cut;
    const Length usable = std::max(source.usable() - cut, Length::fromMillimetres(0));
    QueueReason reason{.kind = Kind::LeavesUseful, .leaves = leaves, .lostMm = value.likelyLost(usable)};
    if (leaves > kFullEnough) {
        reason.kind = Kind::LeavesPlenty;
    } else if (usable < value.shortestUseful()) {
        reason.kind = Kind::LeavesScrap;
    } else if (reason.lostMm > value.likelyLost(kFullEnough) + kWorthOpeningMm) {
        reason.kind = Kind::LeavesBadEnd;
    } else {
        const double useful = static_cast<double>(usable.millimetres()) - reason.lostMm;
        reason.later = std::llround(useful / value.meanWantedMm());
        reason.whole = static_cast<double>(usable.millimetres()) >= value.meanWantedMm();
    }
    return reason;
}

std::vector<QueueReason> reasonsFor(const QueuePlan& plan, std::span<const QueueLot> lots,
                                    std::span<const QueuePiece> pieces, std::span<const double> uncertaintiesMm,
                                    const RemnantValue& value) {
    assert(uncertaintiesMm.size() == lots.size() && plan.placing.size() == pieces.size());
    std::vector<QueueReason> reasons;
    std::vector<Length> cut(lots.size(), Length::fromMillimetres(0));
    for (std::size_t piece = 0; piece < pieces.size(); ++piece) {
        if (const auto lot = plan.placing[piece]) {
            cut[*lot] += pieces[piece].length;
        } else {
            reasons.push_back({.kind = Kind::FitsNowhere, .piece = piece});
        }
    }
    for (std::size_t lot = 0; lot < lots.size(); ++lot) {
        if (!cut[lot].isPositive()) {
            continue;
        }
        const CutSource& source = lots[lot].source;
        if (source.sealed) {
            reasons.push_back({.kind = Kind::OpensSealed, .lot = lot});
        }
        reasons.push_back(whatIsLeft(source, cut[lot], value));
        reasons.back().lot = lot;
        const Length leaves = reasons.back().leaves;
        if (static_cast<double>(leaves.millimetres()) < 2 * uncertaintiesMm[lot]) {
            reasons.push_back({.kind = Kind::MeasureFirst, .lot = lot, .leaves = leaves});
        }
    }
    if (!plan.proven) {
        reasons.push_back({.kind = Kind::TimeWasUp});
    }
    return reasons;
}

} // namespace rw::stock
