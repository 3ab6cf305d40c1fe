// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/house/source_text.h"

#include <cctype>

namespace rw::house {
namespace {

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\r");
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(" \t\r") - first + 1);
}

std::vector<std::string_view> linesOf(std::string_view text) {
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const auto end = text.find('\n');
        lines.push_back(text.substr(0, end));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
    return lines;
}

bool isWord(char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_'; }

// Walks the source once; each skip function starts on the first character of what it skips.
class Blanker {
public:
    explicit Blanker(std::string_view source)
        : m_source(source)
        , m_code(source) {}

    std::string run() {
        bool lineStart = true;
        while (m_at < m_source.size()) {
            const char c = m_source[m_at];
            if (lineStart && c == '#') {
                skipDirective();
            } else if (looksAt("//")) {
                blankUntil(m_source.find('\n', m_at));
            } else if (looksAt("/*")) {
                const auto end = m_source.find("*/", m_at + 2);
                blankUntil(end == std::string_view::npos ? end : end + 2);
            } else if (looksAt("R\"") && (m_at == 0 || !isWord(m_source[m_at - 1]) || prefixed())) {
                skipRaw();
            } else if (c == '"' || (c == '\'' && (m_at == 0 || !isWord(m_source[m_at - 1])))) {
                skipLiteral(c);
            } else {
                lineStart = c == '\n' || (lineStart && (c == ' ' || c == '\t'));
                ++m_at;
            }
        }
        return m_code;
    }

private:
    bool looksAt(std::string_view text) const { return m_source.substr(m_at, text.size()) == text; }

    // u8R"", uR"", UR"", LR""
    bool prefixed() const {
        const char before = m_source[m_at - 1];
        return before == 'u' || before == 'U' || before == 'L' || before == '8';
    }

    void blankUntil(std::size_t end) {
        for (; m_at < std::min(end, m_source.size()); ++m_at) {
            if (m_source[m_at] != '\n') {
                m_code[m_at] = ' ';
            }
        }
    }

    void skipDirective() {
        const auto end = m_source.find('\n', m_at);
        const auto line = m_source.substr(m_at, end - m_at);
        const auto word = trimmed(line.substr(1)).substr(0, 7);
        if (word == "include") {
            m_at += line.size();
        } else {
            ++m_at;
        }
    }

    void skipLiteral(char quote) {
        const auto start = ++m_at;
        auto end = start;
        while (end < m_source.size() && m_source[end] != quote && m_source[end] != '\n') {
            end += m_source[end] == '\\' ? 2 : 1;
        }
        blankUntil(end);
        m_at = std::min(end + 1, m_source.size());
    }

    void skipRaw() {
        const auto open = m_source.find('(', m_at);
        if (open == std::string_view::npos) {
            m_at += 2;
            return;
        }
        const std::string close = ")" + std::string(m_source.substr(m_at + 2, open - m_at - 2)) + "\"";
        m_at += 2;
        const auto end = m_source.find(close, open);
        blankUntil(end);
        m_at = std::min(m_at + close.size(), m_source.size());
    }

    std::string_view m_source;
    std::string m_code;
    std::size_t m_at = 0;
};

} // namespace

std::string codeOnly(std::string_view source) { return Blanker(source).run(); }

std::vector<Include> includesOf(std::string_view code) {
    std::vector<Include> includes;
    int number = 0;
    for (const auto line : linesOf(code)) {
        ++number;
        auto rest = trimmed(line);
        if (rest.empty() || rest.front() != '#') {
            continue;
        }
        rest = trimmed(rest.substr(1));
        if (rest.substr(0, 7) != "include") {
            continue;
        }
        rest = trimmed(rest.substr(7));
        if (rest.empty() || (rest.front() != '"' && rest.front() != '<')) {
            includes.push_back({std::string(rest), false, number});
            continue;
        }
        const bool quoted = rest.front() == '"';
        const auto end = rest.find(quoted ? '"' : '>', 1);
        includes.push_back({std::string(rest.substr(1, end - 1)), quoted, number});
    }
    return includes;
}

int codeLines(std::string_view code) {
    int count = 0;
    for (const auto line : linesOf(code)) {
        if (!trimmed(line).empty()) {
            ++count;
        }
    }
    return count;
}

} // namespace rw::house
