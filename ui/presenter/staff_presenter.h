// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/workplace.h"
#include "ui/presenter/set_up_presenter.h"

#include <vector>

namespace rw::ui {

/// Who works here: added, changed, retired, brought back.
class StaffPresenter final : public SetUpPresenter {
    Q_OBJECT

public:
    StaffPresenter(DeskRunner& runner, Shift& shift, QObject* parent = nullptr);

    /// Who is here first, then who has left.
    [[nodiscard]] const std::vector<desk::StaffMember>& staff() const { return m_staff; }
    [[nodiscard]] CivilDate today() const { return m_today; }

    void keep(const desk::StaffMember& member); ///< new without an id
    void retire(desk::StaffMember member);      ///< or brings back who has left

Q_SIGNALS:
    void kept(const rw::desk::StaffMember& member);

protected:
    void load() override;

private:
    std::vector<desk::StaffMember> m_staff;
    CivilDate m_today{};
};

} // namespace rw::ui
