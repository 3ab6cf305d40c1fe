// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/intake.h"
#include "core/length/cut_plan.h"

#include <QLocale>
#include <QString>
#include <QStringList>

// A cut plan in words: why, in what order, how long the short side is.
namespace rw::ui {

/// One reason as a sentence.
[[nodiscard]] QString whyText(const length::Why& why, const QLocale& locale = QLocale());

/// The route as a stringer would say it, arm by arm, from the plan itself:
/// "Short side left: mains 1–8, then cross 1; ends at the head, left." One entry an arm.
[[nodiscard]] QStringList routeLines(const length::CutPlan& plan);
/// "one piece from the head down, one top cross on the short side", "two pieces".
[[nodiscard]] QString routeName(const length::CutPlan& plan);

/// "left, butt-cap logo up".
[[nodiscard]] QString shortSideWhere(const desk::ShortSideProposal& shortSide);
/// "3 m, 8½ head lengths, one top cross".
[[nodiscard]] QString shortSideHowLong(const desk::ShortSideProposal& shortSide, const QLocale& locale = QLocale());
/// "because of the frame: groove in the strip", "matched with A", "chosen", "as usual here".
[[nodiscard]] QString sideFromText(const desk::ShortSideProposal& shortSide);

/// "as last time", "this shop's usual cut", "from the head's measurements".
[[nodiscard]] QString cutFromText(desk::CutFrom from, length::StandsOn head); ///< `head`: what its outline stands on

/// "the highest pull is 30 lb, 4 lb above the marked 26 lb"; "" when it is not above.
[[nodiscard]] QString aboveMarkedText(const desk::IntakePreview& preview, const TensionPair& asked,
                                      const QLocale& locale = QLocale());

} // namespace rw::ui
