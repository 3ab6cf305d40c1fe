// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stockroom.h"

#include <QLocale>
#include <QString>
#include <QStringList>

#include <vector>

// What will become of a string on the shelf, and what to do about it, in words.
namespace rw::ui {

/// "20 May"; "20 May 2027" when that is more than ten months from `today`.
[[nodiscard]] QString dayToComeText(CivilDate day, CivilDate today, const QLocale& locale = QLocale());

/// "likely out 20 May, could be 2 May"; "could be out 2 May, likely far later"; "none left"; "" where nothing can be
/// told.
[[nodiscard]] QString likelyOutText(const desk::StringAhead& ahead, const QLocale& locale = QLocale());
/// "order now", "order at 5 jobs", "on request"; "" where nothing can be told and nothing runs short.
[[nodiscard]] QString whenToOrderText(const desk::StringAhead& ahead);
/// Both on one line of a board: "order at 5 jobs; likely out 20 May, could be 2 May".
[[nodiscard]] QString boardAheadText(const desk::StringAhead& ahead, const QLocale& locale = QLocale());

/// The same at length, a sentence each: what to do and why, how often it is wanted, when it runs out.
[[nodiscard]] QStringList aheadSentences(const desk::ShelfString& string, const QLocale& locale = QLocale());

/// "▼ Order now: L Larkspun 130, likely out 14 March; T Tarnweave 120, none left": what the owner must do first, the
/// first four by name; "" when nothing runs short.
[[nodiscard]] QString orderNowText(const std::vector<desk::ShelfString>& shelf, const QLocale& locale = QLocale());

} // namespace rw::ui
