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
/// `head`: what the outline of the plan stands on.
[[nodiscard]] QString pieceProposalText(const desk::PieceProposal& piece, length::StandsOn head,
                                        const QLocale& locale = QLocale());

/// "ready today 15:30"; while no reel holds a piece, that first and what could be promised with it.
[[nodiscard]] QString readyText(const desk::IntakePreview& preview, Instant now, const QTimeZone& zone,
                                const QLocale& locale = QLocale());

/// "the set's 12 m are enough, about 11.25 m are needed"; of a tight or short one what would do better.
[[nodiscard]] QString ownSetText(const desk::OwnSet& set, const QLocale& locale = QLocale());

/// Why `text` is longer than the `most` characters that are kept of a `what`; "" when it is not.
[[nodiscard]] QString tooLongText(const QString& text, std::int64_t most, const char* what);

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

/// "Handed over 2119. Paid £30.00." / "Handed over 2119. £30.00 is still owed." / "2119 was handed over already, today
/// 10:40; nothing was booked now. £30.00 was paid for it."
[[nodiscard]] QString handedOverText(const desk::HandedOver& done, Instant now, const QTimeZone& zone,
                                     const QLocale& locale = QLocale());
/// "Job 2119 waits now: a call back." / "Job 2119 goes on."
[[nodiscard]] QString jobCourseText(const Job& job);
/// "£2.00 stays owed", "£1.50 too much: …"; "" when `paying` is just what is owed.
[[nodiscard]] QString paymentText(const Money& owed, const Money& paying, const QLocale& locale = QLocale());

} // namespace rw::ui
