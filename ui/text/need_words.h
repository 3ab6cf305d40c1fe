// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/intake.h"
#include "core/length/cut_plan.h"

#include <QLocale>
#include <QString>
#include <QStringList>

// How much string a job needs and how that is known.
namespace rw::ui {

/// "7 cuts here, 5 with tails", "this shop's tails on other frames", "the head's measurements": what a need stands on.
[[nodiscard]] QString needStandsOnText(const length::PiecePlan& piece, const QLocale& locale = QLocale());

/// One line for the card: "needs about 10.43 m by 7 cuts here, 5 with tails"; of two pieces each in turn.
[[nodiscard]] QString needsText(const length::CutPlan& plan, const QLocale& locale = QLocale());

/// Why a job is cut as long as it is, for who asks at the counter: where the proposal is not the model's own cut, that
/// first; then the plan's reasons, one sentence each.
[[nodiscard]] QStringList whyLines(const desk::IntakePreview& preview, const QLocale& locale = QLocale());

} // namespace rw::ui
