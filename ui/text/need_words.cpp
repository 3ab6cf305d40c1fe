// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/need_words.h"

#include "ui/text/format.h"
#include "ui/text/plan_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>

#include <cmath>

namespace rw::ui {

namespace {
struct NeedWords {
    Q_DECLARE_TR_FUNCTIONS(NeedWords)
};

/// What was agreed otherwise, or what the lot gives, beside what the model would cut.
QString insteadText(const desk::PieceProposal& proposal, const length::CutPlan& plan, const length::PiecePlan& piece,
                    const QLocale& locale) {
    if (proposal.source == PieceSource::CustomersSet || proposal.cut == piece.cut) {
        return {};
    }
    const QString piecePart = plan.pieces.size() > 1 ? NeedWords::tr("%1: ").arg(pieceWord(piece.role)) : QString();
    return NeedWords::tr("%1%2 is proposed, %3; the model's own cut is %4.")
        .arg(piecePart, lengthText(proposal.cut, locale), cutFromText(proposal.cutFrom, plan.hoop.standsOn),
             lengthText(piece.cut, locale));
}

QString reasonText(const length::Why& why, const Currency& currency, const QLocale& locale) {
    if (why.kind == length::Why::Kind::LeastCost) { // at the counter costs are the ledger's minor units
        return NeedWords::tr("The cut that costs least on average, spoiled jobs counted in: %1 a job.")
            .arg(moneyText(Money::fromMinor(std::llround(why.value), currency), locale));
    }
    return whyText(why, locale);
}
} // namespace

QString needStandsOnText(const length::PiecePlan& piece, const QLocale& locale) {
    if (piece.observations == 0) {
        return piece.shopCuts > 0 ? NeedWords::tr("this shop's tails on other frames")
                                  : NeedWords::tr("the head's measurements");
    }
    const QString cuts = piece.observations == 1
                             ? NeedWords::tr("one cut here")
                             : NeedWords::tr("%1 cuts here").arg(locale.toString(piece.observations));
    return piece.measured == 0 ? NeedWords::tr("%1, no tails told").arg(cuts)
                               : NeedWords::tr("%1, %2 with tails").arg(cuts, locale.toString(piece.measured));
}

QString needsText(const length::CutPlan& plan, const QLocale& locale) {
    QStringList needs;
    for (const length::PiecePlan& piece : plan.pieces) {
        const QString need = aboutLengthText(piece.needMm, locale);
        const QString by = needStandsOnText(piece, locale);
        needs << (plan.pieces.size() > 1 ? NeedWords::tr("%1 need about %2 by %3").arg(pieceWord(piece.role), need, by)
                                         : NeedWords::tr("needs about %1 by %2").arg(need, by));
    }
    return needs.join(NeedWords::tr("; "));
}

QStringList whyLines(const desk::IntakePreview& preview, const QLocale& locale) {
    QStringList lines;
    for (std::size_t i = 0; i < preview.pieces.size(); ++i) {
        lines << insteadText(preview.pieces[i], preview.plan, preview.plan.pieces[i], locale);
    }
    for (const length::Why& why : preview.plan.why) {
        lines << reasonText(why, preview.quote.total.currency(), locale);
    }
    lines.removeAll(QString());
    return lines;
}

} // namespace rw::ui
