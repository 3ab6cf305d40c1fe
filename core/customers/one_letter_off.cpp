// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/customers/one_letter_off.h"

#include <QString>

#include <algorithm>

namespace rw {

namespace {
constexpr std::size_t kFewestLetters = 4;

std::u32string lettersOf(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size())).toStdU32String();
}

/// Whether `name` from `at` on begins with `typed` from `from` on.
template<class Word>
bool goesOn(Word name, std::size_t at, Word typed, std::size_t from) {
    return at <= name.size() && name.substr(at).starts_with(typed.substr(from));
}

template<class Word>
bool beginsNearly(Word name, Word typed) {
    std::size_t same = 0;
    while (same < name.size() && same < typed.size() && name[same] == typed[same]) {
        ++same;
    }
    if (same == typed.size()) {
        return true;
    }
    const bool swapped = same + 1 < typed.size() && same + 1 < name.size() && name[same] == typed[same + 1] &&
                         name[same + 1] == typed[same] && goesOn(name, same + 2, typed, same + 2);
    return swapped || goesOn(name, same + 1, typed, same + 1) // another letter
           || goesOn(name, same + 1, typed, same)             // one is missing
           || goesOn(name, same, typed, same + 1);            // one too many
}

/// One letter wrong leaves the first or the second where it was, or puts each in the place of the other. That is true
/// of few names and soon looked at.
bool mayBegin(std::string_view name, std::string_view typed) {
    return name.size() < 2 || name[0] == typed[0] || name[1] == typed[1] || name[0] == typed[1] || name[1] == typed[0];
}
} // namespace

bool isAscii(std::string_view text) {
    return std::ranges::all_of(text, [](char c) { return static_cast<unsigned char>(c) < 0x80U; });
}

OneLetterOff::OneLetterOff(std::string_view typed)
    : m_typed(typed)
    , m_letters(lettersOf(typed))
    , m_forgiven(m_letters.size() >= kFewestLetters &&
                 std::ranges::any_of(m_letters, [](char32_t letter) { return QChar::isLetter(letter); }))
    , m_isAscii(rw::isAscii(typed)) {}

bool OneLetterOff::mayBeIn(std::string_view searchKey, bool isAscii) const {
    if (!m_forgiven) {
        return false;
    }
    const bool byBytes = isAscii && m_isAscii;
    for (std::size_t from = 0; from < searchKey.size();) {
        const std::size_t to = std::min(searchKey.find(' ', from), searchKey.size());
        const std::string_view word = searchKey.substr(from, to - from);
        if (byBytes) {
            if (mayBegin(word, m_typed) && beginsNearly(word, std::string_view(m_typed))) {
                return true;
            }
        } else if (beginsNearly(std::u32string_view(lettersOf(word)), std::u32string_view(m_letters))) {
            return true;
        }
        from = to + 1;
    }
    return false;
}

} // namespace rw
