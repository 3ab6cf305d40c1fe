// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/repositories.h"
#include "core/desk/price_lists.h"

#include <QLocale>
#include <QString>

#include <vector>

// How the shop is set up, in words: people, machines, frames, prices, settings.
namespace rw::ui {

/// "Mon to Fri 10:00-18:00, Sat 10:00-14:00"; "never" for a week without any hours.
[[nodiscard]] QString weekText(const WeekHours& week, const QLocale& locale = QLocale());
/// "Mon": the weekday by its place, Monday 0.
[[nodiscard]] QString weekdayText(std::size_t day, const QLocale& locale = QLocale());
/// "16 to 20 March 2026, 3 April 2026": from `today` on; "" when none is left. At most `atMost` stretches, then "…".
[[nodiscard]] QString daysOffText(const std::vector<CivilDate>& days, CivilDate today, int atMost = 3,
                                  const QLocale& locale = QLocale());

/// "whenever the shop is open; away 16 to 20 March 2026".
[[nodiscard]] QString personText(const desk::StaffMember& member, CivilDate today, const QLocale& locale = QLocale());
/// "dial in lb, steps of 0.5, reach 0.3 m".
[[nodiscard]] QString machineDialText(const desk::Machine& machine, const QLocale& locale = QLocale());
/// "tennis, 16 × 19, mains start at the head, 50 lb to 60 lb".
[[nodiscard]] QString frameText(const FrameModel& frame, const QLocale& locale = QLocale());
/// What is measured of its head, "329 × 245 mm, 632.3 cm²"; a sentence when nothing is.
[[nodiscard]] QString headText(const FrameModel& frame, const QLocale& locale = QLocale());
/// "one piece, plain-2, polyester".
[[nodiscard]] QString usualCutTitle(const desk::UsualCut& cut);
/// "11.2 m, short side 3 m".
[[nodiscard]] QString usualCutText(const desk::UsualCut& cut, const QLocale& locale = QLocale());

/// "● holds now", "○ from 13 March 2026", "past".
[[nodiscard]] QString holdsText(const desk::DatedPrices& dated, const QLocale& locale = QLocale());
/// "From 12 March 2026".
[[nodiscard]] QString priceListTitle(const PriceList& list, const QLocale& locale = QLocale());
/// "labour £14.00, 4 strings, 1 extra, tax included".
[[nodiscard]] QString priceListText(const PriceList& list, const QLocale& locale = QLocale());
/// "Labour", "Labour, squash", "grommet tube".
[[nodiscard]] QString priceLineTitle(const PriceLine& line);
/// "tax 20 %", "no tax".
[[nodiscard]] QString taxText(int hundredthsPercent, const QLocale& locale = QLocale());
/// "full bed £13.00, half a bed £6.50"; a sentence when the string has no price.
[[nodiscard]] QString stringPricesText(const desk::StringPrices& prices, const QLocale& locale = QLocale());
[[nodiscard]] QString taxRuleText(TaxRule rule);

} // namespace rw::ui
