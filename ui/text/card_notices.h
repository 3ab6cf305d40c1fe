// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/bench.h"

#include <QLocale>
#include <QString>
#include <QTimeZone>

// What the bench must know of a job beside its racket and string.
namespace rw::ui {

/// "not agreed: 30 lb is 4 lb above the marked 26 lb", or "30 lb is 4 lb above the marked 26 lb: Jun's coach agreed,
/// Thu 12 Mar 11:00, told by Oriel Tamm".
[[nodiscard]] QString aboveText(const desk::CardAbove& above, const QTimeZone& zone, const QLocale& locale = QLocale());

/// "changed by Oriel Tamm, Thu 12 Mar 11:05: 50/48 lb instead of 52/50 lb; N nods to it".
[[nodiscard]] QString changeText(const desk::CardChange& change, const TensionPair& asked, const QTimeZone& zone,
                                 const QLocale& locale = QLocale());

/// "Bastian Quill on Bench A since Thu 12 Mar 11:00", "Bastian Quill had it on Bench A until Thu 12 Mar 11:20".
[[nodiscard]] QString handsText(const desk::CardHands& hands, const QTimeZone& zone, const QLocale& locale = QLocale());

/// "came with a cover and a dampener; seen: grommet 7 is worn"; "" when nothing was noted.
[[nodiscard]] QString inspectionText(const Inspection& inspection);

/// "look over", "mains", "crosses", "finish".
[[nodiscard]] QString benchStepWord(BenchStep step);
/// "✓" behind, "▸" here, "○" ahead.
[[nodiscard]] QString benchStepShape(BenchStep step, BenchStep current);

/// "from the customer's own set of 12.2 m"; without a length "from the customer's own set".
[[nodiscard]] QString fromWhereText(const JobPiece& piece, const QLocale& locale = QLocale());

} // namespace rw::ui
