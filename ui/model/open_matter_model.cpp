// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/model/open_matter_model.h"

#include "ui/model/job_line_model.h"
#include "ui/text/books_words.h"
#include "ui/text/format.h"

#include <QStringList>

namespace rw::ui {

int OpenMatterModel::rowOf(JobId job) const {
    for (int row = 0; row < rowCount(); ++row) {
        if (at(row).job.id == job) {
            return row;
        }
    }
    return -1;
}

QVariant OpenMatterModel::show(const desk::OpenMatter& matter, int role) const {
    switch (role) {
    case Qt::DisplayRole:
        return jobLineTitle(matter.job);
    case DetailRole: {
        QStringList facts{openMatterText(matter), fromUtf8(matter.job.customer)};
        if (!matter.job.phone.empty()) {
            facts << fromUtf8(matter.job.phone);
        }
        return facts.join(QStringLiteral(" · "));
    }
    case AsideRole:
        return matter.strung ? ageText(*matter.strung, m_now) : QString();
    default:
        return {};
    }
}

} // namespace rw::ui
