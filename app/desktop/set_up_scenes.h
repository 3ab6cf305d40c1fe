// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/picture_scenes.h"

#include <vector>

namespace rw::desktop {

/// The pages of the books on which the owner sets the shop up.
[[nodiscard]] std::vector<Scene> setUpScenes();

} // namespace rw::desktop
