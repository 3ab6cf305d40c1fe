// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/picture_scenes.h"

#include <vector>

namespace rw::desktop {

/// The bench after other stations have had their say: what is not agreed, what was changed, an end that is too short,
/// what is taken back.
[[nodiscard]] std::vector<Scene> otherStationScenes();

} // namespace rw::desktop
