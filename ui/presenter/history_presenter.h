// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/counter.h"
#include "ui/presenter/station_presenter.h"

#include <QString>

#include <variant>
#include <vector>

namespace rw::ui {

/// Whose history is looked at, with a name for the heading.
struct HistoryOf {
    std::variant<CustomerId, RacketId, FrameModelId, JobId> whose; ///< a job: its racket
    QString name;
};

/// What was strung before: for a person, on one racket, on all frames of a model.
class HistoryPresenter final : public StationPresenter {
    Q_OBJECT

public:
    HistoryPresenter(DeskRunner& runner, Shift& shift, QObject* parent = nullptr);

    void refresh() override;

    void show(const HistoryOf& of);
    [[nodiscard]] const std::optional<HistoryOf>& shown() const { return m_of; }
    [[nodiscard]] const std::vector<desk::HistoryEntry>& entries() const { return m_entries; } ///< newest first
    [[nodiscard]] bool isLoaded() const { return m_loaded; }
    [[nodiscard]] const std::optional<Refusal>& refusal() const { return m_refusal; } ///< why there are none

Q_SIGNALS:
    void entriesChanged();

private:
    std::optional<HistoryOf> m_of;
    std::vector<desk::HistoryEntry> m_entries;
    bool m_loaded = false;
    std::optional<Refusal> m_refusal;
    desk::CancelToken m_asked;
};

} // namespace rw::ui
