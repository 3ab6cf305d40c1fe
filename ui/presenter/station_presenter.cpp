// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/station_presenter.h"

#include "ui/text/sentences.h"

namespace rw::ui {

StationPresenter::StationPresenter(DeskRunner& runner, Shift& shift, std::string station, QObject* parent)
    : QObject(parent)
    , m_runner(runner)
    , m_shift(shift)
    , m_station(std::move(station)) {}

void StationPresenter::noteTrouble(const std::exception_ptr& error) { setTrouble(sentenceFor(error)); }

void StationPresenter::setTrouble(const QString& trouble) {
    if (m_trouble != trouble) {
        m_trouble = trouble;
        Q_EMIT troubleChanged();
    }
}

} // namespace rw::ui
