// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/readable_text.h"

#include <cstddef>
#include <cstdint>

namespace rw {

namespace {
/// How many bytes the character has that begins with `lead`; 0 when none begins so.
std::size_t lengthFrom(std::uint8_t lead) {
    return lead < 0x80U                    ? 1
           : lead >= 0xC2U && lead < 0xE0U ? 2
           : (lead & 0xF0U) == 0xE0U       ? 3
           : lead >= 0xF0U && lead < 0xF5U ? 4
                                           : 0;
}

/// The second byte keeps out long forms, surrogates and what lies above U+10FFFF.
bool secondFits(std::uint8_t lead, std::uint8_t second) {
    const std::uint8_t lowest = lead == 0xE0U ? 0xA0U : lead == 0xF0U ? 0x90U : 0x80U;
    const std::uint8_t highest = lead == 0xEDU ? 0x9FU : lead == 0xF4U ? 0x8FU : 0xBFU;
    return second >= lowest && second <= highest;
}
} // namespace

bool isReadableText(std::string_view bytes) {
    const auto byteAt = [&](std::size_t place) { return static_cast<std::uint8_t>(bytes[place]); };
    for (std::size_t place = 0; place < bytes.size();) {
        const std::size_t length = lengthFrom(byteAt(place));
        if (length == 0 || byteAt(place) == 0 || place + length > bytes.size()) {
            return false;
        }
        if (length > 1 && !secondFits(byteAt(place), byteAt(place + 1))) {
            return false;
        }
        for (std::size_t next = 2; next < length; ++next) {
            if ((byteAt(place + next) & 0xC0U) != 0x80U) {
                return false;
            }
        }
        place += length;
    }
    return true;
}

} // namespace rw
