// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/order_drafts.h"
#include "ui/port/table_files.h"
#include "ui/presenter/station_presenter.h"

#include <QString>

#include <vector>

namespace rw::ui {

/// What to order, from whom, and why.
class OrderPresenter final : public StationPresenter {
    Q_OBJECT

public:
    /// `files` must outlive it.
    OrderPresenter(DeskRunner& runner, Shift& shift, const TableFiles& files, QObject* parent = nullptr);

    void refresh() override;

    [[nodiscard]] const std::vector<desk::OrderDraft>& drafts() const { return m_drafts; }
    [[nodiscard]] bool isLoaded() const { return m_loaded; }

    /// Writes the drafts as order.csv into the folder, without prices unless `forOwner`; one at a time.
    void save(const QString& folder, bool forOwner);

Q_SIGNALS:
    void draftsChanged();
    void saved(const QString& folder);
    void notSaved(const QString& sentence); ///< why nothing was written

private:
    const TableFiles& m_files;
    std::vector<desk::OrderDraft> m_drafts;
    bool m_loaded = false;
    bool m_saving = false;
};

} // namespace rw::ui
