// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/queue_words.h"

#include "ui/text/format.h"

#include <QCoreApplication>

namespace rw::ui {

namespace {
struct QueueWords {
    Q_DECLARE_TR_FUNCTIONS(QueueWords)
};

QString laterText(std::int64_t later, Wanted wanted) {
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

QString queueReasonText(const stock::QueueReason& reason, const QString& lot, const QString& piece, Wanted wanted,
                        const QLocale& locale) {
    using Kind = stock::QueueReason::Kind;
    const QString leaves = QueueWords::tr("leaves %1").arg(lengthText(reason.leaves, locale));
    switch (reason.kind) {
    case Kind::FitsNowhere:
        return QueueWords::tr("%1: there is no lot for it").arg(piece);
    case Kind::OpensSealed:
        return QueueWords::tr("%1: to be opened").arg(lot);
    case Kind::LeavesPlenty:
        return QueueWords::tr("%1: %2").arg(lot, leaves);
    case Kind::LeavesUseful:
        return QueueWords::tr("%1: %2: %3").arg(lot, leaves, laterText(reason.later, wanted));
    case Kind::LeavesBadEnd:
        return QueueWords::tr("%1: %2: bad end, %3 of it likely lost")
            .arg(lot, leaves, aboutLengthText(reason.lostMm, locale));
    case Kind::LeavesScrap:
        return QueueWords::tr("%1: %2: too short to keep").arg(lot, leaves);
    case Kind::MeasureFirst:
        return QueueWords::tr("%1: %2 if the book is right, measure before cutting").arg(lot, leaves);
    case Kind::TimeWasUp:
        return QueueWords::tr("the best found in the time there was; a better one is possible");
    }
    return {};
}

} // namespace rw::ui
