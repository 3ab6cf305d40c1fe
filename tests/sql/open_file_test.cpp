// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/engines.h"
#include "tests/sql/ledgers.h"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

namespace rw::sql::test {

namespace {

/// Whether another process would find the file's main lock free: a station that closes its last connection then takes
/// the log away from under those who still write to it. Source of the place: sqlite.org, os.h, SHARED_FIRST.
bool othersFindItUnlocked(const std::string& path) {
    constexpr off_t kSharedFirst = 0x40000002;
    constexpr off_t kSharedSize = 510;
    const pid_t other = fork();
    if (other == 0) {
        struct flock lock {};
        lock.l_type = F_WRLCK;
        lock.l_whence = SEEK_SET;
        lock.l_start = kSharedFirst;
        lock.l_len = kSharedSize;
        const int fd = open(path.c_str(), O_RDWR | O_CLOEXEC);
        _exit(fd >= 0 && fcntl(fd, F_GETLK, &lock) == 0 ? (lock.l_type == F_UNLCK ? 1 : 0) : 2);
    }
    int status = 0;
    EXPECT_EQ(waitpid(other, &status, 0), other);
    EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) != 2);
    return WEXITSTATUS(status) == 1;
}

} // namespace

TEST(OpenFileTest, LookingAtALedgerAgainLeavesItsLocksAlone) {
    const auto place = makePlace(Dialect::Sqlite);
    const auto ledger = mustOpen(place->address());
    ASSERT_FALSE(ledger->begin(desk::Access::Read)->shop().setting("words"));
    ASSERT_FALSE(othersFindItUnlocked(place->address()));
    {
        const auto again = mustOpen(place->address());
        EXPECT_FALSE(othersFindItUnlocked(place->address()));
    }
    EXPECT_FALSE(othersFindItUnlocked(place->address()));
}

TEST(OpenFileTest, AClosedLedgerIsLookedAtLikeAnyOther) {
    const auto place = makePlace(Dialect::Sqlite);
    { const auto ledger = mustOpen(place->address()); }
    ASSERT_EQ(truncate(place->address().c_str(), 50), 0);
    EXPECT_EQ(refusalOf(place->address()), Code::LedgerDamaged);
}

} // namespace rw::sql::test
