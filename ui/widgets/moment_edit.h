// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/calendar/opening_hours.h"
#include "ui/widgets/value_edit.h"

#include <functional>
#include <optional>

namespace rw::ui {

/// A time that is still to come: "17:00", "fri", "13 mar 17:00". A day without a time is until the shop closes.
class MomentEdit final : public ValueEdit {
    Q_OBJECT

public:
    /// What is now, and when the shop is open.
    struct Calendar {
        Instant now;
        OpeningHours hours;
    };
    MomentEdit(std::function<Calendar()> calendar, QWidget* parent = nullptr);

    void setValue(const std::optional<Instant>& moment); ///< emits nothing
    [[nodiscard]] Result<Instant> value() const;         ///< Missing when blank
    [[nodiscard]] std::optional<Instant> readable() const;

protected:
    [[nodiscard]] std::optional<Refusal> problemWith() const override;
    [[nodiscard]] Refusal missing() const override;
    void writeOut() override;

private:
    std::function<Calendar()> m_calendar;
};

} // namespace rw::ui
