// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/bench.h"
#include "core/desk/set_end_aside.h"
#include "core/desk/undo.h"

#include <QLocale>
#include <QString>
#include <QTimeZone>

// What the bench says: the card in words, what comes next, what was done.
namespace rw::ui {

/// The card as it would be read out: what to know first, job, racket, string, both tensions, the machine's settings,
/// the pieces, the short side, the note. For people who do not see it.
[[nodiscard]] QString cardInWords(const desk::JobCard& card, const QTimeZone& zone, const QLocale& locale = QLocale());

/// "Petra Lindobi, Aldermoor 98 A".
[[nodiscard]] QString whoseRacketText(const desk::JobCard& card);

/// "take it on Bench B", "take it on Bench A, where 2122 lies already", "cut 10.8 m off L-3 for one piece", "say what
/// was strung".
[[nodiscard]] QString takeText(const QString& machine, const std::optional<std::int64_t>& lyingThere = std::nullopt);
/// "take it on Bench A beside 2122 all the same", once that was said. "2122 lies on this machine too. Enter again cuts
/// for 2121.", beside a cut.
[[nodiscard]] QString takeAllTheSameText(const QString& machine, std::int64_t other);
[[nodiscard]] QString cutAllTheSameText(std::int64_t other, std::int64_t mine);
[[nodiscard]] QString cutText(const desk::CardPiece& piece, const QLocale& locale = QLocale());
[[nodiscard]] QString finishText();
/// What stands in and beside the line for tails while nothing is typed there: "mains / crosses", and what may be said.
[[nodiscard]] QString tailsHintText(Method method);
[[nodiscard]] QString tailsNoteText();
/// "nod: 50/48 lb instead of 52/50 lb"; and what is said when somebody would finish first.
[[nodiscard]] QString nodText(const desk::CardChange& change, const TensionPair& asked,
                              const QLocale& locale = QLocale());
[[nodiscard]] QString nodFirstText(const desk::CardChange& change, const TensionPair& asked,
                                   const QLocale& locale = QLocale());
[[nodiscard]] QString noddedText(const Job& job, const QLocale& locale = QLocale());
/// "one piece 10.8 m off L-3". Precondition: it is cut.
[[nodiscard]] QString cutPieceText(const JobPiece& piece, const QLocale& locale = QLocale());

/// "Cut 10.8 m off L-3, which now holds 37.9 m. The book was corrected by -0.05 m." or "Already cut; nothing changed."
[[nodiscard]] QString cutDoneText(const desk::CutDone& done, Length length, const QLocale& locale = QLocale());
/// "Lost 5.6 m of crosses: came short. The next cut is 5.75 m."
[[nodiscard]] QString lostText(const Job& job, PieceRole role, LostReason reason, const QLocale& locale = QLocale());
/// "Job 2121 is strung, 23.5/22.5 kg. Hang it on the rack."
[[nodiscard]] QString finishedText(const Job& job, const QLocale& locale = QLocale());

/// "K-2 is kept as a remnant of 6.05 m. The mains come off K-4."
[[nodiscard]] QString endSetAsideText(const desk::EndSetAside& aside, PieceRole role,
                                      const QLocale& locale = QLocale());
/// "Ctrl+R keeps it as a remnant.", beside an end that is too short.
[[nodiscard]] QString mayBeSetAsideText();
[[nodiscard]] QString measureToSetAsideText();

/// "45 m is 33.8 m more than was planned. Enter again takes it."
[[nodiscard]] QString farCutText(Length length, Length planned, const QLocale& locale = QLocale());
/// "25/50 lb is far from the 52/50 lb that is asked. Enter again takes it."
[[nodiscard]] QString farStrungText(const TensionPair& strung, const TensionPair& asked,
                                    const QLocale& locale = QLocale());

/// What would be taken back, and what is said once it was.
[[nodiscard]] QString takeBackText(const desk::LastDone& last, const QLocale& locale = QLocale());
[[nodiscard]] QString takenBackText(const desk::LastDone& last, const QLocale& locale = QLocale());
[[nodiscard]] QString nothingToTakeBackText();

/// "Bench B: dial in kg by 0.5, reach 0.3 m".
[[nodiscard]] QString machineText(const desk::Machine& machine, const QLocale& locale = QLocale());
/// "off L-3, 48.7 m left", "off remnant K-2, 6.05 m left".
[[nodiscard]] QString offLotText(const Lot& lot, const QLocale& locale = QLocale());

/// What stands where the card would be: while it is looked up, and when nothing waits.
[[nodiscard]] QString cardIsComingText();
[[nodiscard]] QString nothingWaitsText();
[[nodiscard]] QString jobChangedText();
[[nodiscard]] QString noRacketForHistoryText();

/// "Job 2120, Aldermoor 98 A of Petra Lindobi, is on Bench A; mains: not cut, K-7 holds 60 m." What the first screen
/// says of a job that was on a machine when the program was last closed, or stopped.
[[nodiscard]] QString foundOnMachineText(const desk::JobCard& card, const QLocale& locale = QLocale());

} // namespace rw::ui
