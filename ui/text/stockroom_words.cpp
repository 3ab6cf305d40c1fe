// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/stockroom_words.h"

#include "ui/text/format.h"
#include "ui/text/lot_words.h"
#include "ui/text/stock_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace rw::ui {

namespace {
struct StockroomWords {
    Q_DECLARE_TR_FUNCTIONS(StockroomWords)
};

constexpr Length kNothing = Length::fromMillimetres(0);

/// "a, b and c".
QString listed(QStringList things) {
    if (things.size() < 2) {
        return things.join(QString());
    }
    const QString last = things.takeLast();
    return StockroomWords::tr("%1 and %2").arg(things.join(QStringLiteral(", ")), last);
}

QString reelsText(int reels) {
    return reels == 1 ? StockroomWords::tr("1 reel") : StockroomWords::tr("%1 reels").arg(reels);
}

QString countedText(int reels, int packets) {
    QStringList things;
    if (reels > 0) {
        things << reelsText(reels);
    }
    if (packets > 0) {
        things << packetsText(packets);
    }
    return listed(things);
}

/// What a tag ends with, when that is a number: 7 of "K-7"; -1 otherwise. `stem` gets what stands before it.
int numberOf(const QString& tag, QString& stem) {
    const qsizetype dash = tag.lastIndexOf(QLatin1Char('-'));
    bool isNumber = false;
    const int number = tag.mid(dash + 1).toInt(&isNumber);
    stem = tag.left(dash + 1);
    return dash > 0 && isNumber ? number : -1;
}

/// Tags that count up, as one: "K-8 to K-12".
QStringList runsOf(const std::vector<std::string>& tags) {
    QStringList runs;
    std::size_t begin = 0;
    while (begin < tags.size()) {
        std::size_t end = begin + 1;
        QString stem;
        int number = numberOf(fromUtf8(tags[begin]), stem);
        for (QString next; number >= 0 && end < tags.size(); ++end) {
            const int following = numberOf(fromUtf8(tags[end]), next);
            if (next != stem || following != number + 1) {
                break;
            }
            number = following;
        }
        const QString first = fromUtf8(tags[begin]);
        const QString last = fromUtf8(tags[end - 1]);
        if (end - begin > 2) {
            runs << StockroomWords::tr("%1 to %2").arg(first, last);
        } else if (end - begin == 2) {
            runs << first << last;
        } else {
            runs << first;
        }
        begin = end;
    }
    return runs;
}
} // namespace

QString packetsText(int packets) {
    return packets == 1 ? StockroomWords::tr("1 packet") : StockroomWords::tr("%1 packets").arg(packets);
}

QString eachOfText(Length length, const QLocale& locale) {
    return StockroomWords::tr("of %1").arg(heldText(length, locale));
}

QString keptBoardText(const QString& title) { return StockroomWords::tr("kept here, %1").arg(title); }

QString tagsText(const std::vector<std::string>& tags) { return listed(runsOf(tags)); }

QString deliveredText(const std::vector<Lot>& lots, const QLocale& locale) {
    if (lots.size() == 1) {
        return receivedText(lots.front(), locale);
    }
    std::vector<std::string> tags;
    int packets = 0;
    for (const Lot& lot : lots) {
        if (lot.kind == LotKind::Packet) {
            ++packets;
        } else {
            tags.push_back(lot.tag);
        }
    }
    const int reels = static_cast<int>(tags.size());
    QStringList sentences{StockroomWords::tr("Received %1.").arg(countedText(reels, packets))};
    if (reels == 1) {
        sentences << StockroomWords::tr("Write %1 on the reel.").arg(tagsText(tags));
    } else if (reels > 1) {
        sentences << StockroomWords::tr("Write %1 on the reels.").arg(tagsText(tags));
    }
    if (packets > 1) {
        sentences << StockroomWords::tr("Packets that are alike are one pile and need no tag.");
    }
    return sentences.join(QLatin1Char(' '));
}

QString parcelText(const std::vector<desk::DeliveryLine>& lines, const Money& shipping, const QLocale& locale) {
    if (lines.empty()) {
        return {};
    }
    int reels = 0;
    int packets = 0;
    Money goods = Money::zero(shipping.currency());
    for (const desk::DeliveryLine& line : lines) {
        (line.kind == LotKind::Packet ? packets : reels) += line.count;
        goods += line.priceEach * line.count;
    }
    const QString words = StockroomWords::tr("%1: %2").arg(countedText(reels, packets), moneyText(goods, locale));
    const QString sum =
        shipping.minor() == 0
            ? words
            : StockroomWords::tr("%1, with shipping %2").arg(words, moneyText(goods + shipping, locale));
    const bool unpriced =
        std::ranges::any_of(lines, [](const desk::DeliveryLine& line) { return line.priceEach.minor() == 0; });
    return unpriced ? StockroomWords::tr("%1; a line has no price: what its jobs cost is not known").arg(sum) : sum;
}

