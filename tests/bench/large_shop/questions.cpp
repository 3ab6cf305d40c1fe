// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/large_shop/questions.h"

#include "core/customers/search_key.h"
#include "tests/bench/stock_world/dice.h"

#include <sqlite3.h>

#include <algorithm>
#include <stdexcept>

namespace rw::large {

namespace {
constexpr unsigned kSeed = 20;

struct Known {
    std::string key;
    std::string digits;
};

std::vector<Known> somePeople(sql::Connection& connection) {
    std::vector<Known> people;
    for (auto& row : connection.rows("SELECT customer.search_key, contact.digits FROM customer "
                                     "JOIN contact ON contact.customer_id = customer.id "
                                     "WHERE contact.kind = 'phone' AND length(contact.digits) >= 4 "
                                     "AND customer.id % 37 = 0 ORDER BY customer.id")) {
        people.push_back({std::move(row[0]), std::move(row[1])});
    }
    return people;
}

class Asker {
public:
    explicit Asker(std::vector<Known> people)
        : m_people(std::move(people))
        , m_dice(kSeed) {}

    Question ask() {
        const Known& who = m_people.at(static_cast<std::size_t>(upTo(static_cast<int>(m_people.size()) - 1)));
        const double share = m_dice.uniform();
        if (share < 0.3) {
            return {Question::Kind::LastDigits, who.digits.substr(who.digits.size() - 4), who.key};
        }
        if (share < 0.8) {
            const std::string word = wordOf(who.key);
            const int length = std::min(m_dice.wholeWithin(1, 8), static_cast<int>(word.size()));
            return {Question::Kind::Fragment,
                    word.substr(static_cast<std::size_t>(upTo(static_cast<int>(word.size()) - length)),
                                static_cast<std::size_t>(length)),
                    who.key};
        }
        if (share < 0.9) {
            return {Question::Kind::Misspelt, misspelt(wordOf(who.key)), who.key};
        }
        return {Question::Kind::Nobody, "qx" + std::to_string(m_dice.wholeWithin(10, 99)) + "zqv", {}};
    }

private:
    int upTo(int most) { return m_dice.wholeWithin(0, std::max(most, 0)); }

    std::string wordOf(const std::string& key) {
        const auto space = key.find(' ');
        return space == std::string::npos || m_dice.chance(0.5) ? key.substr(0, space) : key.substr(space + 1);
    }

    std::string misspelt(std::string word) {
        const auto at = static_cast<std::size_t>(upTo(static_cast<int>(word.size()) - 1));
        switch (upTo(3)) {
        case 0:
            word[at] = word[at] == 'x' ? 'y' : 'x';
            break;
        case 1:
            word.erase(at, 1);
            break;
        case 2:
            word.insert(at, 1, 'x');
            break;
        default:
            std::swap(word[at], word[at + 1 < word.size() ? at + 1 : at]);
        }
        return word;
    }

    std::vector<Known> m_people;
    world::Dice m_dice;
};

sqlite3_stmt* stmt(void* statement) { return static_cast<sqlite3_stmt*>(statement); }
} // namespace

std::vector<Question> questionsAbout(sql::Connection& connection, std::size_t count) {
    Asker asker(somePeople(connection));
    std::vector<Question> questions;
    while (questions.size() < count) {
        questions.push_back(asker.ask());
    }
    return questions;
}

PlainSearch::PlainSearch(sql::Connection& connection)
    : m_statement(nullptr) {
    sqlite3_stmt* made = nullptr;
    const char* const sql = "SELECT search_key FROM customer WHERE removed_at IS NULL AND (search_key LIKE ?1 "
                            "OR id IN (SELECT customer_id FROM contact WHERE kind = 'phone' AND digits LIKE ?2)) "
                            "ORDER BY search_key, id LIMIT 20";
    if (sqlite3_prepare_v2(connection.sqliteHandle(), sql, -1, &made, nullptr) != SQLITE_OK) {
        throw std::runtime_error(sqlite3_errmsg(connection.sqliteHandle()));
    }
    m_statement = made;
}

PlainSearch::~PlainSearch() { sqlite3_finalize(stmt(m_statement)); }

std::vector<std::string> PlainSearch::find(const std::string& text) {
    const std::string word = "%" + searchKey(text) + "%";
    const std::string digits = phoneDigitsOf(text).size() < 2 ? std::string() : "%" + phoneDigitsOf(text) + "%";
    sqlite3_bind_text(stmt(m_statement), 1, word.c_str(), -1, SQLITE_TRANSIENT);
    if (digits.empty()) {
        sqlite3_bind_null(stmt(m_statement), 2);
    } else {
        sqlite3_bind_text(stmt(m_statement), 2, digits.c_str(), -1, SQLITE_TRANSIENT);
    }
    std::vector<std::string> keys;
    while (sqlite3_step(stmt(m_statement)) == SQLITE_ROW) {
        keys.emplace_back(reinterpret_cast<const char*>(sqlite3_column_text(stmt(m_statement), 0)));
    }
    sqlite3_reset(stmt(m_statement));
    return keys;
}

} // namespace rw::large
