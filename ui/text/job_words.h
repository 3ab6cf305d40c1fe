// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/jobs/job.h"

#include <QLocale>
#include <QString>
#include <QTimeZone>

// A job in words: its state with a shape, what was asked and strung, what was cut.
namespace rw::ui {

/// A shape for each state, so that none is told from another by colour: "○", "◐", "●", "✓", "◇", "×".
[[nodiscard]] QString jobStateShape(JobState state);
/// "◐ on the machine".
[[nodiscard]] QString stateWithShape(JobState state);

/// "54/52 lb asked and strung", "asked 52/50 lb, strung 23.5/22.5 kg", "asked 52/50 lb".
[[nodiscard]] QString askedAndStrungText(const Job& job, const QLocale& locale = QLocale());

/// Lengths that were cut, of the pieces' last attempts, else planned: "10.8 m", "6.2 + 5.6 m".
[[nodiscard]] QString cutLengthsText(const Job& job, const QLocale& locale = QLocale());

/// What became of a cut that is not in the racket: "lost, came short"; "taken back", when it was never made.
/// Precondition: it was lost.
[[nodiscard]] QString lostHowText(const Attempt& attempt);
/// "6.25 m lost, came short; 11.2 m taken back": the cuts of a piece that are not in the racket; "" when there are
/// none.
[[nodiscard]] QString lostText(const JobPiece& piece, const QLocale& locale = QLocale());

/// "20 January 2026: Larkspun 130, 54/52 lb asked and strung, one piece, 10.8 m, Bench A".
/// `strings` and `machine` are names; an empty machine is left out.
[[nodiscard]] QString lastTimeText(const Job& job, const QString& strings, const QString& machine,
                                   const QTimeZone& zone, const QLocale& locale = QLocale());

/// "10.8 m off L-3 is cut, L-3 has 37.9 m" or "the mains are not cut": one line a piece, for a job found on a machine.
[[nodiscard]] QString cutStateText(const JobPiece& piece, const std::optional<Length>& lotLeft, const QString& lotTag,
                                   const QLocale& locale = QLocale());

} // namespace rw::ui
