// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/ledger_file.h"
#include "core/sql/migration.h"
#include "tests/sql/engines.h"
#include "tests/sql/ledgers.h"
#include "tests/sql/other_process.h"
#include "tests/sql/small_shop.h"

#include <QTemporaryDir>

#include <fcntl.h>
#include <gmock/gmock.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <sstream>

namespace rw::sql::test {

namespace fs = std::filesystem;

namespace {

std::string contentsOf(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream contents;
    contents << file.rdbuf();
    return contents.str();
}

void writeFile(const fs::path& path, std::string_view contents) { std::ofstream(path, std::ios::binary) << contents; }

std::string modeOf(const fs::path& path) {
    std::ostringstream text;
    text << std::oct << (static_cast<unsigned>(fs::status(path).permissions()) & 07777U);
    return text.str();
}

/// "refused 22: the file is read-only"
std::string refusedAs(const std::string& path) {
    const auto ledger = openLedger(*LedgerAddress::parse(path));
    return ledger ? "opened"
                  : "refused " + std::to_string(static_cast<int>(ledger.error().code())) + ": " +
                        ledger.error().text("reason");
}

std::string refused(Code code, const std::string& reason) {
    return "refused " + std::to_string(static_cast<int>(code)) + ": " + reason;
}

} // namespace

class SqliteLedgerTest : public testing::Test {
protected:
    [[nodiscard]] fs::path folder() const { return m_folder.path().toStdString(); }
    [[nodiscard]] std::string path(const std::string& name = "shop.ledger") const { return (folder() / name).string(); }

    /// Everything in the folder, by name.
    [[nodiscard]] std::map<std::string, std::string> everything() const {
        std::map<std::string, std::string> result;
        for (const auto& entry : fs::directory_iterator(folder())) {
            result[entry.path().filename()] = entry.is_regular_file() ? contentsOf(entry.path()) : "";
        }
        return result;
    }

    [[nodiscard]] std::set<std::string> names() const {
        std::set<std::string> result;
        for (const auto& entry : fs::directory_iterator(folder())) {
            result.insert(entry.path().filename());
        }
        return result;
    }

    void expectRefusedAndUntouched(Code code, const std::string& reason) const {
        const auto before = everything();
        EXPECT_EQ(refusedAs(path()), refused(code, reason));
        EXPECT_EQ(everything(), before) << "something was touched";
    }

    [[nodiscard]] std::string openedOrRefused() const { return refusedAs(path()); }

    /// Fifty long settings.
    static void stockSettings(Connection& connection) {
        for (int i = 0; i < 50; ++i) {
            const auto sql = "INSERT INTO setting (name, value) VALUES ('name " + std::to_string(i) + "', '" +
                             std::string(9000, 'x') + "')";
            write(connection, {sql});
        }
    }

