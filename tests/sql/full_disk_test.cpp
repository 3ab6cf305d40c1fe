// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/world_error.h"
#include "core/sql/work.h"
#include "tests/sql/engines.h"
#include "tests/sql/ledgers.h"
#include "tests/sql/other_process.h"
#include "tests/sql/small_shop.h"

#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <sys/resource.h>

#include <csignal>
#include <filesystem>

namespace rw::sql::test {

namespace {

/// From here on no file of this process grows beyond `bytes`. The system's answer, EFBIG, comes where a full disk's
/// ENOSPC would.
void noFileBeyond(rlim_t bytes) {
    std::signal(SIGXFSZ, SIG_IGN);
    const rlimit limit{bytes, bytes};
    setrlimit(RLIMIT_FSIZE, &limit);
}

std::string whatIsThrown(const std::function<void()>& work) {
    try {
        work();
    } catch (const LedgerFull&) {
        return "full";
    } catch (const std::exception& error) {
        return error.what();
    }
    return "nothing";
}

void fillWithSettings(desk::Ledger& ledger) {
    for (int i = 0;; ++i) {
        const auto work = ledger.begin(desk::Access::Write);
        work->shop().set("words " + std::to_string(i), std::string(9000, 'x'));
        work->commit();
    }
}

} // namespace

TEST(FullDisk, ADatabaseWithoutAFreePageKeepsNothingOfTheTransaction) {
    const auto place = makePlace(Dialect::Sqlite);
    (void)mustOpen(place->address());
    const auto connection = place->connect();
    const auto pages = std::stoi(connection->scalar("PRAGMA page_count"));
    connection->execute("PRAGMA max_page_count = " + std::to_string(pages + 2));
    {
        const auto work = Work::writing(*connection);
        connection->execute("INSERT INTO setting (name, value) VALUES ('first', 'fits')");
        EXPECT_THROW(
            {
                for (int i = 0; i < 100; ++i) {
                    connection->execute("INSERT INTO setting (name, value) VALUES ('name " + std::to_string(i) +
                                        "', '" + std::string(9000, 'x') + "')");
                }
            },
            LedgerFull);
    }
    EXPECT_EQ(connection->scalar("SELECT count(*) FROM setting"), "0");
    EXPECT_EQ(connection->scalar("PRAGMA integrity_check"), "ok");
    connection->execute("PRAGMA max_page_count = " + std::to_string(pages + 1000));
    write(*connection, {"INSERT INTO setting (name, value) VALUES ('first', 'fits')"});
}

TEST(FullDisk, ALedgerThatCannotBeMadeLeavesNothing) {
    const QTemporaryDir folder;
    const auto path = folder.filePath(QStringLiteral("shop.ledger")).toStdString();
    for (const rlim_t room : {0UL, 20'000UL, 100'000UL, 200'000UL}) {
        EXPECT_EQ(inOtherProcess([&] {
                      noFileBeyond(room);
                      return whatIsThrown([&] { (void)mustOpen(path); });
                  }),
                  "full")
            << room;
        EXPECT_TRUE(std::filesystem::is_empty(folder.path().toStdString())) << room;
    }
}

TEST(FullDisk, ALedgerThatFillsUpStaysWhole) {
    const QTemporaryDir folder;
    const auto path = folder.filePath(QStringLiteral("shop.ledger")).toStdString();
    (void)mustOpen(path);
    const auto size = std::filesystem::file_size(path);
    EXPECT_EQ(inOtherProcess([&] {
                  noFileBeyond(size + 500'000);
                  const auto ledger = mustOpen(path);
                  const auto thrown = whatIsThrown([&] { fillWithSettings(*ledger); });
                  // What was there can still be read, and proved, while the disk is full.
                  return thrown + (ledger->check().empty() ? ", whole" : ", broken");
              }),
              "full, whole");
    const auto ledger = mustOpen(path);
    EXPECT_THAT(ledger->check(), testing::IsEmpty());
    const auto work = ledger->begin(desk::Access::Write);
    EXPECT_EQ(work->shop().setting("words 0"), std::string(9000, 'x'));
    work->shop().set("words 0", "room again");
    work->commit();
}

} // namespace rw::sql::test
