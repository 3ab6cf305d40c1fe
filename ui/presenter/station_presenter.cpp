// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/station_presenter.h"

#include "ui/text/sentences.h"

namespace rw::ui {

StationPresenter::StationPresenter(DeskRunner& runner, Shift& shift, std::string station, QObject* parent)
    : QObject(parent)
    , m_runner(runner)
    , m_shift(shift)
    , m_station(std::move(station)) {}

void StationPresenter::noteTrouble(const std::exception_ptr& error) { m_shift.setTrouble(sentenceFor(error)); }

} // namespace rw::ui
