// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/counter.h"
#include "core/desk/give_back.h"
#include "core/desk/intake.h"
#include "core/desk/payment.h"
#include "core/jobs/consent.h"
#include "core/jobs/crosses_rise.h"

#include <QLocale>
#include <QString>
#include <QTimeZone>

#include <string>

// What the counter says of what was agreed, of people who leave, and of what its lists hold.
namespace rw::ui {

/// The words that are read out for the informed yes: the shop's own, or the program's where it has none.
[[nodiscard]] QString aboveMarkedWords(const std::string& shopsOwn);
/// Beside the question whether the customer agrees: those words, and what follows without a yes.
[[nodiscard]] QString askYesText(const QString& words);
/// The same where the yes is kept later, among the jobs to be strung.
[[nodiscard]] QString readOutText(const QString& words);
/// Why there is nothing to say yes to: it keeps to the mark, or was agreed to.
[[nodiscard]] QString nothingToAgreeText(const desk::JobLine& job, bool isAbove);
/// "▲ not agreed": of a job, where a list says it.
[[nodiscard]] QString notAgreedMark();
/// "Not agreed to 30 lb yet: …", after such a job was logged or changed.
[[nodiscard]] QString notAgreedText(const Tension& pull, const QLocale& locale = QLocale());
/// `words`, and notAgreedText() after it where nobody said yes.
[[nodiscard]] QString withNotAgreed(const QString& words, const TensionPair& asked, bool notAgreed,
                                    const QLocale& locale = QLocale());
/// "Agreed for job 2129: 30 lb, 4 lb above the marked 26 lb." / "…, by her coach."
[[nodiscard]] QString agreedText(std::int64_t number, const Consent& consent, const QLocale& locale = QLocale());
/// "30 lb, 4 lb above the marked 26 lb": both in the unit of the mark, and the pull as it was asked too.
[[nodiscard]] QString aboveText(const AboveMarked& above, const QLocale& locale = QLocale());
/// "crosses 2 lb higher, by the shop's rule"; "" for a shop that does not.
[[nodiscard]] QString crossesHigherText(const CrossesRise& rise);

/// "Job 2129 is asked at 52/50 lb now." On the machine: that the bench nods to it first.
[[nodiscard]] QString askedChangedText(const Job& job, const QLocale& locale = QLocale());
/// Two stations agreed on something else: both pairs, and which key takes which.
[[nodiscard]] QString tensionsDifferText(const TensionPair& mine, const TensionPair& theirs,
                                         const QLocale& locale = QLocale());

/// "☎ told today 10:40".
[[nodiscard]] QString toldMark(Instant told, Instant now, const QTimeZone& zone, const QLocale& locale = QLocale());
/// "must by Fri 13 Mar 17:00".
[[nodiscard]] QString mustByMark(Instant mustBy, Instant now, const QTimeZone& zone,
                                 const QLocale& locale = QLocale());
/// "ready Fri 15:00, in time for Fri 17:00"; "ready Sat 12:00 only, and they must have it by Fri 17:00".
[[nodiscard]] QString mustByText(const desk::IntakePreview& preview, Instant mustBy, Instant now, const QTimeZone& zone,
                                 const QLocale& locale = QLocale());
[[nodiscard]] QString askReasonText(); ///< a discount counts with its reason
/// "with 20 % tax £5.00 in it", of prices that include it; "" where nothing is taxed or tax stands on the bill.
[[nodiscard]] QString taxInsideText(const Quote& quote, const QLocale& locale = QLocale());
[[nodiscard]] QString toldText(const Job& job);        ///< "Job 2119: the customer was told."
[[nodiscard]] QString broughtBackText(const Job& job); ///< "2119 hangs on the rack again; …"
[[nodiscard]] QString nothingToBringBackText();
/// "✓ went home Tue 10 Mar 16:30, on account" / "…, nothing was said".
[[nodiscard]] QString wentHomeMark(const desk::UnpaidJob& job, Instant now, const QTimeZone& zone,
                                   const QLocale& locale = QLocale());
[[nodiscard]] QString owedMark(const Money& owed, const QLocale& locale = QLocale()); ///< "£30.00 owed"
/// "Paid £10.00 for job 2119. £20.00 is still owed."
[[nodiscard]] QString paidText(const desk::PaymentTaken& taken, const QLocale& locale = QLocale());
[[nodiscard]] QString nothingUnpaidText();
/// "Job 2119 is withdrawn; …": and what of `paid` is to be given back.
[[nodiscard]] QString withdrawnText(const Job& job, const Money& paid, const QLocale& locale = QLocale());
/// "£24.00 to give back"; "£2.00 in their favour" where the job was done.
[[nodiscard]] QString toGiveBackMark(const desk::ToGiveBack& back, const QLocale& locale = QLocale());
/// "Given back £10.00 for job 2119. £14.00 is still to be given back."
[[nodiscard]] QString gaveBackText(const desk::GivenBack& given, const QLocale& locale = QLocale());
/// Beside the amount: what of `theirs` stays to be given back.
[[nodiscard]] QString giveBackText(const Money& theirs, const Money& giving, const QLocale& locale = QLocale());

[[nodiscard]] QString askRemovalText(); ///< what goes and what stays
[[nodiscard]] QString removedText(const QString& name);
[[nodiscard]] QString nobodyToRemoveText();
[[nodiscard]] QString historyOfWhatText();
/// "£24.00 owed from before (F7)", "£2.00 in their favour (F7)"; "" when they are even.
[[nodiscard]] QString accountText(const Money& owed, const QLocale& locale = QLocale());
/// "57.3 lb is unusual for squash: is the unit right?"
[[nodiscard]] QString unusualPullText(const Tension& pull, Sport sport, const QLocale& locale = QLocale());
/// "here: No. 2119, ○ logged, promised Fri 17:00": of a racket where one is chosen.
[[nodiscard]] QString hereText(const desk::JobLine& job, Instant now, const QTimeZone& zone,
                               const QLocale& locale = QLocale());
/// A racket that is here is about to be logged again; `words` say as what it is here.
[[nodiscard]] QString hereAlreadyText(const QString& words);
[[nodiscard]] QString emptyRackText();
[[nodiscard]] QString nothingToBeStrungText();

[[nodiscard]] QString askedForNoneHintText(); ///< what writing it down is good for
[[nodiscard]] QString whichStringAskedText(); ///< none was chosen
/// "Written down: somebody asked for L Larkspun 130. It counts as a job that the stockroom orders for."
[[nodiscard]] QString askedForNoneText(const StringArticle& string);

} // namespace rw::ui
