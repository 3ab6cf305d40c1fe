// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include <vector>

namespace rw::cli {

/// Rows of words with their columns one under the other, for a terminal.
class TextTable {
public:
    enum class Align { Left, Right };

    /// How each column stands; rows may be shorter, not longer.
    explicit TextTable(std::vector<Align> columns)
        : m_columns(std::move(columns)) {}
    void add(QStringList row) { m_rows.push_back(std::move(row)); }
    /// A line a row, `indent` in, two blanks between columns, none at the end. Columns that are empty in every row are
    /// left out.
    [[nodiscard]] QStringList lines(int indent = 0) const;

private:
    std::vector<Align> m_columns;
    std::vector<QStringList> m_rows;
};

/// Words from a ledger as they may be printed: without line breaks and without what steers a terminal.
[[nodiscard]] QString printable(const QString& text);

} // namespace rw::cli
