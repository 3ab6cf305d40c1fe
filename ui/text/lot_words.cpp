// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/lot_words.h"

#include "ui/text/format.h"
#include "ui/text/stock_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>

namespace rw::ui {

namespace {
struct LotWords {
    Q_DECLARE_TR_FUNCTIONS(LotWords)
};
} // namespace

QString lengthChangeText(Length change, const QLocale& locale) {
    return change.isNegative() ? QStringLiteral("−") + heldText(-change, locale)
                               : QStringLiteral("+") + heldText(change, locale);
}

QString movementText(const Movement& movement, std::int64_t jobNumber, const QLocale& locale) {
    const QString change = lengthChangeText(movement.change, locale);
    QString why = movementWord(movement.reason);
    if (movement.lostReason) {
        why = LotWords::tr("%1: %2").arg(movementWord(MovementReason::Lost), lostReasonWord(*movement.lostReason));
    }
    return jobNumber != 0 ? LotWords::tr("%1, %2 for job %3").arg(change, why, QString::number(jobNumber))
                          : LotWords::tr("%1, %2").arg(change, why);
}

QString receivedText(const Lot& lot, const QLocale& locale) {
    return LotWords::tr("Received %1: %2. Write %1 on it.").arg(fromUtf8(lot.tag), heldText(lot.length, locale));
}

QString correctedText(const Lot& lot, Length by, const QLocale& locale) {
    const QString tag = fromUtf8(lot.tag);
    const QString left = heldText(lot.length, locale);
    return by.millimetres() == 0 ? LotWords::tr("%1: the book was right, %2.").arg(tag, left)
                                 : LotWords::tr("%1 holds %2 now; the book was corrected by %3.")
                                       .arg(tag, left, lengthChangeText(by, locale));
}

} // namespace rw::ui
