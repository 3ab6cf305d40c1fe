// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/machines_presenter.h"

#include <algorithm>

namespace rw::ui {

MachinesPresenter::MachinesPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : SetUpPresenter(runner, shift, parent) {}

void MachinesPresenter::load() {
    show([](desk::Transaction& ledger) -> Result<std::vector<desk::Machine>> { return ledger.shop().machines(); },
         [this](std::vector<desk::Machine> machines) {
             m_machines = std::move(machines);
             std::ranges::stable_partition(m_machines, [](const auto& machine) { return !machine.retired; });
         });
}

void MachinesPresenter::keep(const desk::Machine& machine) {
    act([machine](desk::Transaction& ledger) { return desk::keepMachine(ledger, machine); },
        [this](const desk::Machine& done) { Q_EMIT kept(done); });
}

void MachinesPresenter::retire(desk::Machine machine) {
    machine.retired = !machine.retired;
    keep(machine);
}

} // namespace rw::ui
