// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/world_error.h"
#include "core/sql/work.h"
#include "tests/sql/engines.h"
#include "tests/sql/ledgers.h"
#include "tests/sql/other_process.h"
#include "tests/sql/small_shop.h"

#include <QTemporaryDir>

#include <gmock/gmock.h>
#include <sqlite3.h>
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

/// A disk on which a database's log still fits and what the log has to go into does not: the place between the two is
/// a few kilobytes wide and moves with the schema, so no limit on a real disk finds it for sure. From here on, for this
/// process, writing a database's own file beyond its first pages is answered with `answer`.
class NoRoomForTheLog {
public:
    static void from(int answer) {
        s_answer = answer;
        s_system = sqlite3_vfs_find(nullptr);
        s_ours = *s_system;
        s_ours.zName = "no room for the log";
        s_ours.xOpen = open;
        sqlite3_vfs_register(&s_ours, 1);
    }

private:
    static int open(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* flagsFound) {
        const int code = s_system->xOpen(s_system, name, file, flags, flagsFound);
        if (code == SQLITE_OK && (flags & SQLITE_OPEN_MAIN_DB) != 0) {
            s_systemsMethods = file->pMethods;
            s_methods = *file->pMethods;
            s_methods.xWrite = write;
            file->pMethods = &s_methods;
        }
        return code;
    }
    static int write(sqlite3_file* file, const void* bytes, int amount, sqlite3_int64 at) {
        constexpr sqlite3_int64 kRoom = 40'000;
        return at < kRoom ? s_systemsMethods->xWrite(file, bytes, amount, at) : s_answer;
    }

    static inline int s_answer = SQLITE_OK;
    static inline sqlite3_vfs* s_system = nullptr;
    static inline sqlite3_vfs s_ours{};
    static inline const sqlite3_io_methods* s_systemsMethods = nullptr;
    static inline sqlite3_io_methods s_methods{};
};

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

// Its log was written whole, and the disk is full when the log goes into the file that gets the ledger's name.
TEST(FullDisk, ANewLedgerIsWholeInItsFileOrIsNone) {
    const QTemporaryDir folder;
    const auto path = folder.filePath(QStringLiteral("shop.ledger")).toStdString();
    const auto making = [&](int answer) {
        return inOtherProcess([&] {
            NoRoomForTheLog::from(answer);
            return whatIsThrown([&] { (void)mustOpen(path); });
        });
    };
    EXPECT_EQ(making(SQLITE_FULL), "full");
    EXPECT_TRUE(std::filesystem::is_empty(folder.path().toStdString()));
    EXPECT_THAT(making(SQLITE_BUSY), testing::HasSubstr("somebody reads the new ledger"));
    EXPECT_TRUE(std::filesystem::is_empty(folder.path().toStdString()));
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
