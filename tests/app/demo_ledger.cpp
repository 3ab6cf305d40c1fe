// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/demo_ledger.h"

#include "tests/app/cli.h"

#include <gmock/gmock.h>

namespace rw::cli::test {

namespace {
sql::test::Pattern g_demo{[](const sql::test::Place& place) {
    const Outcome demo =
        cli({QStringLiteral("demo"), QStringLiteral("--ledger"), QString::fromStdString(place.address()),
             QStringLiteral("--now"), QStringLiteral("2026-03-12T10:05")});
    ASSERT_EQ(demo.code, 0) << demo.err;
    EXPECT_THAT(demo.out, testing::HasSubstr("Harbour Lane Strings"));
}};
} // namespace

sql::test::Pattern& demoLedger() { return g_demo; }

} // namespace rw::cli::test
