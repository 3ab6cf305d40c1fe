// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/counter.h"
#include "ui/presenter/station_presenter.h"

#include <QString>

#include <optional>
#include <vector>

namespace rw::ui {

/// The rack: finished rackets that wait to be collected, and handing one over.
class RackPresenter final : public StationPresenter {
    Q_OBJECT

public:
    RackPresenter(DeskRunner& runner, Shift& shift, QObject* parent = nullptr);

    void refresh() override;

    [[nodiscard]] const std::vector<desk::JobLine>& lines() const { return m_lines; }
    [[nodiscard]] bool isLoaded() const { return m_loaded; }

    /// Opens one job to be handed over; its charges and total come with opened(). Of several that were asked for the
    /// last one opens.
    void open(JobId job);
    void close();
    [[nodiscard]] const std::optional<Job>& opened() const { return m_opened; }
    [[nodiscard]] const std::optional<Money>& owed() const { return m_owed; } ///< of the opened job

    /// Hands the opened job over. `payment` nothing: not paid yet. Pressing twice hands over once.
    void handOver(const std::optional<Money>& payment, const QString& way, const QString& takenBy);

Q_SIGNALS:
    void linesChanged();
    void openedChanged();
    void handedOver(const rw::desk::HandedOver& done);
    void refused(const Refusal& why);

private:
    desk::CancelToken m_opening;
    std::vector<desk::JobLine> m_lines;
    bool m_loaded = false;
    bool m_handing = false;
    std::optional<Job> m_opened;
    std::optional<Money> m_owed;
};

} // namespace rw::ui
