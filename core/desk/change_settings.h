// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <string>
#include <string_view>
#include <vector>

namespace rw::desk {

/// A setting as somebody saw it, and what they want it to say.
struct SettingChange {
    std::string name;   ///< of core/desk/settings.h
    std::string before; ///< what it said: settingTexts()
    std::string value;  ///< as it was typed
};

struct SettingText {
    std::string name;
    std::string value; ///< what holds: what is stored, or the usual value while nothing readable is
    bool operator==(const SettingText&) const = default;
};
/// All of them, in the order of settingNames().
[[nodiscard]] Result<std::vector<SettingText>> settingTexts(Transaction& ledger);

/// Writes all of them or none. What settingAsKept() refuses; ImpossibleValue {key: hours} when the shop would never
/// open, {key: job-number.first} once a job is logged; ChangedMeanwhile {what: the name, mine, theirs} where another
/// station has changed one since it was read.
[[nodiscard]] Result<void> changeSettings(Transaction& ledger, const std::vector<SettingChange>& changes);

} // namespace rw::desk
