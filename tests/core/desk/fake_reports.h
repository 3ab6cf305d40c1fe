// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/reports.h"
#include "tests/core/desk/fake_jobs.h"

namespace rw::desk::test {

/// The books of a fake ledger, from its rows.
class FakeReports final : public Reports {
public:
    FakeReports(Rows& rows, FakeJobs& jobs)
        : m_rows(rows)
        , m_jobs(jobs) {}
    std::vector<OpenMatter> openMatters() override;
    Money account(CustomerId customer) override;
    std::vector<PaymentLine> payments(Instant from, Instant to) override;
    std::vector<StrungJob> strung(Instant from, Instant to) override;
    std::vector<ScrappedEnd> scrap(Instant from, Instant to) override;
    std::vector<LedgerTable> tables() override { return m_rows.tables; }

private:
    /// When that last happened to the job.
    std::optional<Instant> last(JobId job, JobEventKind kind);
    bool isTakenBack(const Attempt& attempt);
    Rows& m_rows;
    FakeJobs& m_jobs;
};

} // namespace rw::desk::test
