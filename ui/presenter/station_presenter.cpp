// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/station_presenter.h"

namespace rw::ui {

StationPresenter::StationPresenter(DeskRunner& runner, Shift& shift, std::string station, QObject* parent)
    : QObject(parent)
    , m_runner(runner)
    , m_shift(shift)
    , m_station(std::move(station)) {
    connect(&shift, &Shift::ledgerChanged, this, [this] { refresh(); });
}

bool StationPresenter::somebodyWorks() {
    if (m_shift.staff()) {
        return true;
    }
    Q_EMIT m_shift.staffWanted();
    return false;
}

} // namespace rw::ui
