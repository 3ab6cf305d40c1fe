// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/slip_words.h"

#include "core/pricing/earnings.h"
#include "ui/text/format.h"
#include "ui/text/words.h"

#include <QCoreApplication>

#include <cassert>

namespace rw::ui {

namespace {
struct Slips {
    Q_DECLARE_TR_FUNCTIONS(Slips)
};

QStringList stringNames(const desk::JobCard& card) {
    const auto& pieces = card.pieces;
    if (pieces.size() < 2 || pieces.front().article.id == pieces.back().article.id) {
        return {pieces.empty() ? QString() : stringName(pieces.front().article)};
    }
    QStringList lines;
    for (const desk::CardPiece& piece : pieces) {
        lines << Slips::tr("%1 %2").arg(pieceWord(piece.piece.role), stringName(piece.article));
    }
    return lines;
}

QString promiseOf(const Job& job, const JobCardStyle& style) {
    return job.promised ? momentText(*job.promised, style.zone, style.locale) : QString();
}

bool hasTaxLine(const Job& job) {
    for (const Charge& charge : job.charges) {
        if (charge.kind == ChargeKind::Tax) {
            return true;
        }
    }
    return false;
}

QString taxWords(const Job& job, const QLocale& locale) {
    const Money tax = job.total - withoutTax(job.charges, job.total.currency());
    return hasTaxLine(job) || tax.minor() == 0 ? QString() : Slips::tr("%1 tax in it").arg(moneyText(tax, locale));
}

QString paidWords(const Money& total, const Money& paid, const QLocale& locale) {
    if (paid.minor() == 0) {
        return {};
    }
    const Money owed = total - paid;
    if (owed.minor() == 0) {
        return Slips::tr("paid");
    }
    return owed.minor() > 0
               ? Slips::tr("%1 paid, %2 to pay").arg(moneyText(paid, locale), moneyText(owed, locale))
               : Slips::tr("%1 paid, %2 of it too much").arg(moneyText(paid, locale), moneyText(-owed, locale));
}
} // namespace

TagWords tagWords(const desk::JobPaper& paper, const JobCardStyle& style) {
    const desk::JobCard& card = paper.card;
    return {.tag = card.job.number,
            .number = QString::number(card.job.number),
            .promise = promiseOf(card.job, style),
            .customer = fromUtf8(card.customer.name),
            .racket = racketName(card.frame.name, card.racket.mark),
            .strings = stringNames(card),
            .pulls = tensionPairText(card.job.asked, style.locale)};
}

TicketWords ticketWords(const desk::JobPaper& paper, const JobCardStyle& style) {
    const desk::JobCard& card = paper.card;
    const QLocale& locale = style.locale;
    TicketWords words{
        .tag = card.job.number,
        .shop = fromUtf8(paper.shop),
        .number = QString::number(card.job.number),
        .taken = Slips::tr("taken in %1").arg(momentText(card.job.logged, style.zone, locale)),
        .customer = fromUtf8(card.customer.name),
        .racket = racketName(card.frame.name, card.racket.mark),
        .strings = stringNames(card),
        .pulls = Slips::tr("mains %1, crosses %2")
                     .arg(tensionText(card.job.asked.mains, locale), tensionText(card.job.asked.crosses, locale)),
        .note = fromUtf8(card.job.note),
        .bill = {},
        .total = moneyText(card.job.total, locale),
        .tax = taxWords(card.job, locale),
        .paid = paidWords(card.job.total, paper.paid, locale),
        .promise = promiseOf(card.job, style),
    };
    for (const Charge& charge : card.job.charges) {
        words.bill.emplace_back(chargeWord(charge), moneyText(charge.amount, locale));
    }
    return words;
}

LabelWords labelWords(const desk::JobPaper& paper, const JobCardStyle& style) {
    const Job& job = paper.card.job;
    assert(job.strung);
    return {.tag = job.number,
            .number = QString::number(job.number),
            .date = dateText(job.strung->by.at, style.zone, style.locale),
            .strings = stringNames(paper.card),
            .pulls = tensionPairText(job.strung->tensions, style.locale),
            .shop = fromUtf8(paper.shop)};
}

ReadyWords readyWords(const desk::JobPaper& paper, const JobCardStyle& style) {
    const desk::JobCard& card = paper.card;
    const Job& job = card.job;
    assert(job.strung);
    const QString cameWith = fromUtf8(card.inspection.cameWith);
    const Money owed = job.total - paper.paid;
    return {.tag = job.number,
            .number = QString::number(job.number),
            .customer = fromUtf8(card.customer.name),
            .racket = racketName(card.frame.name, card.racket.mark),
            .strung =
                Slips::tr("strung %1: %2, %3")
                    .arg(momentText(job.strung->by.at, style.zone, style.locale),
                         tensionPairText(job.strung->tensions, style.locale), stringNames(card).join(Slips::tr(", "))),
            .gives = cameWith.isEmpty() ? QString() : Slips::tr("give back: %1").arg(cameWith),
            .owed = owed.minor() > 0 ? Slips::tr("%1 to pay").arg(moneyText(owed, style.locale))
                                     : Slips::tr("nothing to pay")};
}

} // namespace rw::ui
