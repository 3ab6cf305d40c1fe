// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/counter_words.h"

#include "ui/text/format.h"
#include "ui/text/job_words.h"
#include "ui/text/sentences.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace rw::ui {

namespace {
struct CounterWords {
    Q_DECLARE_TR_FUNCTIONS(CounterWords)
};
} // namespace

QString aboveMarkedWords(const std::string& shopsOwn) {
    return shopsOwn.empty()
               ? CounterWords::tr("This is more than the frame's maker stands behind: it may crack or warp, at your own "
                                  "risk. Shall we string it all the same?")
               : fromUtf8(shopsOwn);
}

QString askYesText(const QString& words) {
    return CounterWords::tr("“%1”\nWithout a yes it is logged as not agreed").arg(words);
}

QString readOutText(const QString& words) {
    return CounterWords::tr("“%1”\nEnter keeps the yes, Esc goes back").arg(words);
}

QString nothingToAgreeText(const desk::JobLine& job, bool isAbove) {
    return isAbove ? CounterWords::tr("Job %1: the yes is kept already.").arg(job.number)
                   : CounterWords::tr("Job %1 keeps to the frame's marked maximum.").arg(job.number);
}

QString notAgreedMark() { return CounterWords::tr("▲ not agreed"); }

QString notAgreedText(const Tension& pull, const QLocale& locale) {
    return CounterWords::tr("Not agreed to %1 yet: A among the jobs to be strung (F9) keeps the yes.")
        .arg(tensionText(pull, locale));
}

QString withNotAgreed(const QString& words, const TensionPair& asked, bool notAgreed, const QLocale& locale) {
    return notAgreed ? words + QLatin1Char(' ') + notAgreedText(highestPull(asked), locale) : words;
}

QString aboveText(const AboveMarked& above, const QLocale& locale) {
    const TensionUnit unit = above.marked.unit();
    const QString more = derivedTensionText(above.pull.in(unit) - above.marked.in(unit), unit, 1, locale);
    const QString pull =
        above.pull.unit() == unit
            ? tensionText(above.pull, locale)
            : CounterWords::tr("%1 (%2)").arg(tensionText(above.pull, locale),
                                              derivedTensionText(above.pull.in(unit), unit, 1, locale));
    return CounterWords::tr("%1, %2 above the marked %3").arg(pull, more, tensionText(above.marked, locale));
}

QString agreedText(std::int64_t number, const Consent& consent, const QLocale& locale) {
    const QString words =
        CounterWords::tr("Agreed for job %1: %2").arg(QString::number(number), aboveText(consent.above, locale));
    return consent.agreedBy.empty() ? CounterWords::tr("%1.").arg(words)
                                    : CounterWords::tr("%1, by %2.").arg(words, fromUtf8(consent.agreedBy));
}

QString crossesHigherText(const CrossesRise& rise) {
    return rise.isNone() ? QString()
                         : CounterWords::tr("crosses %1 higher, by the shop's rule")
                               .arg(QString::fromStdString(rise.text()));
}

QString askedChangedText(const Job& job, const QLocale& locale) {
    const QString words = CounterWords::tr("Job %1 is asked at %2 now.")
                              .arg(QString::number(job.number), tensionPairText(job.asked, locale));
    return job.state == JobState::OnTheMachine
               ? CounterWords::tr("%1 It lies on a machine: the bench sees it and nods.").arg(words)
               : words;
}

QString tensionsDifferText(const TensionPair& mine, const TensionPair& theirs, const QLocale& locale) {
    return CounterWords::tr("Another station changed it meanwhile: it is %1 now, yours says %2. Enter takes yours, Esc "
                            "leaves theirs.")
        .arg(tensionPairText(theirs, locale), tensionPairText(mine, locale));
}

QString toldMark(Instant told, Instant now, const QTimeZone& zone, const QLocale& locale) {
    return CounterWords::tr("☎ told %1").arg(promiseText(told, now, zone, locale));
}

QString mustByMark(Instant mustBy, Instant now, const QTimeZone& zone, const QLocale& locale) {
    return CounterWords::tr("must by %1").arg(promiseText(mustBy, now, zone, locale));
}

QString mustByText(const desk::IntakePreview& preview, Instant mustBy, Instant now, const QTimeZone& zone,
                   const QLocale& locale) {
    const QString ready = promiseText(preview.promise, now, zone, locale);
    const QString wanted = promiseText(mustBy, now, zone, locale);
    return preview.afterMustBy ? CounterWords::tr("ready %1 only, and they must have it by %2").arg(ready, wanted)
                               : CounterWords::tr("ready %1, in time for %2").arg(ready, wanted);
}

QString askReasonText() {
    return CounterWords::tr("say why, and name nobody: “team”, “redo”. The discount counts with its reason");
}

QString taxInsideText(const Quote& quote, const QLocale& locale) {
    const bool onTheBill = std::ranges::any_of(
        quote.charges, [](const Charge& charge) { return charge.kind == ChargeKind::Tax; });
    QStringList shares;
    for (const TaxShare& share : quote.taxes) {
        shares << CounterWords::tr("%1 % tax %2")
                      .arg(locale.toString(share.hundredthsPercent / 100.0, 'g', 6), moneyText(share.tax, locale));
    }
    return onTheBill || shares.isEmpty()
               ? QString()
               : CounterWords::tr("with %1 in it").arg(shares.join(QStringLiteral(", ")));
}

QString toldText(const Job& job) { return CounterWords::tr("Job %1: the customer was told.").arg(job.number); }

