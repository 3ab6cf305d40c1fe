// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/to_be_strung_presenter.h"

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
    if (somebodyWorks()) {
        change([command = desk::JobStep{job, by()}](desk::Transaction& ledger) {
            return desk::withdrawJob(ledger, command);
        });
    }
}

} // namespace rw::ui
