// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/model/racket_choice_model.h"

#include "ui/text/counter_words.h"
#include "ui/text/format.h"
#include "ui/text/job_words.h"
#include "ui/text/words.h"

namespace rw::ui {

namespace {
QString ownName(const desk::RacketSummary& racket) {
    const QString name = fromUtf8(racket.frame.name);
    const QString mark = fromUtf8(racket.racket.mark);
    return mark.isEmpty() ? name : name + QStringLiteral(" · ") + mark;
}

QString frameFacts(const FrameModel& frame) {
    return sportWord(frame.sport) + QStringLiteral(", ") + patternText(frame.pattern);
}
} // namespace

QVariant RacketChoiceModel::show(const RacketRow& row, int role) const {
    if (row.own) {
        const auto& last = row.own->lastJob;
        switch (role) {
        case Qt::DisplayRole:
            return ownName(*row.own);
        case DetailRole:
            if (row.own->here) {
                return hereText(*row.own->here, m_now, m_zone);
            }
            return last ? tr("last %1, %2").arg(askedAndStrungText(*last), shortDateText(last->logged, m_now, m_zone))
                        : tr("never strung here");
        case AsideRole:
            return frameFacts(row.own->frame);
        default:
            return {};
        }
    }
    if (row.known) {
        switch (role) {
        case Qt::DisplayRole:
            return tr("+ another %1").arg(fromUtf8(row.known->name));
        case DetailRole:
            return tr("a frame the shop knows, new for this person");
        case AsideRole:
            return frameFacts(*row.known);
        default:
            return {};
        }
    }
    switch (role) {
    case Qt::DisplayRole:
        return row.typed.isEmpty() ? tr("+ a frame nobody has heard of")
                                   : tr("+ a frame nobody has heard of: %1").arg(row.typed);
    case DetailRole:
        return tr("takes a name, a sport and a pattern");
    default:
        return {};
    }
}

} // namespace rw::ui
