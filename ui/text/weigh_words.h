// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stock_take.h"

#include <QLocale>
#include <QString>
#include <QStringList>
#include <QTimeZone>

// What a scale says of a lot, beside the book.
namespace rw::ui {

/// "236.4 g".
[[nodiscard]] QString massText(Mass mass, const QLocale& locale = QLocale());
/// "236.4": the grams alone, as they are typed.
[[nodiscard]] QString massNumber(Mass mass, const QLocale& locale = QLocale());
/// "50.6 m ± 1.2 m": with twice its uncertainty, to the decimetre; below half a metre of it to the centimetre.
[[nodiscard]] QString sureLengthText(const stock::Estimate& millimetres, const QLocale& locale = QLocale());
/// "48.9 m ± 0.9 m against its weight when new".
[[nodiscard]] QString weighedText(const desk::WeighIn& in, const QLocale& locale = QLocale());
/// "The book is right, as far as a scale can tell." "11.1 m less than the book says." The same of a finding and none.
[[nodiscard]] QString weighVerdictText(const desk::WeighIn& in, const QLocale& locale = QLocale());
/// "−11.1 m": what booking it changes.
[[nodiscard]] QString weighedChangeText(const desk::WeighIn& in, const QLocale& locale = QLocale());
/// "It may be: a job that nobody booked; the empty weight of another spool; the tag of another reel." "" without a
/// finding.
[[nodiscard]] QString weighCausesText(const desk::WeighIn& in, const QLocale& locale = QLocale());
/// What else is to be known of it: whose spool was taken, that it was kept as the weight when new, how long it was
/// then.
[[nodiscard]] QStringList weighNotes(const desk::WeighIn& in, const QLocale& locale = QLocale());
/// "✓ right", "▲ look", "● booked", "○ new": how a line of the stock-take stands, in a word with its shape.
[[nodiscard]] QString weighStateText(const desk::WeighIn& in);
/// The whole of what is said about a line, in sentences.
[[nodiscard]] QString weighStoryText(const desk::WeighIn& in, const QLocale& locale = QLocale());

/// "6 weighed, 1 to look at. Still to weigh: K-2 and L-3 to L-5; 12 packets are counted."
[[nodiscard]] QString stockTakeText(const desk::StockTakeSheet& sheet);
/// "Begun Thu 12 Mar 11:00 by Bastian Quill, ended Thu 12 Mar 11:20 by Bastian Quill."
[[nodiscard]] QString stockTakeWhenText(const StockTake& take, const QString& startedBy, const QString& endedBy,
                                        const QTimeZone& zone, const QLocale& locale = QLocale());
[[nodiscard]] QString weighFirstText(); ///< where nothing was weighed yet
[[nodiscard]] QString weighNextText();  ///< what the keys do once something was
/// "K-7 holds 48.9 m now, as it was weighed. Ctrl+Z takes that back."
[[nodiscard]] QString weighBookedText(const desk::WeighIn& in, const QLocale& locale = QLocale());
[[nodiscard]] QString stockTakeEndedText();
[[nodiscard]] QString stockTakeTitle(); ///< of the sheet that is signed

/// What weighing can tell, and what it cannot.
[[nodiscard]] QString weighLimitsText();

} // namespace rw::ui
