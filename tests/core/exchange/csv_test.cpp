// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv.h"
#include "core/exchange/table_csv.h"

#include <gtest/gtest.h>

using rw::exchange::CsvTable;

namespace {

std::string rowOf(std::string_view text) {
    CsvTable table({"x"});
    table.addText(text);
    table.endRow();
    return table.text().substr(3);
}

// RFC 4180, section 2: CRLF between records (1), quotes around fields with commas, quotes, line breaks (6), quotes
// doubled (7).
TEST(Csv, IsWrittenAsTheStandardSays) {
    CsvTable table({"name", "amount"});
    table.addText("Aldermoor, 98");
    table.addPlain("-2.50");
    table.endRow();
    EXPECT_EQ(table.text(), "name,amount\r\n\"Aldermoor, 98\",-2.50\r\n");
    EXPECT_EQ(rowOf("he said \"soft\""), "\"he said \"\"soft\"\"\"\r\n");
    EXPECT_EQ(rowOf("two\nlines"), "\"two\nlines\"\r\n");
    EXPECT_EQ(rowOf("a\rb"), "\"a\rb\"\r\n");
    EXPECT_EQ(rowOf(""), "\r\n");
    EXPECT_EQ(rowOf("Zoë 🎾"), "Zoë 🎾\r\n");
}

TEST(Csv, NoWordsStartAFormula) {
    for (const std::string text : {"=1+1", "+44 20", "-2 lb", "@SUM(A1)", "＝1", "＋1", "－1", "＠x"}) {
        EXPECT_EQ(rowOf(text), "'" + text + "\r\n");
    }
    EXPECT_EQ(rowOf(" \t=1"), "' \t=1\r\n");
    EXPECT_EQ(rowOf("\r\n=1"), "\"'\r\n=1\"\r\n");
    EXPECT_EQ(rowOf("52-50"), "52-50\r\n");
    EXPECT_EQ(rowOf("   "), "   \r\n");
}

TEST(Csv, ATableIsWrittenByWhatItsColumnsHold) {
    using rw::desk::ColumnKind;
    const rw::desk::LedgerTable table{
        "payments",
        {{"job", ColumnKind::Number},
         {"amount", ColumnKind::Money},
         {"at", ColumnKind::Moment},
         {"way", ColumnKind::Words},
         {"state", ColumnKind::Fact}},
        {{std::int64_t{2120}, std::int64_t{-250}, std::int64_t{1'772'445'600'007}, std::string("-cash"),
          std::string("strung")},
         {std::monostate(), std::monostate(), std::monostate(), std::monostate(), std::monostate()}}};
    // 1772445600 is 2026-03-02 10:00:00 UTC (date -u -d @1772445600).
    EXPECT_EQ(rw::exchange::tableCsv(table, rw::Currency::pounds()),
              "job,amount,at,way,state\r\n2120,-2.50,2026-03-02T10:00:00.007Z,'-cash,strung\r\n,,,,\r\n");
}

} // namespace
