// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/money/money.h"

#include <string>
#include <string_view>
#include <vector>

// What each setting may say: one table for who writes and for who reads.
namespace rw::desk {

/// The names of all settings, in the order of core/desk/settings.h.
[[nodiscard]] std::vector<std::string_view> settingNames();

/// What somebody typed as the ledger keeps it: white space gone, numbers with a point, days one by one. UnknownKey
/// {key} for a name that is no setting; Unreadable, OutOfRange, TooLong, ImpossibleValue with the name as {what} or
/// {key}. Nothing at all is a closed day, no closed days, no name, no cost; any other setting needs a value: Missing
/// {what}.
[[nodiscard]] Result<std::string> settingAsKept(std::string_view name, std::string_view typed,
                                                const Currency& currency);

/// What holds while nothing readable is stored; "" for an unknown name. What a single day's hours are then depends on
/// the rest of the week (readSettings).
[[nodiscard]] std::string_view usualSetting(std::string_view name);

} // namespace rw::desk
