// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/supply.h"
#include "tests/core/desk/fake_jobs.h"

namespace rw::desk::test {

/// Who wanted and who sent the string of a fake ledger.
class FakeSupply final : public Supply {
public:
    FakeSupply(Rows& rows, FakeJobs& jobs)
        : m_rows(rows)
        , m_jobs(jobs) {}
    std::vector<StringWish> wishes(Instant since) override;
    std::vector<LastSupply> lastSupplies() override;
    void add(const AskedForNone& asked) override;
    std::optional<StringArticleId> askedForNoneByRequestKey(std::string_view key) override;

private:
    Rows& m_rows;
    FakeJobs& m_jobs;
};

} // namespace rw::desk::test
