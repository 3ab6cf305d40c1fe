// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/tag_words.h"

#include "ui/text/format.h"
#include "ui/text/job_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>

namespace rw::ui {

namespace {
struct Tags {
    Q_DECLARE_TR_FUNCTIONS(Tags)
};
} // namespace

QString tagTypedText(const QString& digits) { return Tags::tr("tag %1 ▸ Enter looks for it").arg(digits); }

QString notInThisListText(std::int64_t number) { return Tags::tr("Tag %1 is not in this list.").arg(number); }

QString notAtTheBenchText(std::int64_t number, const std::optional<JobState>& state) {
    return state ? Tags::tr("Tag %1: %2. Nothing is to be done with it at the bench.")
                       .arg(number)
                       .arg(jobStateWord(*state))
                 : Tags::tr("No job has the tag %1.").arg(number);
}

QString taggedTitle(const desk::TaggedJob& tagged) {
    return Tags::tr("tag %1: %2").arg(tagged.job.number).arg(fromUtf8(tagged.person.customer.name));
}

QString taggedDetail(const desk::TaggedJob& tagged) {
    const desk::RacketSummary& racket = tagged.racket();
    return Tags::tr("%1, %2").arg(racketName(racket.frame.name, racket.racket.mark), stateWithShape(tagged.job.state));
}

} // namespace rw::ui
