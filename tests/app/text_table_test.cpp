// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/text_table.h"

#include <gtest/gtest.h>

namespace rw::cli {
namespace {

std::vector<std::string> text(const TextTable& table, int indent = 0) {
    std::vector<std::string> lines;
    for (const QString& line : table.lines(indent)) {
        lines.push_back(line.toStdString());
    }
    return lines;
}

using Lines = std::vector<std::string>;
using Align = TextTable::Align;

TEST(TextTable, ColumnsStandUnderOneAnother) {
    TextTable table({Align::Left, Align::Right, Align::Left});
    table.add({QStringLiteral("K-2"), QStringLiteral("6.4 m"), QStringLiteral("measured")});
    table.add({QStringLiteral("K-10"), QStringLiteral("200 m")});
    EXPECT_EQ(text(table, 2), (Lines{"  K-2   6.4 m  measured", "  K-10  200 m"}));
}

TEST(TextTable, EmptyColumnsTakeNoRoom) {
    TextTable table({Align::Left, Align::Left, Align::Left});
    table.add({QStringLiteral("a"), QString(), QStringLiteral("c")});
    table.add({QStringLiteral("b"), QString(), QStringLiteral("d")});
    EXPECT_EQ(text(table), (Lines{"a  c", "b  d"}));
    EXPECT_TRUE(text(TextTable({Align::Left})).empty());
}

TEST(TextTable, CountsWhatIsSeen) {
    TextTable table({Align::Left, Align::Left});
    table.add({QString::fromUtf8("Zoe\u0308"), QStringLiteral("x")}); // the dots are a mark of their own
    table.add({QString::fromUtf8("Zo\u00eb"), QStringLiteral("x")});
    table.add({QString::fromUtf8("🎾ab"), QStringLiteral("x")});
    EXPECT_EQ(text(table), (Lines{"Zoe\u0308  x", "Zo\u00eb  x", "🎾ab  x"}));
}

TEST(Printable, NothingSteersTheTerminal) {
    EXPECT_EQ(printable(QString::fromUtf8("a\x1b[31m\nb\u202e\u2028c")).toStdString(), "a [31m b c");
}

} // namespace
} // namespace rw::cli
