// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/to_be_strung_presenter.h"

#include <algorithm>

namespace rw::ui {

ToBeStrungPresenter::ToBeStrungPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : StationPresenter(runner, shift, "counter", parent) {}

void ToBeStrungPresenter::refresh() {
    read([](desk::Transaction& ledger) { return desk::toBeStrung(ledger); },
         [this](Result<std::vector<desk::JobLine>> lines) {
             if (lines) {
                 m_lines = std::move(*lines);
                 m_loaded = true;
                 Q_EMIT linesChanged();
             }
         });
}

template<class UseCase>
void ToBeStrungPresenter::change(UseCase useCase) {
    write(std::move(useCase), [this](Result<Job> job) {
        if (job) {
            Q_EMIT done(*job);
        } else {
            Q_EMIT refused(job.error());
        }
    });
}

void ToBeStrungPresenter::letWait(JobId job, const QString& whatFor) {
    if (somebodyWorks()) {
        change([command = desk::LetWait{job, whatFor.toStdString(), by()}](desk::Transaction& ledger) {
            return desk::letJobWait(ledger, command);
        });
    }
}

void ToBeStrungPresenter::resume(JobId job) {
    if (somebodyWorks()) {
        change([command = desk::JobStep{job, by()}](desk::Transaction& ledger) {
            return desk::resumeJob(ledger, command);
        });
    }
}

void ToBeStrungPresenter::withdraw(JobId job) {
    if (!somebodyWorks()) {
        return;
    }
    struct Gone {
        Job job;
        Money paid;
    };
    write(
        [command = desk::JobStep{job, by()}](desk::Transaction& ledger) -> Result<Gone> {
            auto gone = desk::withdrawJob(ledger, command);
            if (!gone) {
                return tl::unexpected<Refusal>(gone.error());
            }
            return Gone{*std::move(gone), ledger.jobs().paid(command.job)};
        },
        [this](const Result<Gone>& gone) {
            if (gone) {
                Q_EMIT withdrawn(gone->job, gone->paid);
            } else {
                Q_EMIT refused(gone.error());
            }
        });
}

void ToBeStrungPresenter::agree(JobId job, const QString& agreedBy, const QString& words) {
    if (!somebodyWorks()) {
        return;
    }
    struct Agreed {
        std::int64_t number;
        Consent consent;
    };
    const desk::Agree command{job, agreedBy.trimmed().toStdString(), words.toStdString(), by()};
    write(
        [command](desk::Transaction& ledger) -> Result<Agreed> {
            auto consent = desk::agreeAboveMarked(ledger, command);
            if (!consent) {
                return tl::unexpected<Refusal>(consent.error());
            }
            return Agreed{ledger.jobs().get(command.job)->number, *std::move(consent)};
        },
        [this](const Result<Agreed>& done) {
            if (done) {
                Q_EMIT agreed(done->number, done->consent);
            } else {
                Q_EMIT refused(done.error());
            }
        });
}

void ToBeStrungPresenter::changeAsked(JobId job, const TensionPair& seen, const TensionPair& wanted) {
    if (!somebodyWorks()) {
        return;
    }
    struct Changed {
        Job job;
        bool notAgreed;
    };
    const desk::ChangeAsked command{job, seen, wanted, by()};
    write(
        [command](desk::Transaction& ledger) -> Result<Changed> {
            auto changed = desk::changeAsked(ledger, command);
            if (!changed) {
                return tl::unexpected<Refusal>(changed.error());
            }
            const auto lines = desk::toBeStrung(ledger);
            const auto line = std::ranges::find(*lines, command.job, &desk::JobLine::id);
            return Changed{*std::move(changed), line != lines->end() && line->notAgreed};
        },
        [this, job](const Result<Changed>& done) {
            if (done) {
                Q_EMIT askedChanged(done->job, done->notAgreed);
            } else if (done.error().code() == Code::ChangedMeanwhile) {
                readAsked(job);
            } else {
                Q_EMIT refused(done.error());
            }
        });
}

void ToBeStrungPresenter::readAsked(JobId job) {
    read(
        [job](desk::Transaction& ledger) -> Result<Job> {
            auto found = ledger.jobs().get(job);
            if (!found) {
                return refuse(Code::NotFound, {{"what", "job"}, {"text", std::to_string(job.value())}});
            }
            return *std::move(found);
        },
        [this](const Result<Job>& now) {
            if (now) {
                Q_EMIT askedDiffers(*now);
            } else {
                Q_EMIT refused(now.error());
            }
        });
    refresh();
}

} // namespace rw::ui