QString tookOffText(const Lot& lot, Length gone, desk::LotLeaves how, const QLocale& locale) {
    const QString tag = fromUtf8(lot.tag);
    const QString length = heldText(gone, locale);
    return how == desk::LotLeaves::ThrownAway
               ? StockroomWords::tr("%1 is thrown away: %2. Ctrl+Z takes that back.").arg(tag, length)
               : StockroomWords::tr("%1 is given back: %2. Ctrl+Z takes that back.").arg(tag, length);
}

QString tookBackText(const std::vector<Lot>& lots, const QLocale& locale) {
    std::vector<std::string> gone;
    QStringList sentences;
    for (const Lot& lot : lots) {
        if (lot.isOpen()) {
            sentences << StockroomWords::tr("%1 is on the shelf with %2, as before.")
                             .arg(fromUtf8(lot.tag), heldText(lot.length, locale));
        } else {
            gone.push_back(lot.tag);
        }
    }
    if (!gone.empty()) {
        sentences << StockroomWords::tr("%1 taken back: nothing of it is on the shelf.").arg(tagsText(gone));
    }
    return sentences.join(QLatin1Char(' '));
}

QString closedLotsTitle(const QString& string) { return StockroomWords::tr("Gone: %1").arg(string); }

QString closedLotText(const desk::ClosedLot& closed) {
    QStringList facts;
    switch (closed.how) {
    case MovementReason::ThrownAway:
        facts << StockroomWords::tr("thrown away");
        break;
    case MovementReason::Returned:
        facts << StockroomWords::tr("given back");
        break;
    case MovementReason::Measured:
    case MovementReason::Weighed:
        facts << StockroomWords::tr("measured: nothing was left");
        break;
    default:
        facts << StockroomWords::tr("used up");
    }
    if (!closed.lot.batch.empty()) {
        facts << StockroomWords::tr("batch %1").arg(fromUtf8(closed.lot.batch));
    }
    if (!closed.owner.empty()) {
        facts << StockroomWords::tr("kept for %1").arg(fromUtf8(closed.owner));
    }
    return facts.join(QStringLiteral(" · "));
}

QString nothingClosedText() {
    return StockroomWords::tr("None of it is gone. A lot comes here when it is used up, thrown away or given back.");
}

QString correctHintText(const Lot& lot, const QLocale& locale) {
    return StockroomWords::tr("%1 holds %2 by the book. Enter corrects it, Esc goes back.")
        .arg(fromUtf8(lot.tag), heldText(lot.length, locale));
}

QString takeOffHintText(const Lot& lot, const QLocale& locale) {
    return StockroomWords::tr("%1, %2: Enter takes it off the shelf, Esc goes back.")
        .arg(fromUtf8(lot.tag), heldText(lot.length, locale));
}

QString tooShortToKeepText() { return StockroomWords::tr("too short for a piece"); }

QString keptForText(const Lot& lot, const QString& owner, const QLocale& locale) {
    return StockroomWords::tr("%1 is kept for %2: %3. Write %1 on it.")
        .arg(fromUtf8(lot.tag), owner, heldText(lot.length, locale));
}

QString packetHintText() { return StockroomWords::tr("where it comes in packets; no price: that of a full bed"); }

QString statementCopiedText() {
    return StockroomWords::tr("The statement is copied: paste it into a message or a letter.");
}

QString stringAddedText(const QString& title) {
    return StockroomWords::tr("%1 is on the list. R receives a reel of it.").arg(title);
}

QString stringKeptText(const QString& title) {
    return StockroomWords::tr("%1 is kept; its prices hold from today.").arg(title);
}

QString emptyShelfText() {
    return StockroomWords::tr("The shop has no string yet.\nN adds one, R receives a reel of it.");
}

QString noStringYetText() { return StockroomWords::tr("The shop has no string yet: Esc, then N adds one."); }

QString whoseStringText() {
    return StockroomWords::tr("Whose string is it? Pick somebody; the Counter adds who is new.");
}

QString whichStringCameText() { return StockroomWords::tr("Which string came? Choose one in a line."); }

QString shelfHintText() { return StockroomWords::tr("The arrow keys go from reel to reel. R receives a new one."); }

QString keptBoardText(const QString& owner, const QString& title) {
    return StockroomWords::tr("kept for %1: %2").arg(owner, title);
}

QString heldThereText(const desk::ShelfLot& there, const QLocale& locale) {
    const QString length = heldText(there.lot.length, locale);
    if (there.packets > 0) {
        return StockroomWords::tr("%1 of %2").arg(packetsText(there.packets), length);
    }
    switch (there.lot.kind) {
    case LotKind::Remnant:
        return StockroomWords::tr("remnant, %1").arg(length);
    case LotKind::Packet:
        return StockroomWords::tr("opened, %1").arg(length);
    case LotKind::Reel:
        return length;
    }
    return length;
}

QString packetChoiceText(const desk::ShelfLot& pile, const QLocale& locale) {
    const QString packet = StockroomWords::tr("a packet of %1").arg(heldText(pile.lot.length, locale));
    return pile.freePackets() > 0 ? StockroomWords::tr("%1, %2 free").arg(packet, QString::number(pile.freePackets()))
                                  : StockroomWords::tr("%1, none free").arg(packet);
}

