// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/card_notices.h"

#include "ui/text/format.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <QStringList>

namespace rw::ui {

namespace {
struct CardNotices {
    Q_DECLARE_TR_FUNCTIONS(CardNotices)
};

QString howFarAbove(const AboveMarked& above, const QLocale& locale) {
    const TensionUnit unit = above.marked.unit();
    return CardNotices::tr("%1 is %2 above the marked %3")
        .arg(tensionText(above.pull, locale),
             derivedTensionText(above.pull.in(unit)-above.marked.in(unit), unit, 1, locale),
             tensionText(above.marked, locale));
}

/// A name that was removed, or that nobody knows, leaves no gap.
QString somebody(const std::string& name) { return name.empty() ? CardNotices::tr("somebody") : fromUtf8(name); }
} // namespace

QString aboveText(const desk::CardAbove& above, const QTimeZone& zone, const QLocale& locale) {
    const QString howFar = howFarAbove(above.above, locale);
    if (!above.consent) {
        return CardNotices::tr("not agreed: %1").arg(howFar);
    }
    const QString who =
        above.consent->agreedBy.empty() ? CardNotices::tr("the customer") : fromUtf8(above.consent->agreedBy);
    return CardNotices::tr("%1: %2 agreed, %3, told by %4")
        .arg(howFar, who, momentText(above.consent->by.at, zone, locale), somebody(above.toldBy));
}

QString changeText(const desk::CardChange& change, const TensionPair& asked, const QTimeZone& zone,
                   const QLocale& locale) {
    return CardNotices::tr("changed by %1, %2: %3 instead of %4; N nods to it")
        .arg(somebody(change.by), momentText(change.at, zone, locale), tensionPairText(asked, locale),
             tensionPairText(change.before, locale));
}

QString handsText(const desk::CardHands& hands, const QTimeZone& zone, const QLocale& locale) {
    const QString since = momentText(hands.since, zone, locale);
    if (hands.machine.empty()) {
        return (hands.lies ? CardNotices::tr("%1 has it since %2") : CardNotices::tr("%1 had it until %2"))
            .arg(somebody(hands.name), since);
    }
    return (hands.lies ? CardNotices::tr("%1 on %2 since %3") : CardNotices::tr("%1 had it on %2 until %3"))
        .arg(somebody(hands.name), fromUtf8(hands.machine), since);
}

QString inspectionText(const Inspection& inspection) {
    QStringList words;
    if (!inspection.cameWith.empty()) {
        words << CardNotices::tr("came with %1").arg(fromUtf8(inspection.cameWith));
    }
    if (!inspection.remarks.empty()) {
        words << CardNotices::tr("seen: %1").arg(fromUtf8(inspection.remarks));
    }
    return words.join(QStringLiteral("; "));
}

QString benchStepWord(BenchStep step) {
    switch (step) {
    case BenchStep::LookOver:
        return CardNotices::tr("look over");
    case BenchStep::Mains:
        return CardNotices::tr("mains");
    case BenchStep::Crosses:
        return CardNotices::tr("crosses");
    case BenchStep::Finish:
        return CardNotices::tr("finish");
    }
    return {};
}

QString benchStepShape(BenchStep step, BenchStep current) {
    if (step == current) {
        return QStringLiteral("▸");
    }
    return step < current ? QStringLiteral("✓") : QStringLiteral("○");
}

QString fromWhereText(const JobPiece& piece, const QLocale& locale) {
    const QString source = sourceWord(piece.source);
    return piece.setLength ? CardNotices::tr("%1 of %2").arg(source, lengthText(*piece.setLength, locale)) : source;
}

} // namespace rw::ui
