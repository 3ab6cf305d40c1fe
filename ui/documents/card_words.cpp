// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/card_words.h"

#include "ui/text/card_notices.h"
#include "ui/text/cautions.h"
#include "ui/text/format.h"
#include "ui/text/job_words.h"
#include "ui/text/need_words.h"
#include "ui/text/plan_words.h"
#include "ui/text/queue_words.h"
#include "ui/text/stock_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>

#include <utility>

namespace rw::ui {

namespace {
struct Card {
    Q_DECLARE_TR_FUNCTIONS(Card)
};

QString unitOf(TensionUnit unit) { return fromUtf8(unitText(unit)); }

CardWords::Pull pullWords(const QString& name, const Tension& asked, const std::optional<desk::DialSetting>& dial,
                          const QLocale& locale) {
    CardWords::Pull pull{
        .name = name, .number = tensionNumber(asked, locale), .unit = unitOf(asked.unit()), .dial = {}, .detail = {}};
    if (!dial) {
        return pull;
    }
    const TensionUnit unit = dial->below.unit();
    const bool onAStep = dial->below == dial->above;
    pull.dial = onAStep
                    ? tensionText(dial->below, locale)
                    : Card::tr("%1 or %2").arg(tensionNumber(dial->below, locale), tensionText(dial->above, locale));
    if (unit == asked.unit()) {
        pull.detail = onAStep ? QString() : Card::tr("%1 is between two steps").arg(tensionText(asked, locale));
        return pull;
    }
    const auto inAsked = [&](const Tension& step) {
        return Card::tr("%1 is %2")
            .arg(tensionNumber(step, locale), derivedTensionText(step.in(asked.unit()), asked.unit(), 1, locale));
    };
    const QString exact =
        Card::tr("%1 is %2").arg(tensionText(asked, locale), derivedTensionText(dial->exact, unit, 2, locale));
    pull.detail = onAStep ? exact : Card::tr("%1; %2, %3").arg(exact, inAsked(dial->below), inAsked(dial->above));
    return pull;
}

CardWords::Cut cutWords(const desk::CardPiece& piece, const QLocale& locale) {
    CardWords::Cut cut{.done = piece.piece.isCut(),
                       .careful = false,
                       .length = lengthText(piece.piece.planned, locale),
                       .piece = pieceWord(piece.piece.role),
                       .string = Card::tr("%1, %2").arg(stringName(piece.article), gaugeText(piece.article, locale)),
                       .source = {},
                       .lost = lostText(piece.piece, locale)};
    const QString lot = piece.lot ? fromUtf8(piece.lot->tag) : QString();
    if (cut.done) {
        cut.length = lengthText(piece.piece.current().cut->length, locale);
        cut.source = lot.isEmpty()
                         ? fromWhereText(piece.piece, locale)
                         : Card::tr("cut off %1, which holds %2 now").arg(lot, heldText(piece.leavesOnLot, locale));
        return cut;
    }
    if (!piece.lot) {
        const bool ownSet = piece.piece.source == PieceSource::CustomersSet;
        cut.careful = !ownSet || piece.fit == Fit::DoesNotFit;
        cut.source = !ownSet ? Card::tr("no reel holds it") : fromWhereText(piece.piece, locale);
        if (ownSet && cut.careful) {
            cut.source = Card::tr("%1: %2 too short").arg(cut.source, lengthText(-piece.leavesOnLot, locale));
        }
        return cut;
    }
    cut.careful = piece.fit != Fit::Fits;
    cut.source = (piece.lot->kind == LotKind::Remnant ? Card::tr("off remnant %1: %2") : Card::tr("off %1: %2"))
                     .arg(lot, cutReasonText(piece.fit, piece.leavesOnLot, piece.why, locale));
    return cut;
}

QString markedWords(const MarkedRange& marked, const QLocale& locale) {
    if (marked.lowest && marked.highest) {
        const QString lowest = marked.lowest->unit() == marked.highest->unit() ? tensionNumber(*marked.lowest, locale)
                                                                               : tensionText(*marked.lowest, locale);
        return Card::tr("marked %1 to %2").arg(lowest, tensionText(*marked.highest, locale));
    }
    if (marked.highest) {
        return Card::tr("marked up to %1").arg(tensionText(*marked.highest, locale));
    }
    return marked.lowest ? Card::tr("marked from %1").arg(tensionText(*marked.lowest, locale)) : QString();
}

void sayShortSide(CardWords& words, const desk::ShortSideProposal& side, const QLocale& locale) {
    words.shortSide = sideWord(side.side);
    words.shortSideMark = fromUtf8(side.mountingMark);
    words.shortSideLength = shortSideHowLong(side, locale);
    words.shortSideFrom = sideFromText(side);
    words.shortSideWarns = side.from == desk::SideFrom::Frame;
}

std::vector<CardWords::Notice> noticesOf(const desk::JobCard& card, const JobCardStyle& style) {
    std::vector<CardWords::Notice> notices;
    if (card.above && !card.above->consent) {
        notices.push_back({true, aboveText(*card.above, style.zone, style.locale)});
    }
    if (card.change) {
        notices.push_back({true, changeText(*card.change, card.job.asked, style.zone, style.locale)});
    }
    if (card.above && card.above->consent) {
        notices.push_back({false, aboveText(*card.above, style.zone, style.locale)});
    }
    return notices;
}

/// The pair, with what was asked before a change beside what is asked now. While one of the two is strung it stands
/// first and the other is quiet.
std::vector<CardWords::Pull> pullsOf(const desk::JobCard& card, const QLocale& locale) {
    std::vector<CardWords::Pull> pulls{
        pullWords(pieceWord(PieceRole::Mains), card.job.asked.mains, card.mains, locale),
        pullWords(pieceWord(PieceRole::Crosses), card.job.asked.crosses, card.crosses, locale)};
    if (card.change && card.change->before.mains != card.job.asked.mains) {
        pulls[0].was = tensionText(card.change->before.mains, locale);
    }
    if (card.change && card.change->before.crosses != card.job.asked.crosses) {
        pulls[1].was = tensionText(card.change->before.crosses, locale);
    }
    if (card.job.state == JobState::OnTheMachine) {
        pulls[0].quiet = card.job.benchStep == BenchStep::Crosses;
        pulls[1].quiet = card.job.benchStep == BenchStep::Mains;
    }
    if (pulls[0].quiet) {
        std::swap(pulls[0], pulls[1]);
    }
    return pulls;
}

std::vector<CardWords::Step> stepsOf(const Job& job) {
    std::vector<CardWords::Step> steps;
    if (job.state == JobState::OnTheMachine) {
        for (std::optional<BenchStep> step = BenchStep::LookOver; step; step = stepAfter(*step)) {
            steps.push_back({benchStepShape(*step, job.benchStep), benchStepWord(*step), *step == job.benchStep});
        }
    }
    return steps;
}

QString strungWords(const desk::JobCard& card, const QLocale& locale) {
    if (!card.job.strung) {
        return {};
    }
    QString words = Card::tr("strung %1").arg(tensionPairText(card.job.strung->tensions, locale));
    if (card.machine && card.machine->id == card.job.strung->machine) {
        words = Card::tr("%1 on %2").arg(words, fromUtf8(card.machine->name));
    }
    return card.stringer.empty() ? words : Card::tr("%1 by %2").arg(words, fromUtf8(card.stringer));
}
} // namespace

CardWords cardWords(const desk::JobCard& card, const JobCardStyle& style) {
    const QLocale& locale = style.locale;
    const QString frame = fromUtf8(card.frame.name);
    CardWords words;
    words.number = QString::number(card.job.number);
    words.state = jobStateWord(card.job.state);
    words.customer = fromUtf8(card.customer.name);
    words.racket = card.racket.mark.empty() ? frame : Card::tr("%1 · %2").arg(frame, fromUtf8(card.racket.mark));
    words.promise = card.job.promised ? momentText(*card.job.promised, style.zone, locale) : QString();
    words.notices = noticesOf(card, style);
    words.steps = stepsOf(card.job);
    words.hands = card.hands ? handsText(*card.hands, style.zone, locale) : QString();
    words.pulls = pullsOf(card, locale);
    words.machine = card.machine ? fromUtf8(card.machine->name) : QString();
    words.marked = markedWords(card.frame.marked, locale);
    for (const desk::CardPiece& piece : card.pieces) {
        words.cuts.push_back(cutWords(piece, locale));
    }
    if (card.shortSide) {
        sayShortSide(words, *card.shortSide, locale);
    }
    words.needs = needsText(card.plan, locale);
    words.routeName = routeName(card.plan);
    words.route = routeLines(card.plan);
    words.note = fromUtf8(card.job.note);
    words.inspection = inspectionText(card.inspection);
    words.strung = strungWords(card, locale);
    words.cautions = style.cautions ? benchCautions() : QStringList();
    return words;
}

} // namespace rw::ui
