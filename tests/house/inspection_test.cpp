// SPDX-License-Identifier: GPL-3.0-or-later
// The house test's own test: bad samples go red, good ones do not.
#include "tests/house/inspection.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/house/rows.h"
#include "tests/house/source_text.h"

namespace rw::house {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

const QtHeaders kQt = {{"QString", {"Core"}},
                       {"QSqlQuery", {"Sql"}},
                       {"QPainter", {"Gui"}},
                       {"QWidget", {"Widgets"}},
                       {"qstring.h", {"Core"}}};

std::vector<std::string> objections(const std::string& path, const std::string& body) {
    std::vector<std::string> texts;
    for (const auto& finding : inspectSource(path, "// SPDX-License-Identifier: GPL-3.0-or-later\n" + body, kQt)) {
        texts.push_back(describe(finding));
    }
    return texts;
}

struct Sample {
    std::string path;
    std::string body;
    std::string objection; ///< empty: allowed
};

void PrintTo(const Sample& sample, std::ostream* out) { *out << sample.path << " with " << sample.body; }

class InspectSource : public testing::TestWithParam<Sample> {};

TEST_P(InspectSource, FindsWhatTheRowForbids) {
    const auto& [path, body, objection] = GetParam();
    if (objection.empty()) {
        EXPECT_THAT(objections(path, body), IsEmpty());
    } else {
        EXPECT_THAT(objections(path, body), ElementsAre(HasSubstr(objection)));
    }
}

INSTANTIATE_TEST_SUITE_P(
    Arrows, InspectSource,
    testing::Values(Sample{"core/stock/lot.h", "#include \"core/units/length.h\"", ""},
                    Sample{"core/stock/lot.h", "#include \"core/stock/reel.h\"", ""},
                    Sample{"core/stock/lot.h", "#include \"core/jobs/job.h\"",
                           "core/stock does not stand on core/jobs"},
                    Sample{"core/units/length.h", "#include \"core/money/money.h\"", "does not stand on core/money"},
                    Sample{"core/base/id.h", "#include \"core/units/length.h\"", "does not stand on core/units"},
                    Sample{"core/exchange/csv.cpp", "#include \"core/sql/ledger.h\"", "does not stand on core/sql"},
                    Sample{"core/desk/intake.cpp", "#include \"ui/text/words.h\"", "does not stand on ui/text"},
                    Sample{"ui/text/words.cpp", "#include \"core/desk/intake.h\"", ""},
                    Sample{"ui/text/words.cpp", "#include \"core/sql/ledger.h\"", "does not stand on core/sql"},
                    Sample{"ui/presenter/bench.h", "#include \"ui/widgets/edit.h\"", "does not stand on ui/widgets"},
                    Sample{"ui/counter/page.h", "#include \"ui/bench/page.h\"", "does not stand on ui/bench"},
                    Sample{"ui/counter/page.h", "#include \"ui/shell/window.h\"", "does not stand on ui/shell"},
                    Sample{"ui/counter/page.h", "#include \"ui/qtport/printer.h\"", "does not stand on ui/qtport"},
                    Sample{"ui/shell/window.h", "#include \"ui/bench/page.h\"", ""},
                    Sample{"app/main.cpp", "#include \"core/sql/ledger.h\"", ""},
                    Sample{"core/stock/x.h", "#include \"tests/core/shop.h\"", "does not stand on tests/core"}));

INSTANTIATE_TEST_SUITE_P(
    Libraries, InspectSource,
    testing::Values(Sample{"core/length/plan.cpp", "#include <boost/math/tools/roots.hpp>", ""},
                    Sample{"core/length/plan.cpp", "#include <boost/asio.hpp>", "does not use this library"},
                    Sample{"core/length/plan.cpp", "#include <QString>", "does not use QtCore"},
                    Sample{"core/length/plan.cpp", "#include <qstring.h>", "does not use QtCore"},
                    Sample{"core/length/plan.cpp", "#include <unistd.h>", "does not use this library"},
                    Sample{"core/customers/search_key.cpp", "#include <QString>", ""},
                    Sample{"core/customers/search_key.cpp", "#include <QPainter>", "does not use QtGui"},
                    Sample{"core/sql/ledger.cpp", "#include <QSqlQuery>", ""},
                    Sample{"core/sql/ledger.cpp", "#include <sqlite3.h>\n#include <sys/stat.h>", ""},
                    Sample{"core/desk/intake.cpp", "#include <QSqlQuery>", "does not use QtSql"},
                    Sample{"ui/documents/card.cpp", "#include <QPainter>", ""},
                    Sample{"ui/documents/card.cpp", "#include <QWidget>", "does not use QtWidgets"},
                    Sample{"ui/presenter/bench.cpp", "#include <QWidget>", "does not use QtWidgets"},
                    Sample{"ui/bench/page.cpp", "#include <QWidget>", ""},
                    Sample{"ui/bench/page.cpp", "#include <gtest/gtest.h>", "does not use this library"},
                    Sample{"tests/core/units/length_test.cpp", "#include <gtest/gtest.h>", ""},
                    Sample{"tests/core/units/length_test.cpp", "#include <QWidget>", "does not use QtWidgets"}));

INSTANTIATE_TEST_SUITE_P(
    Forms, InspectSource,
    testing::Values(Sample{"ui/text/words.cpp", "#include <QtCore/QString>", "short form"},
                    Sample{"core/stock/lot.cpp", "#include \"lot.h\"", "named from the top"},
                    Sample{"core/stock/lot.cpp", "#include \"../units/length.h\"", "named from the top"},
                    Sample{"core/stock/lot.cpp", "#include \"core/stock/../jobs/job.h\"", "named from the top"},
                    Sample{"tests/ui/window_test.cpp", "#include \"window_test.moc\"", ""},
                    Sample{"ui/bench/page.cpp", "#include \"other.moc\"", "named from the top"},
                    Sample{"core/stock/lot.cpp", "  #  include   \"lot.h\"", "named from the top"},
                    Sample{"core/stock/lot.cpp", "// #include \"lot.h\"\n/* \n#include <QWidget>\n*/", ""},
                    Sample{"core/stock/lot.cpp", "const char* s = R\"(\n#include <QWidget>\n)\";", ""},
                    Sample{"core/till/drawer.h", "", "no folder of the house"},
                    Sample{"tests/core/units/length_test.cpp", "TEST(A, B) { QVERIFY(true); }", "QVERIFY"},
                    Sample{"tests/core/units/length_test.cpp", "TEST(A, B) { GTEST_SKIP(); }", "GTEST_SKIP"},
                    Sample{"tests/core/units/length_test.cpp", "const char* s = \"GTEST_SKIP\";", ""}));

TEST(InspectSourceFile, CountsCodeLinesOnly) {
    std::string body;
    for (int i = 0; i < 500; ++i) {
        body += "int a" + std::to_string(i) + ";\n// remark\n\n";
    }
    EXPECT_THAT(objections("core/stock/lot.cpp", body), IsEmpty());
    EXPECT_THAT(objections("core/stock/lot.cpp", body + "int more;"), ElementsAre(HasSubstr("501 code lines")));
}

TEST(InspectSourceFile, SaysWhere) {
    EXPECT_THAT(objections("core/stock/lot.cpp", "\n#include <QWidget>\n"),
                ElementsAre(HasSubstr("core/stock/lot.cpp:3: ")));
}

TEST(InspectLicence, WantsTheLineOnTop) {
    EXPECT_THAT(inspectLicence("a.h", "#pragma once\n"), testing::SizeIs(1));
    EXPECT_THAT(inspectLicence("a.h", ""), testing::SizeIs(1));
    EXPECT_THAT(inspectLicence("a.h", "// SPDX-License-Identifier: GPL-3.0-only\n"), testing::SizeIs(1));
    EXPECT_THAT(inspectLicence("a", "#!/bin/sh\n# SPDX-License-Identifier: GPL-3.0-or-later\n"), IsEmpty());
}

TEST(CodeOnly, LeavesLinesAndNamesInPlace) {
    EXPECT_EQ(codeOnly("a; // b\nc;"), "a;     \nc;");
    EXPECT_EQ(codeOnly("f(\"x//y\", '\"', 1'000);"), "f(\"    \", ' ', 1'000);");
    EXPECT_EQ(codeOnly("#include \"core/a.h\" "), "#include \"core/a.h\" ");
    EXPECT_EQ(codeOnly("a = \"\\\"b\"; d"), "a = \"   \"; d");
}

TEST(Rows, NoNeighbourAndNothingAbove) {
    const Row* length = rowOf("core/length/plan.h");
    ASSERT_NE(length, nullptr);
    EXPECT_EQ(length->own, (std::set<std::string>{"core/base", "core/units", "core/money", "core/calendar", "core/owner",
                                                  "core/frames", "core/strings", "core/customers", "core/length"}));
    EXPECT_EQ(rowOf("tests/core/sql/ledger_test.cpp")->folder, "tests/core/sql");
    EXPECT_EQ(rowOf("core/lengthy/plan.h"), nullptr);
}

} // namespace
} // namespace rw::house
