// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QUuid>

#include <string>

namespace rw::ui {

/// A key that no form of any station had before: what is sent twice under it is done once.
[[nodiscard]] inline std::string newRequestKey() {
    return QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
}

} // namespace rw::ui
