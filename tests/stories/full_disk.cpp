// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/full_disk.h"

#include <sqlite3.h>

#include <atomic>
#include <utility>

namespace rw::stories {

namespace {
constexpr int kRoom = -1;
std::atomic<int> writesLeft = kRoom;
std::atomic<bool> wasMet = false;

/// A file of SQLite with the real one behind it: whatever is asked goes there, but for writes while the disk is full.
struct File {
    sqlite3_file base;
    sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};
sqlite3_file* realOf(sqlite3_file* file) { return reinterpret_cast<File*>(file)->real(); }
const sqlite3_io_methods* methodsOf(sqlite3_file* file) { return realOf(file)->pMethods; }

int writeWhileThereIsRoom(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 at) {
    if (writesLeft == 0) {
        wasMet = true;
        return SQLITE_FULL;
    }
    if (writesLeft > 0) {
        --writesLeft;
    }
    return methodsOf(file)->xWrite(realOf(file), bytes, count, at);
}

const sqlite3_io_methods kMethods = {
    3,
    [](sqlite3_file* f) { return methodsOf(f)->xClose(realOf(f)); },
    [](sqlite3_file* f, void* to, int n, sqlite3_int64 at) { return methodsOf(f)->xRead(realOf(f), to, n, at); },
    writeWhileThereIsRoom,
    [](sqlite3_file* f, sqlite3_int64 size) { return methodsOf(f)->xTruncate(realOf(f), size); },
    [](sqlite3_file* f, int flags) { return methodsOf(f)->xSync(realOf(f), flags); },
    [](sqlite3_file* f, sqlite3_int64* size) { return methodsOf(f)->xFileSize(realOf(f), size); },
    [](sqlite3_file* f, int lock) { return methodsOf(f)->xLock(realOf(f), lock); },
    [](sqlite3_file* f, int lock) { return methodsOf(f)->xUnlock(realOf(f), lock); },
    [](sqlite3_file* f, int* held) { return methodsOf(f)->xCheckReservedLock(realOf(f), held); },
    [](sqlite3_file* f, int what, void* with) { return methodsOf(f)->xFileControl(realOf(f), what, with); },
    [](sqlite3_file* f) { return methodsOf(f)->xSectorSize(realOf(f)); },
    [](sqlite3_file* f) { return methodsOf(f)->xDeviceCharacteristics(realOf(f)); },
    [](sqlite3_file* f, int page, int size, int extend, void volatile** to) {
        return methodsOf(f)->xShmMap(realOf(f), page, size, extend, to);
    },
    [](sqlite3_file* f, int offset, int n, int flags) { return methodsOf(f)->xShmLock(realOf(f), offset, n, flags); },
    [](sqlite3_file* f) { methodsOf(f)->xShmBarrier(realOf(f)); },
    [](sqlite3_file* f, int remove) { return methodsOf(f)->xShmUnmap(realOf(f), remove); },
    [](sqlite3_file* f, sqlite3_int64 at, int n, void** to) { return methodsOf(f)->xFetch(realOf(f), at, n, to); },
    [](sqlite3_file* f, sqlite3_int64 at, void* from) { return methodsOf(f)->xUnfetch(realOf(f), at, from); },
};

sqlite3_vfs* usual = nullptr;

sqlite3_vfs& filling() {
    static sqlite3_vfs vfs = [] {
        usual = sqlite3_vfs_find(nullptr);
        sqlite3_vfs made = *usual; // all but opening stays as it is
        made.zName = "filling";
        made.pNext = nullptr;
        made.szOsFile = static_cast<int>(sizeof(File)) + usual->szOsFile;
        made.xOpen = [](sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* outFlags) {
            const int opened = usual->xOpen(usual, name, realOf(file), flags, outFlags);
            file->pMethods = methodsOf(file) != nullptr ? &kMethods : nullptr;
            return opened;
        };
        return made;
    }();
    return vfs;
}

void onEveryTable(sql::Connection& connection, const std::string& before, const std::string& after) {
    for (const auto& row : connection.rows("SELECT table_name FROM information_schema.tables WHERE table_schema = "
                                           "current_schema() AND table_type = 'BASE TABLE' ORDER BY table_name")) {
        connection.execute(before + row.front() + after);
    }
}
} // namespace

FullDisk::FullDisk(sql::test::Place& place)
    : m_place(place)
    , m_sqlite(place.dialect() == sql::Dialect::Sqlite) {
    if (m_sqlite) {
        sqlite3_vfs_register(&filling(), 1);
        return;
    }
    // In a schema of its own, where the ledger's check has nothing to say.
    const auto connection = m_place.connect();
    connection->execute("CREATE SCHEMA disk");
    // A sequence counts on when a transaction is rolled back, as a disk does.
    connection->execute("CREATE SEQUENCE disk.writes");
    connection->execute("CREATE TABLE disk.room (writes BIGINT)");
    connection->execute("CREATE FUNCTION disk.need_room() RETURNS trigger LANGUAGE plpgsql AS 'BEGIN "
                        "IF nextval(''disk.writes'') > (SELECT writes FROM disk.room) THEN "
                        "RAISE EXCEPTION ''no room'' USING ERRCODE = ''53100''; END IF; RETURN NULL; END'");
}

FullDisk::~FullDisk() {
    makeRoom();
    if (m_sqlite) {
        sqlite3_vfs_register(usual, 1);
        return;
    }
    m_place.connect()->execute("DROP SCHEMA disk CASCADE");
}

void FullDisk::fillAfter(int writes) {
    if (m_sqlite) {
        wasMet = false;
        writesLeft = writes;
        return;
    }
    const auto connection = m_place.connect();
    connection->execute("ALTER SEQUENCE disk.writes RESTART");
    connection->execute("INSERT INTO disk.room VALUES (" + std::to_string(writes) + ")");
    onEveryTable(*connection, "CREATE TRIGGER need_room AFTER INSERT OR UPDATE OR DELETE ON ",
                 " FOR EACH ROW EXECUTE FUNCTION disk.need_room()");
    m_filling = true;
}

bool FullDisk::makeRoom() {
    if (m_sqlite) {
        writesLeft = kRoom;
        return wasMet.exchange(false);
    }
    if (!std::exchange(m_filling, false)) {
        return false;
    }
    const auto connection = m_place.connect();
    onEveryTable(*connection, "DROP TRIGGER need_room ON ", "");
    const auto rows = connection->rows("SELECT 1 FROM disk.writes, disk.room WHERE disk.writes.is_called AND "
                                       "disk.writes.last_value > disk.room.writes");
    connection->execute("DELETE FROM disk.room");
    return !rows.empty();
}

} // namespace rw::stories
