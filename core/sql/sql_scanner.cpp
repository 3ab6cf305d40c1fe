// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/sql_scanner.h"

#include <cctype>
#include <stdexcept>
#include <string>

namespace rw::sql {

namespace {

bool isSpace(char c) { return std::isspace(static_cast<unsigned char>(c)) != 0; }
bool startsName(char c) {
    // Bytes of UTF-8 beyond ASCII are letters to both engines.
    return std::isalpha(static_cast<unsigned char>(c)) != 0 || c == '_' || static_cast<unsigned char>(c) >= 0x80;
}
bool isNamePart(char c) { return startsName(c) || std::isdigit(static_cast<unsigned char>(c)) != 0 || c == '$'; }

class Scanner {
public:
    Scanner(std::string_view sql, Dialect dialect)
        : m_sql(sql)
        , m_postgres(dialect == Dialect::Postgres) {}

    std::vector<SqlToken> run() {
        while (m_at < m_sql.size()) {
            const auto start = m_at;
            const auto kind = next();
            m_tokens.push_back({kind, m_sql.substr(start, m_at - start)});
        }
        return std::move(m_tokens);
    }

private:
    [[nodiscard]] char peek(std::size_t ahead = 0) const {
        return m_at + ahead < m_sql.size() ? m_sql[m_at + ahead] : '\0';
    }

    SqlToken::Kind next() {
        const char c = peek();
        if (isSpace(c)) {
            while (isSpace(peek())) {
                ++m_at;
            }
            return SqlToken::Kind::Space;
        }
        if (c == '-' && peek(1) == '-') {
            while (m_at < m_sql.size() && peek() != '\n') {
                ++m_at;
            }
            return SqlToken::Kind::Comment;
        }
        if (c == '/' && peek(1) == '*') {
            blockComment();
            return SqlToken::Kind::Comment;
        }
        if (c == '\'' || c == '"' || (!m_postgres && c == '`')) {
            quoted(c, c == '\'' && m_postgres && followsLoneE());
            return SqlToken::Kind::Quoted;
        }
        if (!m_postgres && c == '[') {
            upTo("]");
            return SqlToken::Kind::Quoted;
        }
        if (m_postgres && c == '$') {
            if (const auto tag = dollarTag(); !tag.empty()) {
                m_at += tag.size();
                upTo(tag);
                return SqlToken::Kind::Quoted;
            }
        }
        if (c == ':' && startsName(peek(1))) {
            ++m_at;
            name();
            return SqlToken::Kind::Placeholder;
        }
        if (startsName(c) || std::isdigit(static_cast<unsigned char>(c)) != 0) {
            name();
            return SqlToken::Kind::Word;
        }
        m_at += c == ':' && peek(1) == ':' ? 2 : 1;
        return SqlToken::Kind::Symbol;
    }

    void name() {
        while (m_at < m_sql.size() && isNamePart(peek())) {
            ++m_at;
        }
    }

    /// E'it\'s': only there does a backslash take the meaning off a quote.
    [[nodiscard]] bool followsLoneE() const {
        return !m_tokens.empty() && m_tokens.back().kind == SqlToken::Kind::Word &&
               (m_tokens.back().text == "E" || m_tokens.back().text == "e");
    }

    void quoted(char quote, bool backslash) {
        const auto start = m_at++;
        while (m_at < m_sql.size()) {
            const bool escaped = backslash && peek() == '\\';
            const bool doubled = peek() == quote && peek(1) == quote;
            const bool ends = peek() == quote && !doubled;
            m_at += escaped || doubled ? 2 : 1;
            if (ends) {
                return;
            }
        }
        neverEnds(start);
    }

    void blockComment() {
        const auto start = m_at;
        m_at += 2;
        for (int depth = 1; m_at < m_sql.size();) {
            if (peek() == '*' && peek(1) == '/') {
                m_at += 2;
                if (--depth == 0) {
                    return;
                }
            } else if (m_postgres && peek() == '/' && peek(1) == '*') {
                m_at += 2;
                ++depth;
            } else {
                ++m_at;
            }
        }
        neverEnds(start);
    }

    /// "$$" or "$tag$" at this place; "" for a lone dollar ($1).
    [[nodiscard]] std::string_view dollarTag() const {
        auto end = m_at + 1;
        if (end < m_sql.size() && startsName(m_sql[end])) {
            while (end < m_sql.size() && isNamePart(m_sql[end]) && m_sql[end] != '$') {
                ++end;
            }
        }
        return end < m_sql.size() && m_sql[end] == '$' ? m_sql.substr(m_at, end + 1 - m_at) : std::string_view{};
    }

    void upTo(std::string_view ending) {
        const auto found = m_sql.find(ending, m_at);
        if (found == std::string_view::npos) {
            neverEnds(m_at);
        }
        m_at = found + ending.size();
    }

    [[noreturn]] void neverEnds(std::size_t start) const {
        throw std::logic_error("SQL that never ends: " + std::string(m_sql.substr(start, 40)));
    }

    std::string_view m_sql;
    bool m_postgres;
    std::size_t m_at = 0;
    std::vector<SqlToken> m_tokens;
};

} // namespace

std::vector<SqlToken> scanSql(std::string_view sql, Dialect dialect) { return Scanner(sql, dialect).run(); }

} // namespace rw::sql
