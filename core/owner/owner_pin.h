// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace rw {

/// What the owner types to see purchase prices, costs and margins. It is kept nowhere: a ledger has its hash alone.
class OwnerPin {
public:
    /// 4 to 64 characters (code points), as they were typed. ImpossibleValue {key, expected}, and TooLong; neither
    /// carries what was typed.
    [[nodiscard]] static Result<OwnerPin> tryParse(std::string_view typed);

    /// A salted password hash (Argon2id, RFC 9106, by libsodium), as text of at most 128 characters that holds its own
    /// salt and cost. Slow by intent: about a tenth of a second and 64 MiB. Two hashes of one PIN differ. Throws
    /// std::bad_alloc.
    [[nodiscard]] std::string hash() const;
    /// Whether `hash` was made of this PIN; a text that is no hash was made of none. As slow.
    [[nodiscard]] bool isThatOf(const std::string& hash) const;

private:
    explicit OwnerPin(std::string_view typed)
        : m_typed(typed) {}
    std::string m_typed;
};

constexpr std::int64_t kShortestPin = 4;
constexpr std::int64_t kLongestPin = 64;

} // namespace rw
