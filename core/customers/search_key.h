// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace rw {

/// Text as it is searched: lower case, accents taken off, letters like "ß" and "ø" spelled out ("ss", "o"),
/// marks that nobody sees dropped, white space single. "Zoë  Ångström" is "zoe angstrom". Takes and gives
/// UTF-8.
[[nodiscard]] std::string searchKey(std::string_view text);
/// Only the digits, for phone numbers: "+44 (0)20 7946" is "440207946". Digits of other scripts become 0
/// to 9.
[[nodiscard]] std::string digitsOf(std::string_view text);

/// The digits of a text by which somebody may look for a phone number: all of them where there is nothing but digits and
/// what people write between them (space, + - . / and brackets); beside other words only four or more, for the 07 of
/// "Club 07" is no number. "" otherwise.
[[nodiscard]] std::string phoneDigitsOf(std::string_view text);

} // namespace rw
