// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/workplace.h"
#include "ui/presenter/set_up_presenter.h"

#include <vector>

namespace rw::ui {

/// The shop's machines: added, changed, retired, brought back.
class MachinesPresenter final : public SetUpPresenter {
    Q_OBJECT

public:
    MachinesPresenter(DeskRunner& runner, Shift& shift, QObject* parent = nullptr);

    /// What is in use first, then what is retired.
    [[nodiscard]] const std::vector<desk::Machine>& machines() const { return m_machines; }

    void keep(const desk::Machine& machine); ///< new without an id
    void retire(desk::Machine machine);      ///< or brings back what is retired

Q_SIGNALS:
    void kept(const rw::desk::Machine& machine);

protected:
    void load() override;

private:
    std::vector<desk::Machine> m_machines;
};

} // namespace rw::ui
