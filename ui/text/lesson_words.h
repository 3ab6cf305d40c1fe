// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/frame_needs.h"
#include "core/desk/lessons.h"

#include <QLocale>
#include <QString>

#include <cstddef>

// What the shop's own cuts have taught, in words.
namespace rw::ui {

/// "mains", "crosses", "one piece", "short side".
[[nodiscard]] QString partOfJobWord(PieceRole role, bool shortSide);
/// "+1.2 %", "−0.4 %" of a logarithm of need / prediction; and its spread: "± 0.9 %".
[[nodiscard]] QString shareText(double logarithm, const QLocale& locale = QLocale());
[[nodiscard]] QString spreadText(double sdOfLogarithm, const QLocale& locale = QLocale());
/// "14 measured cuts of 3 frames and strings".
[[nodiscard]] QString measuredCutsText(int cuts, int groups, const QLocale& locale = QLocale());
/// "7 cuts, 5 with tails, one came short".
[[nodiscard]] QString lessonCutsText(const desk::FrameLesson& lesson, const QLocale& locale = QLocale());

/// "crosses, multifilament (2 of 5)", "short side, plain-1, polyester".
[[nodiscard]] QString needStoryTitle(const desk::NeedStory& story, std::size_t place, std::size_t of);
/// "The next needs about 5.88 m, give or take 0.09: by 7 cuts, 5 with tails. By the head's measurements 6.01 m, with
/// the rest of the shop 5.95 m."
[[nodiscard]] QString needStoryText(const desk::NeedStory& story, const QLocale& locale = QLocale());
/// "needed 5.88 m", "needed 5.7 to 5.9 m", "was enough", "came short".
[[nodiscard]] QString toldText(const desk::NeedStep& step, const QLocale& locale = QLocale());
[[nodiscard]] QString needLegendText();
[[nodiscard]] QString noCutsToldText();

} // namespace rw::ui
