// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/stock/remnant_value.h"
#include "core/units/length.h"

#include <algorithm>
#include <optional>
#include <span>

namespace rw::stock {

/// A lot as planning sees it. All lots of one question hold one string of one owner.
struct CutSource {
    Length length;                           ///< by the book, without what is planned there already
    Length gap = Length::fromMillimetres(0); ///< stays on it, because the book may be wrong; planning does not count it
    bool sealed = false;
    Instant received = {};
    double pullMm = 0; ///< how much a cut off it may lose beyond another and still be preferred: see agePullMm

    [[nodiscard]] Length usable() const { return std::max(length - gap, Length::fromMillimetres(0)); }
    [[nodiscard]] bool fits(Length piece) const { return usable() >= piece; }
};

/// Where the next piece is best cut.
struct NextCut {
    std::size_t lot;
    double lostMm;                    ///< what the cut loses there (negative: the lot gains by it)
    std::optional<std::size_t> opens; ///< a sealed lot that is offered instead
};

/// No open reel above this: only then a new one is offered, or open ends pile up without bound.
constexpr Length kFullEnough = RemnantValue::kConstantFrom;
/// A cut that loses more than this is worth offering to open a new reel.
constexpr double kWorthOpeningMm = 300;
/// The reel that lies on the machine already is preferred to one that loses up to so much less: to fetch another, hang it
/// up and put this one away takes half a minute, and half a minute of a stringer's work pays for some 20 cm of common
/// string (common practice).
constexpr double kWorthChangingReelMm = 200;

/// Where one piece is best cut now: the open lot that loses least, ties to the older; a sealed one only when it fits
/// on no open one. Nothing when it fits nowhere.
/// A sealed lot is offered beside it when no open lot is above kFullEnough and the best cut loses more than
/// kWorthOpeningMm.
[[nodiscard]] std::optional<NextCut> nextCut(std::span<const CutSource> lots, Length piece, const RemnantValue& value);

/// The pull of an end that lies about: 5 cm for each month (a twelfth of the average year) beyond `months`, nothing
/// before.
[[nodiscard]] double agePullMm(Instant received, Instant now, int months = 6);

} // namespace rw::stock
