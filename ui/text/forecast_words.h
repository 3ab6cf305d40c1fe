// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"

#include <QLocale>
#include <QString>

#include <optional>

// When a string runs short, in words.
namespace rw::ui {

/// "12 March 2026".
[[nodiscard]] QString civilDateText(CivilDate date, const QLocale& locale = QLocale());

/// "about 1.5 jobs a week", "no job yet".
[[nodiscard]] QString demandText(double jobsPerDay, const QLocale& locale = QLocale());

/// "order at 5 jobs or fewer: about 1 in 50 that none is left before the delivery". `service` is the chance that there
/// is enough.
[[nodiscard]] QString orderAtText(int s, double service, const QLocale& locale = QLocale());

/// "runs out: likely 20 May 2026, could be 2 May 2026"; nothing stands for no date to be told.
[[nodiscard]] QString runOutText(const std::optional<CivilDate>& likely, const std::optional<CivilDate>& couldBe,
                                 const QLocale& locale = QLocale());

} // namespace rw::ui