QString broughtBackText(const Job& job) {
    return CounterWords::tr("%1 hangs on the rack again; anything paid at that hand-over is taken back.")
        .arg(job.number);
}

QString nothingToBringBackText() {
    return CounterWords::tr("Nothing was handed over at this window since it was opened.");
}

QString wentHomeMark(const desk::UnpaidJob& job, Instant now, const QTimeZone& zone, const QLocale& locale) {
    const QString when = promiseText(job.collected, now, zone, locale);
    return job.handover.onAccount ? CounterWords::tr("✓ went home %1, on account").arg(when)
                                  : CounterWords::tr("✓ went home %1, nothing said").arg(when);
}

QString owedMark(const Money& owed, const QLocale& locale) {
    return CounterWords::tr("%1 owed").arg(moneyText(owed, locale));
}

QString paidText(const desk::PaymentTaken& taken, const QLocale& locale) {
    QString words = CounterWords::tr("Paid %1 for job %2.")
                        .arg(moneyText(taken.paidNow, locale), QString::number(taken.job.number));
    if (taken.owed().minor() > 0) {
        words += CounterWords::tr(" %1 is still owed.").arg(moneyText(taken.owed(), locale));
    } else if (taken.owed().minor() < 0) {
        words += CounterWords::tr(" %1 is in the customer's favour.").arg(moneyText(-taken.owed(), locale));
    }
    return words;
}

QString nothingUnpaidText() {
    return CounterWords::tr("Nothing that went home is still owed, and nothing is to be given back.");
}

QString withdrawnText(const Job& job, const Money& paid, const QLocale& locale) {
    const QString words =
        CounterWords::tr("Job %1 is withdrawn; the string promised to it is free again.").arg(job.number);
    return paid.minor() > 0 ? CounterWords::tr("%1 %2 was paid for it and is to be given back (F7).")
                                  .arg(words, moneyText(paid, locale))
                            : words;
}

QString toGiveBackMark(const desk::ToGiveBack& back, const QLocale& locale) {
    const QString theirs = moneyText(back.amount, locale);
    return back.job.state == JobState::Withdrawn ? CounterWords::tr("%1 to give back").arg(theirs)
                                                 : CounterWords::tr("%1 in their favour").arg(theirs);
}

QString gaveBackText(const desk::GivenBack& given, const QLocale& locale) {
    const QString what = given.already ? CounterWords::tr("%1 was given back before for job %2.")
                                       : CounterWords::tr("Given back %1 for job %2.");
    const QString words = what.arg(moneyText(given.givenNow, locale), QString::number(given.job.number));
    return given.left.minor() > 0
               ? CounterWords::tr("%1 %2 is still to be given back.").arg(words, moneyText(given.left, locale))
               : words;
}

QString giveBackText(const Money& theirs, const Money& giving, const QLocale& locale) {
    const Money left = theirs - giving;
    if (left.minor() < 0) {
        return CounterWords::tr("%1 more than is theirs").arg(moneyText(-left, locale));
    }
    return left.minor() > 0 ? CounterWords::tr("%1 stays to be given back").arg(moneyText(left, locale)) : QString();
}

QString askRemovalText() {
    return CounterWords::tr("name, numbers, notes and who agreed or collected are erased for good; jobs, string and "
                            "sums stay without a name. Enter removes, Esc keeps");
}

QString removedText(const QString& name) {
    return CounterWords::tr("%1 is removed; what the books need stays without a name.").arg(name);
}

QString nobodyToRemoveText() { return CounterWords::tr("Find the person first who asks to be removed."); }

QString accountText(const Money& owed, const QLocale& locale) {
    if (owed.minor() == 0) {
        return {};
    }
    return owed.minor() > 0 ? CounterWords::tr("%1 owed from before (F7)").arg(moneyText(owed, locale))
                            : CounterWords::tr("%1 in their favour (F7)").arg(moneyText(-owed, locale));
}

QString unusualPullText(const Tension& pull, Sport sport, const QLocale& locale) {
    return CounterWords::tr("%1 is unusual for %2: is the unit right?").arg(tensionText(pull, locale), sportWord(sport));
}

QString hereText(const desk::JobLine& job, Instant now, const QTimeZone& zone, const QLocale& locale) {
    const QString words =
        CounterWords::tr("here: No. %1, %2").arg(QString::number(job.number), stateWithShape(job.state));
    return job.promised && job.state != JobState::Strung
               ? CounterWords::tr("%1, promised %2").arg(words, promiseText(*job.promised, now, zone, locale))
               : words;
}

QString hereAlreadyText(const QString& words) {
    return CounterWords::tr("this racket is in the shop already: %1. Log it again and it becomes a second job").arg(words);
}

QString historyOfWhatText() {
    return CounterWords::tr("History is that of a person or a racket: find one first.");
}

QString emptyRackText() {
    return CounterWords::tr("Nothing hangs on the rack. A racket comes here when the bench has finished it.");
}

QString nothingToBeStrungText() {
    return CounterWords::tr("Nothing waits to be strung. A racket comes here when it is logged.");
}

QString askedForNoneHintText() {
    return CounterWords::tr("It counts as a job that was wanted, so that the stockroom orders enough.");
}

QString whichStringAskedText() { return CounterWords::tr("Which string was asked for?"); }

QString askedForNoneText(const StringArticle& string) {
    return CounterWords::tr("Written down: somebody asked for %1. It counts as a job that was wanted.")
        .arg(fromUtf8(string.code) + QLatin1Char(' ') + fromUtf8(string.name));
}

} // namespace rw::ui
