// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/world_error.h"
#include "core/sql/postgres_error.h"
#include "core/sql/sqlite_error.h"

#include <gtest/gtest.h>
#include <sqlite3.h>

#include <cerrno>
#include <typeindex>

namespace rw::sql::test {

namespace {

template<class Throw>
std::type_index thrownBy(Throw&& thrower) {
    try {
        thrower();
    } catch (const WorldError& error) {
        return typeid(error);
    }
    return typeid(void);
}

std::type_index sqlite(int code, int systemErrno = 0) {
    return thrownBy([&] { throwSqliteError(code, systemErrno, "words", "query"); });
}

std::type_index postgres(std::string_view state) {
    return thrownBy([&] { throwPostgresError(state, "ERROR:  words\nDETAIL: more", "query"); });
}

} // namespace

// Source of the codes: sqlite.org/rescode.html.
TEST(SqliteError, BecomesOurs) {
    EXPECT_EQ(sqlite(SQLITE_FULL), typeid(LedgerFull));
    EXPECT_EQ(sqlite(SQLITE_IOERR_WRITE, ENOSPC), typeid(LedgerFull));
    EXPECT_EQ(sqlite(SQLITE_IOERR_WRITE, EDQUOT), typeid(LedgerFull));
    EXPECT_EQ(sqlite(SQLITE_IOERR_SHMSIZE, ENOSPC), typeid(LedgerFull));
    EXPECT_EQ(sqlite(SQLITE_IOERR_READ, EIO), typeid(LedgerLost));
    EXPECT_EQ(sqlite(SQLITE_CANTOPEN), typeid(LedgerLost));
    EXPECT_EQ(sqlite(SQLITE_BUSY), typeid(LedgerBusy));
    EXPECT_EQ(sqlite(SQLITE_BUSY_SNAPSHOT), typeid(LedgerBusy));
    EXPECT_EQ(sqlite(SQLITE_LOCKED), typeid(LedgerBusy));
    EXPECT_EQ(sqlite(SQLITE_READONLY), typeid(LedgerReadOnly));
    EXPECT_EQ(sqlite(SQLITE_READONLY_DIRECTORY), typeid(LedgerReadOnly));
    EXPECT_EQ(sqlite(SQLITE_READONLY_DBMOVED), typeid(LedgerLost));
    EXPECT_EQ(sqlite(SQLITE_CORRUPT), typeid(LedgerCorrupt));
    EXPECT_EQ(sqlite(SQLITE_NOTADB), typeid(LedgerCorrupt));
    EXPECT_EQ(sqlite(SQLITE_CONSTRAINT_TRIGGER), typeid(LedgerGuard));
    EXPECT_EQ(sqlite(SQLITE_NOMEM), typeid(WorldError));
}

TEST(SqliteError, NamesTheGuardAsPostgresWould) {
    EXPECT_EQ(sqliteGuard(SQLITE_CONSTRAINT_TRIGGER, "movement_append_only"), "movement_append_only");
    EXPECT_EQ(sqliteGuard(SQLITE_CONSTRAINT_CHECK, "CHECK constraint failed: lot_kind"), "lot_kind");
    EXPECT_EQ(sqliteGuard(SQLITE_CONSTRAINT_UNIQUE, "UNIQUE constraint failed: lot.tag"), "lot_tag_key");
    EXPECT_EQ(sqliteGuard(SQLITE_CONSTRAINT_UNIQUE, "UNIQUE constraint failed: racket.customer_id, racket.mark"),
              "racket_customer_id_mark_key");
    EXPECT_EQ(sqliteGuard(SQLITE_CONSTRAINT_UNIQUE, "UNIQUE constraint failed: index 'usual_cut_one_each'"),
              "usual_cut_one_each");
    EXPECT_EQ(sqliteGuard(SQLITE_CONSTRAINT_NOTNULL, "NOT NULL constraint failed: lot.tag"), "lot_tag_not_null");
    EXPECT_EQ(sqliteGuard(SQLITE_CONSTRAINT_PRIMARYKEY, "UNIQUE constraint failed: strung.job_event_id"),
              "strung_pkey");
    EXPECT_EQ(sqliteGuard(SQLITE_CONSTRAINT_FOREIGNKEY, "FOREIGN KEY constraint failed"), "foreign_key");
}

// Source of the codes: PostgreSQL 15 manual, Appendix A.
TEST(PostgresError, BecomesOurs) {
    EXPECT_EQ(postgres("53100"), typeid(LedgerFull));
    EXPECT_EQ(postgres("40001"), typeid(LedgerBusy));
    EXPECT_EQ(postgres("40P01"), typeid(LedgerBusy));
    EXPECT_EQ(postgres("55P03"), typeid(LedgerBusy));
    EXPECT_EQ(postgres(""), typeid(LedgerLost));
    EXPECT_EQ(postgres("08006"), typeid(LedgerLost));
    EXPECT_EQ(postgres("57P01"), typeid(LedgerLost));
    EXPECT_EQ(postgres("53300"), typeid(LedgerLost));
    EXPECT_EQ(postgres("25P03"), typeid(LedgerLost));
    EXPECT_EQ(postgres("25006"), typeid(LedgerReadOnly));
    EXPECT_EQ(postgres("42501"), typeid(LedgerReadOnly));
    EXPECT_EQ(postgres("XX001"), typeid(LedgerCorrupt));
    EXPECT_EQ(postgres("42P01"), typeid(LedgerCorrupt));
    EXPECT_EQ(postgres("23505"), typeid(LedgerGuard));
    EXPECT_EQ(postgres("RW001"), typeid(LedgerGuard));
    EXPECT_EQ(postgres("22012"), typeid(WorldError));
}

TEST(PostgresError, NamesTheGuardAndNothingOfThePeople) {
    const std::string unique = "ERROR:  duplicate key value violates unique constraint \"lot_tag_key\"\n"
                               "DETAIL:  Key (tag)=(K-1) already exists.";
    EXPECT_EQ(postgresGuard("23505", unique), "lot_tag_key");
    EXPECT_EQ(postgresGuard("23514", "ERROR:  new row for relation \"frame_model\" violates check constraint "
                                     "\"frame_name\"\nDETAIL:  Failing row contains (1, Petra)."),
              "frame_name");
    EXPECT_EQ(postgresGuard("23503", "ERROR:  update or delete on table \"lot\" violates foreign key constraint "
                                     "\"movement_lot_id_fkey\" on table \"movement\""),
              "movement_lot_id_fkey");
    EXPECT_EQ(postgresGuard("23502", "ERROR:  null value in column \"tag\" of relation \"lot\" violates not-null "
                                     "constraint"),
              "lot_tag_not_null");
    EXPECT_EQ(postgresGuard("RW001", "FEHLER:  movement_append_only\nCONTEXT:  PL/pgSQL"), "movement_append_only");
    try {
        throwPostgresError("23505", unique, "insert_lot :article=1");
    } catch (const LedgerGuard& guard) {
        EXPECT_STREQ(guard.what(), "lot_tag_key (insert_lot :article=1)");
    }
}

} // namespace rw::sql::test
