// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/repositories.h"
#include "ui/widgets/sheet.h"

#include <QComboBox>
#include <QLineEdit>
#include <QWidget>

#include <optional>

namespace rw::ui {

class LengthEdit;
class StepEdit;

/// A machine: name, the unit and step of its dial, how much string it needs beyond the frame.
class MachineSheet final : public QWidget {
    Q_OBJECT

public:
    explicit MachineSheet(QWidget* parent = nullptr);

    void start(const desk::Machine& machine); ///< new without an id
    /// Nothing while something cannot be read, with the keyboard on it.
    std::optional<desk::Machine> machine();
    void showRefusal(const Refusal& why);

private:
    std::optional<desk::Machine> m_machine; ///< as it was
    Sheet* m_sheet;
    QLineEdit* m_name;
    QComboBox* m_unit;
    StepEdit* m_step;
    LengthEdit* m_reach;
    Sheet::Line m_nameLine{};
    Sheet::Line m_dialLine{};
    Sheet::Line m_reachLine{};
};

} // namespace rw::ui
