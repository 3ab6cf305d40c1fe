// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/counter.h"
#include "core/desk/intake.h"

#include <QLocale>
#include <QString>
#include <QStringList>
#include <QTimeZone>

// What the counter says while a racket is taken in.
namespace rw::ui {

/// "10.8 m off L-3, as last time: leaves 5.5 m", "9.3 m from the customer's own set", "10.8 m: no reel holds it".
[[nodiscard]] QString pieceProposalText(const desk::PieceProposal& piece, const QLocale& locale = QLocale());

/// "Still needed: a racket, two tensions."
[[nodiscard]] QString stillNeededText(const QStringList& things);

/// "labour £14.00 · full bed £16.00"
[[nodiscard]] QString chargesText(const std::vector<Charge>& charges, const QLocale& locale = QLocale());

/// "marked 50 to 60 lb", "marked at most 26 lb", "" when nothing is marked.
[[nodiscard]] QString markedText(const MarkedRange& marked, const QLocale& locale = QLocale());

/// "2119 Aldermoor 98 A: ● strung, promised today 15:30", one line a job.
[[nodiscard]] QString inTheShopText(const desk::HistoryEntry& entry, Instant now, const QTimeZone& zone,
                                    const QLocale& locale = QLocale());

/// "Logged 2121: Petra Lindobi, Aldermoor 98 A. Write 2121 on the tag. £30.00, promised today 15:30."
[[nodiscard]] QString loggedText(const Job& job, const QString& person, const QString& racket, Instant now,
                                 const QTimeZone& zone, const QLocale& locale = QLocale());

/// "Handed over 2119. Paid £30.00." / "Handed over 2119. £30.00 is still owed."
[[nodiscard]] QString handedOverText(const Job& job, const Money& owed, const std::optional<Money>& paid,
                                     const QLocale& locale = QLocale());

} // namespace rw::ui
