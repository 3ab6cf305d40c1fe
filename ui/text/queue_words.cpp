// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/queue_words.h"

#include "ui/text/format.h"
#include "ui/text/stock_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>

namespace rw::ui {

namespace {
struct QueueWords {
    Q_DECLARE_TR_FUNCTIONS(QueueWords)
};

QString laterText(const stock::QueueReason& reason, Wanted wanted) {
    const std::int64_t later = reason.later;
    if (wanted == Wanted::Jobs && !reason.whole) {
        return QueueWords::tr("half a bed later");
    }
    if (later < 1) {
        return QueueWords::tr("may serve once more");
    }
    const QString number = QString::number(later);
    if (wanted == Wanted::Jobs) {
        return later == 1 ? QueueWords::tr("one more job later")
                          : QueueWords::tr("about %1 more jobs later").arg(number);
    }
    return later == 1 ? QueueWords::tr("one more piece later")
                      : QueueWords::tr("about %1 more pieces later").arg(number);
}
} // namespace

QString whatIsLeftText(const stock::QueueReason& reason, Wanted wanted, const QLocale& locale) {
    using Kind = stock::QueueReason::Kind;
    const QString leaves = QueueWords::tr("leaves %1").arg(heldText(reason.leaves, locale));
    switch (reason.kind) {
    case Kind::LeavesUseful:
        return QueueWords::tr("%1: %2").arg(leaves, laterText(reason, wanted));
    case Kind::LeavesBadEnd:
        return QueueWords::tr("%1: bad end, %2 of it likely lost").arg(leaves, aboutLengthText(reason.lostMm, locale));
    case Kind::LeavesScrap:
        return QueueWords::tr("%1: too short to keep").arg(leaves);
    default:
        return leaves;
    }
}

QString queueReasonText(const stock::QueueReason& reason, const QString& lot, const QString& piece, Wanted wanted,
                        const QLocale& locale) {
    using Kind = stock::QueueReason::Kind;
    switch (reason.kind) {
    case Kind::FitsNowhere:
        return QueueWords::tr("%1: there is no lot for it").arg(piece);
    case Kind::OpensSealed:
        return QueueWords::tr("%1: to be opened").arg(lot);
    case Kind::LeavesPlenty:
    case Kind::LeavesUseful:
    case Kind::LeavesBadEnd:
    case Kind::LeavesScrap:
        return QueueWords::tr("%1: %2").arg(lot, whatIsLeftText(reason, wanted, locale));
    case Kind::MeasureFirst:
        return QueueWords::tr("%1: leaves %2 if the book is right, measure before cutting")
            .arg(lot, lengthText(reason.leaves, locale));
    case Kind::TimeWasUp:
        return QueueWords::tr("the best found in the time there was; a better one is possible");
    }
    return {};
}

QString cutReasonText(Fit fit, Length leaves, const desk::CutReason& why, const QLocale& locale) {
    constexpr std::int64_t kWorthSaying = 2; // who has two more jobs on it does not look at the end yet
    QString words = fitText(fit, leaves, locale);
    if (fit == Fit::Fits && leaves.isPositive() && why.left && why.left->later < kWorthSaying) {
        words = whatIsLeftText(*why.left, Wanted::Jobs, locale);
    }
    if (why.spared) {
        words = QueueWords::tr("%1; a new reel, because %2 would lose %3")
                    .arg(words, fromUtf8(why.spared->tag), aboutLengthText(why.spared->lostMm, locale));
    } else if (why.opens) {
        words = QueueWords::tr("%1; a new reel").arg(words);
    }
    return why.onTheMachine ? QueueWords::tr("%1; on the machine already").arg(words) : words;
}

} // namespace rw::ui
