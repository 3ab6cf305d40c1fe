// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/bench.h"
#include "core/desk/new_shop.h"
#include "ui/presenter/station_presenter.h"

#include <QTimer>

#include <vector>

namespace rw::ui {

/// What the window asks before any station: what shop this is, and what lies on the machines. A racket that was on a
/// machine when the program stopped is the first thing that is said: whether it is cut or not. It hears when somebody
/// else wrote to the ledger, and asks a ledger that does not answer again until it does.
class ShellPresenter final : public StationPresenter {
    Q_OBJECT

public:
    ShellPresenter(DeskRunner& runner, Shift& shift, QObject* parent = nullptr);

    void refresh() override; ///< the facts of the shop again
    void lookAtMachines();
    void lookAtClock();
    void setUpShop(const desk::NewShop& shop);

Q_SIGNALS:
    void shopKnown();
    void foundOnMachines(const std::vector<rw::desk::JobCard>& cards); ///< not when there is nothing
    void foundAhead(rw::Instant moment); ///< the ledger knows of what this computer's clock has not come to
    void setUpRefused(const Refusal& why);

private:
    QTimer m_askAgain;
    bool m_settingUp = false;
};

} // namespace rw::ui
