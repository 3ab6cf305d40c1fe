// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stockroom.h"
#include "core/stock/shelf.h"
#include "core/units/length.h"

#include <QLocale>
#include <QString>

// What is left, promised and free, and whether it is enough, in words.
namespace rw::ui {

/// "2 jobs; a third would be 0.3 m short", "no whole job; the first would be 0.3 m short".
[[nodiscard]] QString wholeJobsText(const WholeJobs& whole, const QLocale& locale = QLocale());

/// "leaves 5.5 m", "fits by 0.2 m if the book is right, measure before cutting", "0.3 m short by the book".
/// `leaves` is what the lot holds after the cut; negative when it does not fit.
[[nodiscard]] QString fitText(Fit fit, Length leaves, const QLocale& locale = QLocale());

/// "48.7 m left, 32.4 m promised, 16.3 m free"; "1.2 m more promised than there is" when free is negative.
[[nodiscard]] QString holdingText(const Holding& holding, const QLocale& locale = QLocale());

/// "running short: 1 whole job free", or "" when it is not.
[[nodiscard]] QString runningShortText(const desk::ShelfString& string);

/// "3 jobs free": what is promised is not counted.
[[nodiscard]] QString jobsFreeText(const desk::ShelfString& string);

/// "about 24.3 m usable": what is free without the ends that will likely be scrap; "nothing usable".
[[nodiscard]] QString usableText(const desk::ShelfString& string, const QLocale& locale = QLocale());

/// "1 job", "3 jobs".
[[nodiscard]] QString jobsText(std::int64_t jobs);

} // namespace rw::ui
