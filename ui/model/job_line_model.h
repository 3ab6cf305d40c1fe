// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/desk/port/repositories.h"
#include "ui/model/list_model.h"

#include <QTimeZone>

#include <map>
#include <utility>

namespace rw::ui {

/// What a list says of one of its jobs beyond the job itself.
struct JobRemark {
    QString fact;  ///< in front of the others
    QString aside; ///< instead of the promise
};

/// Jobs one below the other: the queue at the bench, the rack at the counter.
class JobLineModel final : public ListModel<desk::JobLine> {
    Q_OBJECT

public:
    using ListModel::ListModel;
    /// What "today" is, and on which wall clock. Takes effect with the next rows.
    void setNow(Instant now, const QTimeZone& zone) {
        m_now = now;
        m_zone = zone;
    }
    /// Of the next rows.
    void setRemarks(std::map<JobId, JobRemark> remarks) { m_remarks = std::move(remarks); }
    void setShowsPhones(bool shows) { m_showsPhones = shows; } ///< beside the name: namesakes are told apart
    [[nodiscard]] int rowOf(JobId id) const;                   ///< -1 when it is not there

protected:
    [[nodiscard]] QVariant show(const desk::JobLine& line, int role) const override;

private:
    std::map<JobId, JobRemark> m_remarks;
    bool m_showsPhones = false;
    Instant m_now{};
    QTimeZone m_zone = QTimeZone::utc();
};

/// "2121 · Aldermoor 98 A".
[[nodiscard]] QString jobLineTitle(const desk::JobLine& line);

} // namespace rw::ui
