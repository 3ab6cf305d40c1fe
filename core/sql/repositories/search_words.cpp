// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/search_words.h"

#include "core/customers/search_key.h"

#include <algorithm>
#include <limits>
#include <optional>

namespace rw::sql {

namespace {
/// Longer than any stored search key: a name has at most 200 letters, and the one that is spelled out the longest
/// (U+FDFA) makes 18 of at most 3 bytes. SQLite refuses patterns from 50 000 bytes on.
constexpr std::size_t kLongestWord = 16'000;

std::optional<std::string> pattern(const std::string& word) {
    return word.size() > kLongestWord ? std::nullopt : std::optional(holding(word));
}
} // namespace

std::string holding(std::string_view part) {
    std::string pattern = "%";
    for (const char letter : part) {
        if (letter == '%' || letter == '_' || letter == '!') {
            pattern += '!';
        }
        pattern += letter;
    }
    return pattern + '%';
}

SearchWords::SearchWords(std::string_view typed) {
    std::string key = searchKey(typed); // white space is single in it
    std::erase(key, '\0');              // no stored text holds one
    for (std::size_t from = 0; from < key.size();) {
        const std::size_t to = std::min(key.find(' ', from), key.size());
        m_words.push_back(key.substr(from, to - from));
        from = to + 1;
    }
    std::ranges::stable_sort(m_words, std::ranges::greater(), &std::string::size);
}

void SearchWords::bindTo(Statement& statement, int atMost) const {
    for (std::size_t i = 0; i < kInStatement; ++i) {
        // Like NULL is nothing.
        statement.bind(":word" + std::to_string(i + 1), i < m_words.size() ? pattern(m_words[i]) : "%");
    }
    statement.bind(":at_most", hasRest() ? std::numeric_limits<std::int64_t>::max() : std::int64_t{atMost});
}

bool SearchWords::holdsRest(std::string_view searchKey) const {
    return !hasRest() || std::all_of(m_words.begin() + kInStatement, m_words.end(), [&](const std::string& word) {
        return searchKey.find(word) != std::string_view::npos;
    });
}

} // namespace rw::sql
