// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/picture_scenes.h"

#include <initializer_list>
#include <vector>

// The scenes of each part of the window.
namespace rw::desktop {

[[nodiscard]] std::vector<Scene> counterScenes();
[[nodiscard]] std::vector<Scene> benchScenes();
[[nodiscard]] std::vector<Scene> stockroomScenes();
[[nodiscard]] std::vector<Scene> orderScenes();   ///< what runs short, and what was asked for in vain
[[nodiscard]] std::vector<Scene> weighInScenes(); ///< the stockroom with its scale
[[nodiscard]] std::vector<Scene> booksScenes();
[[nodiscard]] std::vector<Scene> setUpScenes();  ///< the books' pages on which the owner sets the shop up
[[nodiscard]] std::vector<Scene> windowScenes(); ///< what belongs to no station: first day, history, papers, guide

/// All of them, in that order.
[[nodiscard]] std::vector<Scene> together(std::initializer_list<std::vector<Scene>> parts);

} // namespace rw::desktop
