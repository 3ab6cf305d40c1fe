// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

namespace rw::stock {

/// Which totals can be made of some numbers, up to a limit: a bit for each, so that one more number is one shift.
class SumSet {
public:
    /// Of no numbers: 0 alone. The limit is not negative.
    explicit SumSet(std::int64_t limit)
        : m_limit(limit)
        , m_words(static_cast<std::size_t>(limit) / kBits + 1, 0) {
        m_words[0] = 1;
    }

    /// Lets `number` (positive) be used once more.
    void add(std::int64_t number) {
        if (number > m_limit) {
            return;
        }
        const auto words = static_cast<std::size_t>(number) / kBits;
        const auto bits = static_cast<std::size_t>(number) % kBits;
        for (std::size_t i = m_words.size(); i-- > words;) {
            const std::uint64_t low = i > words && bits > 0 ? m_words[i - words - 1] >> (kBits - bits) : 0;
            m_words[i] |= m_words[i - words] << bits | low;
        }
    }

    /// Whether the total can be made; none beyond the limit can.
    [[nodiscard]] bool has(std::int64_t total) const {
        const auto at = static_cast<std::size_t>(total);
        return total >= 0 && total <= m_limit && (m_words[at / kBits] >> at % kBits & 1U) != 0;
    }

private:
    static constexpr std::size_t kBits = 64;
    std::int64_t m_limit;
    std::vector<std::uint64_t> m_words;
};

} // namespace rw::stock
