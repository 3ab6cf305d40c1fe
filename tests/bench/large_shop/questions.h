// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sql/connection.h"

#include <cstddef>
#include <string>
#include <vector>

namespace rw::large {

/// What somebody types at the counter's search.
struct Question {
    enum class Kind {
        LastDigits, ///< the last four of somebody's phone number
        Fragment,   ///< 1 to 8 letters out of somebody's name
        Misspelt,   ///< a name of somebody's with one letter wrong
        Nobody,     ///< letters that are in no name
    };
    Kind kind;
    std::string text;
    std::string meant; ///< the search key of whom it was made from, "" for nobody
};

/// `count` questions about the people in the ledger, the same for the same ledger: 30 % last digits, 50 % fragments,
/// 10 % misspelt, 10 % nobody.
[[nodiscard]] std::vector<Question> questionsAbout(sql::Connection& connection, std::size_t count);

/// The search keys of the first 20 whom plain SQL finds for the same text, by name: LIKE over names and numbers, and no
/// misspelling forgiven. On SQLite, by its own interface and prepared once.
class PlainSearch {
public:
    explicit PlainSearch(sql::Connection& connection); ///< precondition: SQLite; it must outlive this
    ~PlainSearch();
    PlainSearch(const PlainSearch&) = delete;
    PlainSearch& operator=(const PlainSearch&) = delete;

    [[nodiscard]] std::vector<std::string> find(const std::string& text);

private:
    void* m_statement; ///< sqlite3_stmt
};

} // namespace rw::large
