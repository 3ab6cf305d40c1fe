// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sql/statement.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace rw::sql {

/// What a LIKE with ESCAPE '!' takes for "holds `part`, wherever": a wildcard typed by somebody is a letter like any
/// other.
[[nodiscard]] std::string holding(std::string_view part);

/// The words somebody looks for, in any order, as a statement with :word1 to :word4 and :at_most takes them. The
/// four longest are left to the engine; who typed more than four has the rest compared by holdsRest(), and then the
/// statement gives every row that the four let through.
class SearchWords {
public:
    explicit SearchWords(std::string_view typed);

    void bindTo(Statement& statement, int atMost) const;
    [[nodiscard]] bool hasRest() const { return m_words.size() > kInStatement; }
    /// Whether a search key holds the words beyond the fourth.
    [[nodiscard]] bool holdsRest(std::string_view searchKey) const;

private:
    static constexpr std::size_t kInStatement = 4;
    std::vector<std::string> m_words; ///< longest first: they rule out most
};

} // namespace rw::sql
