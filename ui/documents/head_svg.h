// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/length/cut_plan.h"

#include <QByteArray>
#include <QString>

namespace rw::ui {

/// The head of the frame with every string where the plan lays it, as a picture of its own: SVG, with the route as its
/// title and the picture in words as its description. The same text for the same plan.
[[nodiscard]] QByteArray headSvg(const length::CutPlan& plan);

/// Whole or not at all, with the refusals and exceptions of writeWholeFile.
[[nodiscard]] Result<void> writeHeadSvg(const QString& path, const length::CutPlan& plan);

} // namespace rw::ui
