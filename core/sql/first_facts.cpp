// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/first_facts.h"

#include "core/money/money.h"
#include "core/sql/statement.h"
#include "core/sql/work.h"

namespace rw::sql {

void writeFirstFacts(Connection& connection, Instant now) {
    auto work = Work::writing(connection);
    Statement(connection, "insert_ledger_facts")
        .bind(":created_at", now.time_since_epoch().count())
        .bind(":time_zone", "UTC")
        .bind(":currency", Currency::pounds().code())
        .run();
    work.commit();
}

} // namespace rw::sql