QString lotThereText(const desk::ShelfLot& there, const QLocale& locale) {
    const QString batch =
        there.lot.batch.empty() ? QString() : StockroomWords::tr("\nbatch %1").arg(fromUtf8(there.lot.batch));
    if (there.packets == 0) {
        return holdingText({there.lot.length, there.promised}, locale) + QLatin1Char('\n') +
               wholeJobsText(there.whole, locale) + batch;
    }
    const auto free = there.freePackets();
    const QString promised = free == there.packets
                                 ? StockroomWords::tr("none promised")
                                 : StockroomWords::tr("%1 promised").arg(there.packets - static_cast<int>(free));
    return StockroomWords::tr("%1, %2\n%3 free, a packet each")
               .arg(heldThereText(there, locale), promised, jobsText(free)) +
           batch;
}

QString lotFactsText(const desk::LotLife& life, const QTimeZone& zone, Paid paid, const QLocale& locale) {
    const Lot& lot = life.lot;
    QStringList facts{StockroomWords::tr("%1 of %2").arg(lotKindWord(lot.kind), heldText(lot.nominal, locale))};
    if (!life.owner.empty()) {
        facts << StockroomWords::tr("kept for %1").arg(fromUtf8(life.owner));
    }
    if (!lot.batch.empty()) {
        facts << StockroomWords::tr("batch %1").arg(fromUtf8(lot.batch));
    }
    const QString came = dateText(lot.received, zone, locale);
    facts << (life.delivery && !life.delivery->supplier.empty()
                  ? StockroomWords::tr("came %1 from %2").arg(came, fromUtf8(life.delivery->supplier))
                  : StockroomWords::tr("came %1").arg(came));
    if (paid == Paid::Shown && lot.landedCost().minor() > 0) {
        facts << (lot.shipping.minor() > 0 ? StockroomWords::tr("%1 and %2 shipping")
                                                 .arg(moneyText(lot.price, locale), moneyText(lot.shipping, locale))
                                           : moneyText(lot.price, locale));
    }
    if (!lot.isOpen()) {
        facts << StockroomWords::tr("closed %1").arg(dateText(*lot.closed, zone, locale));
    }
    QString text = facts.join(QStringLiteral(", "));
    text[0] = text[0].toUpper();
    return text + QLatin1Char('.');
}

QString lotSumText(const desk::LotLife& life, const QLocale& locale) {
    int cuts = 0;
    Length cut = kNothing;
    for (const Movement& movement : life.movements) {
        const bool back = std::ranges::any_of(
            life.movements, [&](const Movement& other) { return other.corrects && other.corrects == movement.id; });
        if (movement.reason == MovementReason::Cut && !back) {
            ++cuts;
            cut -= movement.change;
        }
    }
    const QString left = StockroomWords::tr("%1 left").arg(heldText(life.lot.length, locale));
    if (cuts == 0) {
        return StockroomWords::tr("Nothing was cut from it; %1.").arg(left);
    }
    const QString length = heldText(cut, locale);
    return cuts == 1 ? StockroomWords::tr("1 cut, %1; %2.").arg(length, left)
                     : StockroomWords::tr("%1 cuts, %2 together; %3.").arg(QString::number(cuts), length, left);
}

QString lotStatementText(const desk::LotLife& life, const QTimeZone& zone, const QLocale& locale) {
    QStringList lines{StockroomWords::tr("%1 %2").arg(fromUtf8(life.lot.tag), fromUtf8(life.article.name)),
                      lotFactsText(life, zone, Paid::Hidden, locale)};
    for (std::size_t i = 0; i < life.movements.size(); ++i) {
        lines << StockroomWords::tr("%1  %2").arg(dateText(life.movements[i].by.at, zone, locale),
                                                  movementText(life.movements[i], life.jobNumbers[i], locale));
    }
    lines << lotSumText(life, locale);
    return lines.join(QLatin1Char('\n'));
}

QString movementKindText(const Movement& movement, std::int64_t jobNumber) {
    const QString why = movement.lostReason ? StockroomWords::tr("%1: %2").arg(movementWord(MovementReason::Lost),
                                                                               lostReasonWord(*movement.lostReason))
                        : movement.corrects ? StockroomWords::tr("taken back")
                                            : movementWord(movement.reason);
    return jobNumber != 0 ? StockroomWords::tr("%1 for job %2").arg(why, QString::number(jobNumber)) : why;
}

QString movementWhyText(const Movement& movement, int corrects, int correctedBy) {
    QStringList facts;
    if (corrects > 0) {
        facts << StockroomWords::tr("takes back line %1").arg(corrects);
    }
    if (correctedBy > 0) {
        facts << StockroomWords::tr("taken back in line %1").arg(correctedBy);
    }
    if (!movement.words.empty()) {
        facts << fromUtf8(movement.words);
    }
    return facts.join(QStringLiteral("; "));
}

} // namespace rw::ui
