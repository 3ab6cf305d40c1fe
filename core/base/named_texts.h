// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <array>
#include <cassert>
#include <cstddef>
#include <optional>
#include <string_view>
#include <utility>

namespace rw {

/// The texts by which the values of an enumeration are stored and exchanged, both ways from one table.
template<class Enum, std::size_t N>
class NamedTexts {
public:
    explicit constexpr NamedTexts(std::array<std::pair<Enum, std::string_view>, N> rows)
        : m_rows(rows) {}

    /// Precondition: the table names every value.
    [[nodiscard]] constexpr std::string_view text(Enum value) const {
        const auto row = std::ranges::find(m_rows, value, &std::pair<Enum, std::string_view>::first);
        assert(row != m_rows.end());
        return row->second;
    }

    [[nodiscard]] constexpr std::optional<Enum> value(std::string_view text) const {
        const auto row = std::ranges::find(m_rows, text, &std::pair<Enum, std::string_view>::second);
        return row == m_rows.end() ? std::nullopt : std::optional(row->first);
    }

private:
    std::array<std::pair<Enum, std::string_view>, N> m_rows;
};

} // namespace rw
