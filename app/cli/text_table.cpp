// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/text_table.h"

#include <algorithm>
#include <cassert>

namespace rw::cli {

namespace {
/// Characters that a reader sees as one place each: pairs of surrogates are one, combining marks none.
qsizetype places(const QString& text) {
    return std::ranges::count_if(text, [](QChar c) { return !c.isLowSurrogate() && !c.isMark(); });
}
} // namespace

QString printable(const QString& text) {
    QString out = text;
    for (QChar& c : out) {
        if (c.category() == QChar::Other_Control || c.category() == QChar::Other_Format ||
            c.category() == QChar::Separator_Line || c.category() == QChar::Separator_Paragraph) {
            c = QLatin1Char(' ');
        }
    }
    return out.simplified();
}

QStringList TextTable::lines(int indent) const {
    std::vector<qsizetype> widths(m_columns.size(), 0);
    for (const QStringList& row : m_rows) {
        assert(static_cast<std::size_t>(row.size()) <= m_columns.size());
        for (qsizetype i = 0; i < row.size(); ++i) {
            auto& width = widths[static_cast<std::size_t>(i)];
            width = std::max(width, places(row[i]));
        }
    }
    QStringList lines;
    for (const QStringList& row : m_rows) {
        QString line(indent, QLatin1Char(' '));
        bool first = true;
        for (std::size_t i = 0; i < m_columns.size(); ++i) {
            if (widths[i] == 0) {
                continue;
            }
            const QString cell = i < static_cast<std::size_t>(row.size()) ? row[static_cast<qsizetype>(i)] : QString();
            const QString room(widths[i] - places(cell), QLatin1Char(' '));
            line +=
                (first ? QString() : QStringLiteral("  ")) + (m_columns[i] == Align::Left ? cell + room : room + cell);
            first = false;
        }
        while (line.endsWith(QLatin1Char(' '))) {
            line.chop(1);
        }
        lines << line;
    }
    return lines;
}

} // namespace rw::cli
