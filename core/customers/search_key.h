// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace rw {

/// Text as it is searched: lower case, accents taken off, white space single. "Zoë  Ångström" is "zoe angstrom".
[[nodiscard]] std::string searchKey(std::string_view text);
/// Only the digits, for phone numbers: "+44 (0)20 7946" is "4402079 46" without spaces.
[[nodiscard]] std::string digitsOf(std::string_view text);

} // namespace rw
