// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/model/job_line_model.h"

#include "ui/text/counter_words.h"
#include "ui/text/format.h"
#include "ui/text/job_words.h"
#include "ui/text/words.h"

#include <QStringList>

namespace rw::ui {

QString jobLineTitle(const desk::JobLine& line) {
    return QString::number(line.number) + QStringLiteral(" · ") + racketName(line.frame, line.mark);
}

int JobLineModel::rowOf(JobId id) const {
    for (int row = 0; row < rowCount(); ++row) {
        if (at(row).id == id) {
            return row;
        }
    }
    return -1;
}

QVariant JobLineModel::show(const desk::JobLine& line, int role) const {
    const auto found = m_remarks.find(line.id);
    const JobRemark remark = found == m_remarks.end() ? JobRemark() : found->second;
    switch (role) {
    case Qt::DisplayRole:
        return jobLineTitle(line);
    case DetailRole: {
        QStringList facts{fromUtf8(line.customer), fromUtf8(line.strings), tensionPairText(line.asked)};
        if (m_showsPhones && !line.phone.empty()) {
            facts.insert(1, fromUtf8(line.phone));
        }
        // What is out of the ordinary stands in front, where a narrow list does not cut it off.
        if (line.told) {
            facts.prepend(toldMark(*line.told, m_now, m_zone));
        }
        if (line.mustBy && line.state != JobState::Strung) {
            facts.prepend(mustByMark(*line.mustBy, m_now, m_zone));
        }
        if (line.state != JobState::Logged && remark.fact.isEmpty()) {
            facts.prepend(stateWithShape(line.state));
        }
        if (line.notAgreed) {
            facts.prepend(notAgreedMark());
        }
        if (!remark.fact.isEmpty()) {
            facts.prepend(remark.fact);
        }
        return facts.join(QStringLiteral(" · "));
    }
    case AsideRole:
        return !remark.aside.isEmpty() ? remark.aside
               : line.promised         ? promiseText(*line.promised, m_now, m_zone)
                                       : QString();
    default:
        return {};
    }
}

} // namespace rw::ui
