// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/money/money.h"
#include "core/strings/string_article.h"
#include "core/units/length.h"
#include "core/units/tension.h"

#include <QLocale>
#include <QString>
#include <QTimeZone>

#include <string_view>

// Values as people read them: the locale's decimal sign, the shop's time zone, the unit beside the number.
namespace rw::ui {

/// Core's UTF-8 as a QString. Broken bytes become replacement characters.
[[nodiscard]] QString fromUtf8(std::string_view text);

/// "11.2 m": every millimetre that is there, no trailing noughts.
[[nodiscard]] QString lengthText(Length length, const QLocale& locale = QLocale());
/// "11.2 m": to the centimetre below, as a tape is read, no trailing noughts: for what a reel holds, where a yard or a
/// foot leaves odd millimetres.
[[nodiscard]] QString heldText(Length length, const QLocale& locale = QLocale());
/// "11.2": the metres alone.
[[nodiscard]] QString lengthNumber(Length length, const QLocale& locale = QLocale());
/// "10.55 m": to the nearest centimetre, for what was computed and not measured.
[[nodiscard]] QString aboutLengthText(double millimetres, const QLocale& locale = QLocale());

/// "52.5 lb".
[[nodiscard]] QString tensionText(const Tension& tension, const QLocale& locale = QLocale());
/// "52.5".
[[nodiscard]] QString tensionNumber(const Tension& tension, const QLocale& locale = QLocale());
/// "52/50 lb", mains first; "52 lb / 22.5 kg" when the units differ.
[[nodiscard]] QString tensionPairText(const TensionPair& pair, const QLocale& locale = QLocale());
/// A pull in a unit, to at most `decimals` decimals: "23.59 kg". For values that are derived, not asked.
[[nodiscard]] QString derivedTensionText(double value, TensionUnit unit, int decimals,
                                         const QLocale& locale = QLocale());

/// "£30.00", "30.00 KWD": always all decimals of the currency; a sign only where one currency owns it.
[[nodiscard]] QString moneyText(const Money& money, const QLocale& locale = QLocale());

/// "1.25 mm (17)": millimetres first, the gauge name beside them when there is one.
[[nodiscard]] QString gaugeText(const StringArticle& article, const QLocale& locale = QLocale());

/// "8½ head lengths": to the nearest half.
[[nodiscard]] QString headLengthsText(double headLengths);

/// "about 1 in 200", "less than 1 in 10000", "more likely than not". `chance` in 0 to 1.
[[nodiscard]] QString chanceText(double chance, const QLocale& locale = QLocale());

/// The shop's time zone by its IANA name; UTC when the system does not know it.
[[nodiscard]] QTimeZone timeZoneOf(std::string_view ianaName);
/// "20 January 2026".
[[nodiscard]] QString dateText(Instant at, const QTimeZone& zone, const QLocale& locale = QLocale());
/// "Tue 20 Jan"; "Mon 20 Jan 2025" when that is another year than now's.
[[nodiscard]] QString shortDateText(Instant at, Instant now, const QTimeZone& zone, const QLocale& locale = QLocale());
/// "Tue 20 Jan 16:30".
[[nodiscard]] QString momentText(Instant at, const QTimeZone& zone, const QLocale& locale = QLocale());
/// "today 16:30", "tomorrow 10:30", "Thu 22 Jan 10:30". What was earlier is said in the same way.
[[nodiscard]] QString promiseText(Instant promise, Instant now, const QTimeZone& zone,
                                  const QLocale& locale = QLocale());

} // namespace rw::ui
