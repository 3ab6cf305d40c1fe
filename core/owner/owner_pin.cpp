// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/owner/owner_pin.h"

#include <sodium.h>

#include <algorithm>
#include <array>
#include <cassert>
#include <new>

namespace rw {

namespace {
/// Code points of UTF-8: every byte but those that go on.
std::int64_t charactersIn(std::string_view text) {
    return std::ranges::count_if(text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; });
}

void startLibrary() {
    // It may be called as often as one likes, and does not fail on a system that gives random numbers.
    [[maybe_unused]] const int started = sodium_init();
    assert(started >= 0);
}
} // namespace

Result<OwnerPin> OwnerPin::tryParse(std::string_view typed) {
    const std::int64_t length = charactersIn(typed);
    if (length < kShortestPin) {
        return refuse(Code::ImpossibleValue, {{"key", "PIN"}, {"expected", "4 characters or more"}});
    }
    if (length > kLongestPin) {
        return refuse(Code::TooLong, {{"what", "PIN"}, {"length", length}, {"most", kLongestPin}});
    }
    return OwnerPin(typed);
}

std::string OwnerPin::hash() const {
    startLibrary();
    std::array<char, crypto_pwhash_STRBYTES> text{};
    if (crypto_pwhash_str(text.data(), m_typed.data(), m_typed.size(), crypto_pwhash_OPSLIMIT_INTERACTIVE,
                          crypto_pwhash_MEMLIMIT_INTERACTIVE) != 0) {
        throw std::bad_alloc();
    }
    return text.data();
}

bool OwnerPin::isThatOf(const std::string& hash) const {
    startLibrary();
    return crypto_pwhash_str_verify(hash.c_str(), m_typed.data(), m_typed.size()) == 0;
}

} // namespace rw
