// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/opening_hours.h"
#include "ui/widgets/parsed_edit.h"

#include <vector>

namespace rw::ui {

/// The hours of one day: "10-18", "9:30 – 17:00".
class HoursEdit final : public ParsedEdit<DayHours> {
    Q_OBJECT

public:
    explicit HoursEdit(QWidget* parent = nullptr);
};

/// A day: "2026-03-13", "13 March 2026", or as the locale writes it in short.
class DateEdit final : public ParsedEdit<CivilDate> {
    Q_OBJECT

public:
    explicit DateEdit(QWidget* parent = nullptr);
};

/// Several days: "2026-08-03 to 2026-08-14, 2026-12-25".
class DaysEdit final : public ParsedEdit<std::vector<CivilDate>> {
    Q_OBJECT

public:
    explicit DaysEdit(QWidget* parent = nullptr);
};

} // namespace rw::ui
