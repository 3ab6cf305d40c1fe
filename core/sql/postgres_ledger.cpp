// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/postgres_ledger.h"

#include "core/base/world_error.h"
#include "core/sql/first_facts.h"
#include "core/sql/migration.h"
#include "core/sql/statement.h"

namespace rw::sql {

namespace {

class Opening {
public:
    Opening(Connection& connection, std::string given, IfMissing ifMissing)
        : m_connection(connection)
        , m_given(std::move(given))
        , m_ifMissing(ifMissing) {}

    [[nodiscard]] Result<void> check() const {
        Statement facts(m_connection, "select_database_facts");
        facts.run();
        if (!facts.next()) {
            throw LedgerCorrupt("the server says nothing of its database");
        }
        if (const auto encoding = facts.text("encoding"); encoding != "UTF8") {
            return refuse(Code::LedgerEncoding, {{"ledger", m_given}, {"found", encoding}});
        }
        if (facts.text("schema").empty()) {
            return refused(Code::LedgerUnreachable, "the database has no schema for this user");
        }
        if (facts.text("read_only") == "on") {
            return refused(Code::LedgerNotWritable, "the server only answers questions");
        }
        return facts.flag("is_ours") ? checkOurs(facts) : checkEmpty(facts);
    }

    [[nodiscard]] tl::unexpected<Refusal> refused(Code code, std::string reason) const {
        return refuse(code, {{"ledger", m_given}, {"reason", std::move(reason)}});
    }

private:
    [[nodiscard]] Result<void> checkEmpty(const Statement& facts) const {
        if (facts.integer("objects") != 0) {
            return refused(Code::LedgerForeign, "the database holds the tables of another program");
        }
        if (m_ifMissing == IfMissing::Refuse) {
            return refused(Code::LedgerUnreachable, "there is no ledger in the database");
        }
        if (!facts.flag("may_create")) {
            return refused(Code::LedgerNotWritable, "this user may not make tables in the database");
        }
        return {};
    }

    [[nodiscard]] Result<void> checkOurs(const Statement& facts) const {
        if (!facts.flag("may_write")) {
            return refused(Code::LedgerNotWritable, "this user may not write its tables");
        }
        if (const int found = schemaVersion(m_connection); found > latestVersion()) {
            return refuse(
                Code::LedgerNewer,
                {{"ledger", m_given}, {"found", std::int64_t{found}}, {"known", std::int64_t{latestVersion()}}});
        }
        return {};
    }

    Connection& m_connection;
    std::string m_given;
    IfMissing m_ifMissing;
};

} // namespace

Result<std::unique_ptr<Connection>> openPostgresLedger(const LedgerAddress& address, IfMissing ifMissing) {
    std::unique_ptr<Connection> connection;
    try {
        connection = Connection::openPostgres(address.text());
    } catch (const LedgerLost& error) {
        return refuse(Code::LedgerUnreachable, {{"ledger", address.withoutPassword()}, {"reason", error.what()}});
    }
    const Opening opening(*connection, address.withoutPassword(), ifMissing);
    try {
        if (auto checked = opening.check(); !checked) {
            return tl::unexpected(checked.error());
        }
        const auto now = SystemClock().now();
        migrate(*connection, migrations(Dialect::Postgres), now);
        writeFirstFacts(*connection, now);
    } catch (const LedgerReadOnly& error) {
        return opening.refused(Code::LedgerNotWritable, error.what());
    } catch (const LedgerCorrupt& error) {
        return opening.refused(Code::LedgerDamaged, error.what());
    }
    return connection;
}

} // namespace rw::sql
