// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/drawing/palette.h"

class QApplication;

namespace rw::ui {

/// The desktop's own colours are dark ones.
[[nodiscard]] bool wantsDark(const QApplication& application);

/// Gives every window the program's colours, lines and a text size that is read standing up, and lets every label be
/// read out.
void lookLikeReelwright(QApplication& application, const Palette& palette);

} // namespace rw::ui
