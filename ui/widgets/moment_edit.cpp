// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/moment_edit.h"

#include "ui/text/format.h"
#include "ui/text/moment_text.h"

#include <utility>

namespace rw::ui {

MomentEdit::MomentEdit(std::function<Calendar()> calendar, QWidget* parent)
    : ValueEdit(parent)
    , m_calendar(std::move(calendar)) {}

void MomentEdit::setValue(const std::optional<Instant>& moment) {
    if (!moment) {
        clear();
        return;
    }
    const Calendar calendar = m_calendar();
    setText(promiseText(*moment, calendar.now, timeZoneOf(calendar.hours.timeZone)));
}

Result<Instant> MomentEdit::value() const {
    if (isBlank()) {
        return tl::unexpected<Refusal>(missing());
    }
    const Calendar calendar = m_calendar();
    return momentFromText(text(), calendar.now, calendar.hours);
}

std::optional<Instant> MomentEdit::readable() const {
    const auto moment = value();
    return moment ? std::optional(*moment) : std::nullopt;
}

std::optional<Refusal> MomentEdit::problemWith() const {
    const auto moment = value();
    return moment ? std::nullopt : std::optional(moment.error());
}

Refusal MomentEdit::missing() const { return Refusal(Code::Missing, {{"what", "time"}}); }

void MomentEdit::writeOut() { setValue(readable()); }

} // namespace rw::ui
