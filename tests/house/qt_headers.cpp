// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/house/qt_headers.h"

namespace rw::house {

QtHeaders readQtHeaders(const std::filesystem::path& includeFolder) {
    QtHeaders headers;
    for (const auto& module : std::filesystem::directory_iterator(includeFolder)) {
        const std::string name = module.path().filename().string();
        if (!module.is_directory() || name.substr(0, 2) != "Qt") {
            continue;
        }
        for (const auto& header : std::filesystem::directory_iterator(module.path())) {
            if (!header.is_directory()) {
                headers[header.path().filename().string()].insert(name.substr(2));
            }
        }
    }
    return headers;
}

} // namespace rw::house
