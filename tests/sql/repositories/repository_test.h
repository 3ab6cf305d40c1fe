// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/world_error.h"
#include "core/sql/repositories/sql_customers.h"
#include "core/sql/repositories/sql_frames.h"
#include "core/sql/repositories/sql_jobs.h"
#include "core/sql/repositories/sql_lots.h"
#include "core/sql/repositories/sql_price_lists.h"
#include "core/sql/repositories/sql_shop.h"
#include "core/sql/repositories/sql_strings.h"
#include "core/sql/work.h"
#include "tests/sql/engines.h"

#include <gmock/gmock.h>

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace rw::sql::test {

[[nodiscard]] Length mm(std::int64_t value);
[[nodiscard]] Money pounds(std::int64_t pence);
[[nodiscard]] Tension lb(std::int64_t hundredths);
[[nodiscard]] Tension kg(std::int64_t hundredths);
/// `minutes` after ten o'clock on 2 March 2026, UTC.
[[nodiscard]] Instant at(int minutes);

/// All repositories in one open transaction on a fresh ledger. The transaction is committed when the test ends, so that
/// what only shows then shows.
class RepositoryTest : public OnEngine {
protected:
    void SetUp() override;
    void TearDown() override;

    [[nodiscard]] Connection& connection() { return *m_connection; }
    /// Ends the transaction before the test does.
    void commit();
    /// What the ledger's guard said to `write`; "" when it let it through. The transaction goes on without it.
    template<class Write>
    [[nodiscard]] std::string guardOf(Write write) {
        connection().execute("SAVEPOINT probe");
        try {
            write();
        } catch (const LedgerGuard& guard) {
            connection().execute("ROLLBACK TO SAVEPOINT probe");
            return guard.what();
        }
        connection().execute("RELEASE SAVEPOINT probe");
        return {};
    }
    /// What was found corrupt by `read`; "" when nothing was.
    template<class Read>
    [[nodiscard]] std::string corruptionIn(Read read) {
        try {
            read();
        } catch (const LedgerCorrupt& corrupt) {
            return corrupt.what();
        }
        return {};
    }

    [[nodiscard]] SqlCustomers& customers() { return *m_customers; }
    [[nodiscard]] SqlFrames& frames() { return *m_frames; }
    [[nodiscard]] SqlStrings& strings() { return *m_strings; }
    [[nodiscard]] SqlLots& lots() { return *m_lots; }
    [[nodiscard]] SqlJobs& jobs() { return *m_jobs; }
    [[nodiscard]] SqlPriceLists& priceLists() { return *m_priceLists; }
    [[nodiscard]] SqlShop& shop() { return *m_shop; }

private:
    std::unique_ptr<Connection> m_connection;
    std::optional<Work> m_work;
    KnownPeople m_people;
    std::optional<SqlCustomers> m_customers;
    std::optional<SqlFrames> m_frames;
    std::optional<SqlStrings> m_strings;
    std::optional<SqlLots> m_lots;
    std::optional<SqlJobs> m_jobs;
    std::optional<SqlPriceLists> m_priceLists;
    std::optional<SqlShop> m_shop;
};

/// The same, with a small shop to write about: a machine, Petra and her Aldermoor 98 "A", the strings K, L and T.
class StockedTest : public RepositoryTest {
protected:
    void SetUp() override;

    [[nodiscard]] By by(int minutes, std::string station = "bench") const;
    [[nodiscard]] MachineId machine() const { return *m_machine; }
    [[nodiscard]] CustomerId petra() const { return *m_petra; }
    [[nodiscard]] FrameModelId frame() const { return *m_frame; }
    [[nodiscard]] RacketId racket() const { return *m_racket; }
    [[nodiscard]] StringArticleId string(const std::string& code) const { return m_articles.at(code); }

    /// A reel of `length` of that string, received.
    LotId reel(const std::string& tag, StringArticleId article, Length length,
               std::optional<CustomerId> owner = std::nullopt);
    /// A piece of 6.2 m, planned on `lot`.
    [[nodiscard]] JobPiece piece(PieceRole role, StringArticleId article, std::optional<LotId> lot = std::nullopt);
    /// A job for Petra's racket.
    [[nodiscard]] Job job(const std::string& key, std::vector<JobPiece> pieces);
    void record(JobId job, JobEventKind kind, int minutes, std::optional<AttemptId> attempt = std::nullopt);
    MovementId cut(AttemptId attempt, LotId lot, Length length, int minutes);
    [[nodiscard]] Job stored(JobId id) { return jobs().get(id).value(); }

private:
    std::optional<StaffId> m_staff;
    std::optional<MachineId> m_machine;
    std::optional<CustomerId> m_petra;
    std::optional<FrameModelId> m_frame;
    std::optional<RacketId> m_racket;
    std::map<std::string, StringArticleId> m_articles;
};

} // namespace rw::sql::test
