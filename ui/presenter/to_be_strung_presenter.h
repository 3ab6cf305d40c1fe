// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/change_asked.h"
#include "core/desk/consent.h"
#include "core/desk/job_course.h"
#include "ui/presenter/station_presenter.h"

#include <QString>

#include <vector>

namespace rw::ui {

/// What is in the shop and not strung yet: a job can be made to wait, go on, or be withdrawn.
class ToBeStrungPresenter final : public StationPresenter {
    Q_OBJECT

public:
    ToBeStrungPresenter(DeskRunner& runner, Shift& shift, QObject* parent = nullptr);

    void refresh() override;

    [[nodiscard]] const std::vector<desk::JobLine>& lines() const { return m_lines; }
    [[nodiscard]] bool isLoaded() const { return m_loaded; }

    void letWait(JobId job, const QString& whatFor);
    void resume(JobId job);
    void withdraw(JobId job);
    /// Keeps the yes to the job's highest pull; `words` are those that were read out.
    void agree(JobId job, const QString& agreedBy, const QString& words);
    /// Changes the agreed tensions from what was `seen`. When another station changed them meanwhile,
    /// askedDiffers() brings the job as it is now.
    void changeAsked(JobId job, const TensionPair& seen, const TensionPair& wanted);

Q_SIGNALS:
    void linesChanged();
    void done(const Job& job);
    void withdrawn(const Job& job, const Money& paid); ///< and what was paid for it, to be given back
    void agreed(std::int64_t number, const rw::Consent& consent);
    void askedChanged(const Job& job, bool notAgreed); ///< and whether nobody said yes to the new pull
    void askedDiffers(const Job& job);
    void refused(const Refusal& why);

private:
    template<class UseCase>
    void change(UseCase useCase);
    void readAsked(JobId job);

    std::vector<desk::JobLine> m_lines;
    bool m_loaded = false;
};

} // namespace rw::ui
