// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/statement_splitter.h"

#include "core/sql/sql_scanner.h"

#include <algorithm>
#include <cctype>
#include <stdexcept>

namespace rw::sql {

namespace {

std::string upper(std::string_view text) {
    std::string result(text);
    std::transform(result.begin(), result.end(), result.begin(),
                   [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
    return result;
}

class Splitter {
public:
    void take(const SqlToken& token) {
        if (token.kind == SqlToken::Kind::Comment) {
            m_text += ' '; // a comment parts two words as a space does
            return;
        }
        if (token.kind == SqlToken::Kind::Symbol && token.text == ";" && m_depth == 0) {
            finish();
            return;
        }
        if (token.kind == SqlToken::Kind::Word) {
            word(upper(token.text));
        }
        m_text += token.text;
    }

    std::vector<std::string> end() {
        if (m_depth != 0) {
            throw std::logic_error("SQL body that never ends: " + m_text.substr(0, 60));
        }
        finish();
        return std::move(m_statements);
    }

private:
    /// A body is only looked for in statements that can have one: elsewhere BEGIN and END open and end transactions.
    void word(const std::string& text) {
        if (m_words == 0) {
            m_create = text == "CREATE";
        }
        ++m_words;
        if (!m_create) {
            return;
        }
        m_hasBody = m_hasBody || text == "TRIGGER" || text == "FUNCTION" || text == "PROCEDURE";
        if (!m_hasBody) {
            return;
        }
        if (text == "BEGIN" || text == "CASE") {
            ++m_depth;
        } else if (text == "END" && m_depth > 0) {
            --m_depth;
        }
    }

    void finish() {
        const auto isBlank = [](unsigned char c) { return std::isspace(c) != 0; };
        const auto first = std::find_if_not(m_text.begin(), m_text.end(), isBlank);
        const auto last = std::find_if_not(m_text.rbegin(), m_text.rend(), isBlank).base();
        if (first < last) {
            m_statements.emplace_back(first, last);
        }
        m_text.clear();
        m_words = 0;
        m_create = false;
        m_hasBody = false;
    }

    std::vector<std::string> m_statements;
    std::string m_text;
    int m_words = 0;
    bool m_create = false;
    bool m_hasBody = false;
    int m_depth = 0;
};

} // namespace

std::vector<std::string> splitStatements(std::string_view sql, Dialect dialect) {
    Splitter splitter;
    for (const SqlToken& token : scanSql(sql, dialect)) {
        splitter.take(token);
    }
    return splitter.end();
}

} // namespace rw::sql
