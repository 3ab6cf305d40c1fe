// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace rw::exchange {

/// A table as comma-separated text by RFC 4180: lines end in CR LF, a field that holds a comma, a quote or a line break
/// is quoted. A text that a spreadsheet would take for a formula gets an apostrophe in front: it begins, behind white
/// space, with = + - @ or their full-width forms.
class CsvTable {
public:
    explicit CsvTable(const std::vector<std::string>& header);

    /// A field with words that people typed. `utf8` must be valid UTF-8.
    void addText(std::string_view utf8);
    /// A field that the program itself wrote and that is no words: a number, a date.
    void addPlain(std::string_view text);
    /// Ends the row, which must have as many fields as the header.
    void endRow();

    [[nodiscard]] const std::string& text() const { return m_text; } ///< after endRow()

private:
    void append(std::string_view field);

    std::string m_text;
    std::size_t m_columns;
    std::size_t m_fields = 0;
};

} // namespace rw::exchange
