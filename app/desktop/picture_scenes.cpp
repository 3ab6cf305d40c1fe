// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/picture_scenes.h"

#include "app/desktop/station_scenes.h"

namespace rw::desktop {

std::vector<Scene> together(std::initializer_list<std::vector<Scene>> parts) {
    std::vector<Scene> all;
    for (const auto& part : parts) {
        all.insert(all.end(), part.begin(), part.end());
    }
    return all;
}

std::vector<Scene> scenes() {
    return together({counterScenes(), benchScenes(), stockroomScenes(), orderScenes(), weighInScenes(),
                     booksScenes(), setUpScenes(), windowScenes()});
}

} // namespace rw::desktop
