// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace rw {

/// A word as it was typed, perhaps with one letter wrong: another one, one missing, one too many, or two side by side
/// swapped (optimal string alignment distance 1, after Damerau, CACM 7 (1964) 171–176).
class OneLetterOff {
public:
    explicit OneLetterOff(std::string_view typed); ///< a word of a search key, in UTF-8

    /// Long enough, and of letters: a number with one digit wrong is another number.
    [[nodiscard]] bool isForgiven() const { return m_forgiven; }
    /// Whether a word of the search key begins with what may have been meant; never where nothing is forgiven.
    /// `isAscii`: nothing else is in the key, which makes it quick.
    [[nodiscard]] bool mayBeIn(std::string_view searchKey, bool isAscii) const;

private:
    std::string m_typed;
    std::u32string m_letters;
    bool m_forgiven;
    bool m_isAscii;
};

[[nodiscard]] bool isAscii(std::string_view text);

} // namespace rw