    /// A ledger, closed.
    void makeLedger() const {
        (void)mustOpen(path());
        write(*Connection::openSqlite(path()), {"DELETE FROM setting"});
    }

private:
    QTemporaryDir m_folder;
};

// A process that is killed while it makes a ledger or a copy cannot clean up.
TEST_F(SqliteLedgerTest, WhatAKilledProcessLeftIsSweptAndNothingElse) {
    (void)mustOpen(path());
    const auto before = names();
    const auto leave = [this](const std::string& name, std::chrono::minutes age) {
        writeFile(path(name), "half a ledger");
        fs::last_write_time(path(name), fs::file_time_type::clock::now() - age);
    };
    constexpr auto kOld = std::chrono::minutes(61);
    constexpr auto kYoung = std::chrono::minutes(59);
    leave("shop.ledger.new-aB3xY9", kOld);
    leave("shop.ledger.new-aB3xY9-wal", kYoung);
    leave("shop.ledger.new-aB3xY9-shm", kYoung);
    leave("shop.ledger.version-12.new-aB3xY9", kOld);
    const std::set<std::string> stay{"shop.ledger.new-young1",     "shop.ledger.new-made12",
                                     "shop.ledger.new-notes",      "shop.ledger.version-1",
                                     "shop.ledger.new-aB3xY9.txt", "shop.ledger.version-x.new-aB3xY9",
                                     "other.ledger.new-aB3xY9"};
    for (const std::string& name : stay) {
        leave(name, name == "shop.ledger.new-young1" ? kYoung : kOld);
    }
    const int made = open(path("shop.ledger.new-made12").c_str(), O_RDONLY | O_CLOEXEC);
    ASSERT_EQ(flock(made, LOCK_EX), 0);
    (void)mustOpen(path());
    close(made);
    auto expected = before;
    expected.insert(stay.begin(), stay.end());
    EXPECT_EQ(names(), expected);
    (void)mustOpen(path());
    expected.erase("shop.ledger.new-made12");
    EXPECT_EQ(names(), expected) << "whoever was making it has gone";
}

TEST_F(SqliteLedgerTest, ANewFileIsItsOwnersAloneWhateverTheUmask) {
    for (const mode_t mask : {0U, 0022U, 0277U}) {
        const auto name = path("umask" + std::to_string(mask));
        const auto told = inOtherProcess([&]() -> std::string {
            umask(mask);
            const auto ledger = mustOpen(name);
            ledger->begin(desk::Access::Write)->commit();
            return modeOf(name) + " " + modeOf(name + "-wal") + " " + modeOf(name + "-shm");
        });
        EXPECT_EQ(told, "600 600 600") << mask;
    }
    EXPECT_EQ(everything().size(), 3U) << "a name that was only for the making is left";
}

TEST_F(SqliteLedgerTest, SaysInTheFileWhatItIs) {
    (void)mustOpen(path());
    const auto connection = Connection::openSqlite(path());
    EXPECT_EQ(connection->scalar("PRAGMA application_id"), std::to_string(kApplicationId));
    EXPECT_EQ(connection->scalar("PRAGMA user_version"), std::to_string(latestVersion()));
    EXPECT_EQ(connection->scalar("PRAGMA journal_mode"), "wal");
}

TEST_F(SqliteLedgerTest, ANameThatSqliteWouldTakeForSomethingElseIsAFile) {
    const auto before = fs::current_path();
    fs::current_path(folder());
    for (const std::string name : {":memory:", "file:x?mode=memory", "it's 100% \"Ünï\" 🎾", "-wal"}) {
        (void)mustOpen(name);
        EXPECT_TRUE(fs::is_regular_file(folder() / name)) << name;
    }
    fs::current_path(before);
}

TEST_F(SqliteLedgerTest, RefusesATextFile) {
    writeFile(path(), "Petra Lindobi, two Aldermoor 98s, 54/52\n");
    expectRefusedAndUntouched(Code::LedgerForeign, "the file is no SQLite database");
}

TEST_F(SqliteLedgerTest, RefusesAnEmptyFile) {
    writeFile(path(), "");
    expectRefusedAndUntouched(Code::LedgerForeign, "the file is empty");
}

TEST_F(SqliteLedgerTest, RefusesAnotherProgramsDatabase) {
    Connection::openSqlite(path())->execute("CREATE TABLE ledger (id INTEGER PRIMARY KEY)");
    expectRefusedAndUntouched(Code::LedgerForeign, "the file is a database of another program");
}

TEST_F(SqliteLedgerTest, RefusesWhatIsNoFile) {
    fs::create_directory(path());
    expectRefusedAndUntouched(Code::LedgerUnreachable, "it is a folder");
    EXPECT_EQ(refusedAs(path() + "/"), refused(Code::LedgerUnreachable, "it is a folder"));
    EXPECT_EQ(refusedAs("/dev/null"), refused(Code::LedgerForeign, "it is not a file"));
    ASSERT_EQ(mkfifo(path("pipe").c_str(), 0600), 0);
    EXPECT_EQ(refusedAs(path("pipe")), refused(Code::LedgerForeign, "it is not a file"));
    fs::create_symlink(path("nowhere"), path("link"));
    EXPECT_EQ(refusedAs(path("link")), refused(Code::LedgerUnreachable, "it is a link to nothing"));
}

TEST_F(SqliteLedgerTest, RefusesAFolderThatIsNotThere) {
    EXPECT_EQ(refusedAs(path("none/shop.ledger")), refused(Code::LedgerUnreachable, "there is no such folder"));
    writeFile(path("file"), "x");
    EXPECT_EQ(refusedAs(path("file/shop.ledger")), refused(Code::LedgerUnreachable, "there is no such folder"));
    EXPECT_EQ(refusedAs(path("new/")), refused(Code::LedgerUnreachable, "there is no such folder"));
}

TEST_F(SqliteLedgerTest, FollowsALinkToALedger) {
    makeLedger();
    fs::create_symlink(path(), path("link"));
    EXPECT_EQ(refusedAs(path("link")), "opened");
}

// Under each name SQLite would keep a log of its own: what is written under one is lost under the other.
TEST_F(SqliteLedgerTest, RefusesALedgerWithASecondName) {
    (void)mustOpen(path());
    fs::create_hard_link(path(), path("again"));
    const std::string reason = "the file has a second name (a hard link), and SQLite would keep a log for each; remove "
                               "one of the names, or copy the file instead";
    EXPECT_EQ(refusedAs(path()), refused(Code::LedgerUnreachable, reason));
    EXPECT_EQ(refusedAs(path("again")), refused(Code::LedgerUnreachable, reason));
    fs::remove(path("again"));
    EXPECT_EQ(refusedAs(path()), "opened");
}

TEST_F(SqliteLedgerTest, ANameThatAKilledProcessLeftIsNoSecondOne) {
    (void)mustOpen(path());
    fs::create_hard_link(path(), path() + ".new-a1B2c3"); // between link() and unlink()
    EXPECT_EQ(refusedAs(path()), "opened");
}

TEST_F(SqliteLedgerTest, RefusesALedgerWhoseEndIsMissing) {
    makeLedger();
    fs::resize_file(path(), fs::file_size(path()) / 2);
    expectRefusedAndUntouched(Code::LedgerDamaged, "the end of the file is missing");
    fs::resize_file(path(), 60);
    expectRefusedAndUntouched(Code::LedgerDamaged, "the file ends within its header");
}

// The process was killed while SQLite moved its log into the file: the first page is there and tells a length that the
// file has not reached yet. The log still holds everything.
TEST_F(SqliteLedgerTest, OpensALedgerThatWasLeftWhileItsLogWasTakenOver) {
    makeLedger();
    std::string before;
    std::string log;
    {
        const auto connection = Connection::openSqlite(path());
        connection->execute("PRAGMA wal_autocheckpoint = 0");
        stockSettings(*connection);
        before = contentsOf(path());
        log = contentsOf(path("shop.ledger-wal"));
    }
    const auto after = contentsOf(path());
    ASSERT_GT(after.size(), before.size());
    writeFile(path(), after.substr(0, 4096) + before.substr(4096));
    ASSERT_EQ(openedOrRefused(), refused(Code::LedgerDamaged, "the end of the file is missing")) << "without the log";
    writeFile(path("shop.ledger-wal"), log);
    EXPECT_EQ(openedOrRefused(), "opened");
    EXPECT_EQ(Connection::openSqlite(path())->scalar("SELECT count(*) FROM setting"), "50");
    EXPECT_THAT(mustOpen(path())->check(), testing::IsEmpty());
}

TEST_F(SqliteLedgerTest, RefusesALedgerWithADamagedPage) {
    makeLedger();
    const auto whole = contentsOf(path());
    constexpr std::size_t kPage = 4096;
    int damaged = 0;
    for (std::size_t page = 1; page * kPage < whole.size(); ++page) {
        auto broken = whole;
        broken.replace(page * kPage, 64, 64, '\x55');
        writeFile(path(), broken);
        const auto before = everything();
        const auto code = refusalOf(path());
        damaged += code == Code::LedgerDamaged ? 1 : 0;
        EXPECT_EQ(code, Code::LedgerDamaged) << "page " << page + 1;
        EXPECT_EQ(everything(), before) << "page " << page + 1;
    }
    EXPECT_GT(damaged, 10);
}

TEST_F(SqliteLedgerTest, RefusesALedgerWithoutItsTables) {
    makeLedger();
    Connection::openSqlite(path())->execute("DROP TABLE schema_version");
    expectRefusedAndUntouched(Code::LedgerDamaged, "its tables are missing");
}

TEST_F(SqliteLedgerTest, RefusesANewerOneWithoutAskingSqlite) {
    makeLedger();
    Connection::openSqlite(path())->execute("PRAGMA user_version = 4711");
    const auto before = everything();
    EXPECT_EQ(refusalOf(path()), Code::LedgerNewer);
    EXPECT_EQ(everything(), before);
}

TEST_F(SqliteLedgerTest, RefusesAFileThatThisUserMayOnlyRead) {
    makeLedger();
    fs::permissions(path(), fs::perms::owner_read);
    EXPECT_EQ(asPlainUser(folder(), [&] { return refusedAs(path()); }),
              refused(Code::LedgerNotWritable, "the file is read-only"));
    fs::permissions(path(), fs::perms::none);
    EXPECT_EQ(asPlainUser(folder(), [&] { return refusedAs(path()); }),
              refused(Code::LedgerNotWritable, "it may not even be read"));
    EXPECT_EQ(everything().size(), 1U);
}

TEST_F(SqliteLedgerTest, RefusesAFolderThatThisUserMayOnlyRead) {
    makeLedger();
    fs::permissions(folder(), fs::perms::owner_read | fs::perms::owner_exec);
    EXPECT_EQ(asPlainUser(folder(), [&] { return refusedAs(path()); }),
              refused(Code::LedgerNotWritable, "its folder is read-only"));
    EXPECT_EQ(asPlainUser(folder(), [&] { return refusedAs(path("new.ledger")); }),
              refused(Code::LedgerNotWritable, "its folder is read-only"));
    fs::permissions(folder(), fs::perms::none);
    EXPECT_EQ(asPlainUser(folder(), [&] { return refusedAs(path()); }),
              refused(Code::LedgerUnreachable, "Permission denied"));
    fs::permissions(folder(), fs::perms::owner_all);
    EXPECT_EQ(everything().size(), 1U);
}

TEST_F(SqliteLedgerTest, APlainUserMayUseAFolderOfTheirOwn) {
    EXPECT_EQ(asPlainUser(folder(), [&] { return refusedAs(path()); }), "opened");
}

TEST_F(SqliteLedgerTest, KnowsDisksInOtherMachines) {
    // Source: linux/magic.h, statfs(2).
    EXPECT_EQ(networkFileSystem(0x6969), "NFS");
    EXPECT_EQ(networkFileSystem(0xff534d42), "CIFS");
    EXPECT_EQ(networkFileSystem(0xfe534d42), "SMB");
    EXPECT_EQ(networkFileSystem(0xef53), std::nullopt) << "ext4";
    EXPECT_EQ(networkFileSystem(0x01021994), std::nullopt) << "tmpfs";
    EXPECT_EQ(networkFileSystem(0x9123683e), std::nullopt) << "btrfs";
}

TEST_F(SqliteLedgerTest, CopiesAnOlderLedgerBeforeItIsChanged) {
    {
        const auto connection = Connection::openSqlite(path());
        connection->execute("PRAGMA application_id = " + std::to_string(kApplicationId));
        connection->execute("PRAGMA journal_mode = WAL");
        auto steps = migrations(Dialect::Sqlite);
        steps.resize(1);
        migrate(*connection, steps, SystemClock().now());
        stockSmallShop(*connection);
        // What is still in the log belongs to the copy: this connection stays open.
        write(*connection, {"INSERT INTO setting (name, value) VALUES ('words', 'in the log')"});
        (void)mustOpen(path());
    }
    const auto copy = Connection::openSqlite(path("shop.ledger.version-1"));
    EXPECT_EQ(schemaVersion(*copy), 1);
    EXPECT_EQ(copy->scalar("SELECT value FROM setting"), "in the log");
    EXPECT_EQ(copy->scalar("SELECT length_mm FROM lot WHERE id = 1"), "42600");
    EXPECT_EQ(copy->scalar("PRAGMA integrity_check"), "ok");
    EXPECT_EQ(modeOf(path("shop.ledger.version-1")), "600");
    EXPECT_EQ(schemaVersion(*Connection::openSqlite(path())), latestVersion());
    EXPECT_THAT(mustOpen(path())->check(), testing::IsEmpty());
}

TEST_F(SqliteLedgerTest, ANewLedgerAndOneOfTodayAreNotCopied) {
    makeLedger();
    (void)mustOpen(path());
    EXPECT_EQ(everything().size(), 1U);
}

} // namespace rw::sql::test
