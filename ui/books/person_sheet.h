// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/repositories.h"
#include "ui/widgets/sheet.h"

#include <QComboBox>
#include <QLineEdit>
#include <QWidget>

#include <array>
#include <optional>

namespace rw::ui {

class DaysEdit;
class HoursEdit;

/// Somebody who works here: name, whether they string, their hours, the days they are away.
class PersonSheet final : public QWidget {
    Q_OBJECT

public:
    explicit PersonSheet(QWidget* parent = nullptr);

    void start(const desk::StaffMember& member); ///< new without an id
    /// Nothing while something cannot be read, with the keyboard on it.
    std::optional<desk::StaffMember> member();
    void showRefusal(const Refusal& why);

    [[nodiscard]] QString margin() const; ///< everything that is said beside the lines

private:
    [[nodiscard]] std::optional<WeekHours> week() const;
    void showDays();

    std::optional<desk::StaffMember> m_member; ///< as it was
    Sheet* m_sheet;
    QLineEdit* m_name;
    QComboBox* m_strings;
    std::array<HoursEdit*, 7> m_hours{};
    DaysEdit* m_off;
    Sheet::Line m_nameLine{};
    Sheet::Line m_earlyLine{}; ///< Monday to Thursday
    Sheet::Line m_lateLine{};
    Sheet::Line m_offLine{};
};

} // namespace rw::ui
