// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

namespace rw::ui {

/// The trade's usual cautions for the bench, one sentence each. They stand on every job card and in the guide.
[[nodiscard]] QStringList benchCautions();

} // namespace rw::ui
