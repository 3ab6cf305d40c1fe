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

/// U+061C; U+200E, U+200F, U+202A to U+202E, U+2066 to U+2069: how many bytes one of them takes at the beginning.
std::size_t bidiControlAt(std::string_view text) {
    constexpr std::string_view kArabicLetterMark = "\xD8\x9C";
    if (text.starts_with(kArabicLetterMark)) {
        return kArabicLetterMark.size();
    }
    const std::string_view place = text.substr(0, 3);
    const bool isMark = place == "\xE2\x80\x8E" || place == "\xE2\x80\x8F";
    const bool isOverride = place >= "\xE2\x80\xAA" && place <= "\xE2\x80\xAE";
    const bool isIsolate = place >= "\xE2\x81\xA6" && place <= "\xE2\x81\xA9";
    return place.size() == 3 && (isMark || isOverride || isIsolate) ? place.size() : 0;
}
} // namespace

std::string withoutBidiControls(std::string_view text) {
    std::string kept;
    kept.reserve(text.size());
    while (!text.empty()) {
        const std::size_t control = bidiControlAt(text);
        if (control == 0) {
            kept += text.front();
        }
        text.remove_prefix(control == 0 ? 1 : control);
    }
    return kept;
}

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
