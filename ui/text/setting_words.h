// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <string_view>

namespace rw::ui {

/// What a setting of core/desk/settings.h is called inside a sentence, "number of minutes"; "" for any other name.
[[nodiscard]] QString settingWord(std::string_view name);

} // namespace rw::ui
