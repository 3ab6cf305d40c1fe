// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/money/money.h"

#include <QLocale>
#include <QString>

#include <string_view>
#include <vector>

// The shop's settings (core/desk/settings.h) in words.
namespace rw::ui {

/// What a setting is called inside a sentence, "number of minutes"; "" for a name that is no setting.
[[nodiscard]] QString settingWord(std::string_view name);

/// Which settings the page of the shop shows, in its order.
[[nodiscard]] const std::vector<std::string_view>& settingsShown();
/// "Minutes for a job": a setting's line on that page.
[[nodiscard]] QString settingTitle(std::string_view name);
/// What follows from it, and how it is written.
[[nodiscard]] QString settingHelp(std::string_view name);
/// What it says: "25 minutes", "left", "closed". `value` as the ledger keeps it.
[[nodiscard]] QString settingText(std::string_view name, std::string_view value, const Currency& currency,
                                  const QLocale& locale = QLocale());

} // namespace rw::ui
