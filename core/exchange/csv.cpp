// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv.h"

#include <algorithm>
#include <array>
#include <cassert>

namespace rw::exchange {

namespace {
/// What begins a formula: ASCII and full-width forms (U+FF1D, U+FF0B, U+FF0D, U+FF20).
constexpr std::array<std::string_view, 8> kFormulaStarts = {
    "=", "+", "-", "@", "\xEF\xBC\x9D", "\xEF\xBC\x8B", "\xEF\xBC\x8D", "\xEF\xBC\xA0"};

bool startsFormula(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\r\n\v\f");
    if (first == std::string_view::npos) {
        return false;
    }
    text.remove_prefix(first);
    return std::ranges::any_of(kFormulaStarts, [text](std::string_view start) { return text.starts_with(start); });
}
} // namespace

CsvTable::CsvTable(const std::vector<std::string>& header)
    : m_columns(header.size()) {
    for (const std::string& name : header) {
        addText(name);
    }
    endRow();
}

void CsvTable::addText(std::string_view utf8) {
    append(startsFormula(utf8) ? '\'' + std::string(utf8) : std::string(utf8));
}

void CsvTable::addPlain(std::string_view text) { append(text); }

void CsvTable::endRow() {
    assert(m_fields == m_columns);
    m_text += "\r\n";
    m_fields = 0;
}

void CsvTable::append(std::string_view field) {
    if (m_fields++ > 0) {
        m_text += ',';
    }
    if (field.find_first_of(",\"\r\n") == std::string_view::npos) {
        m_text += field;
        return;
    }
    m_text += '"';
    for (const char c : field) {
        m_text.append(c == '"' ? 2 : 1, c);
    }
    m_text += '"';
}

} // namespace rw::exchange
