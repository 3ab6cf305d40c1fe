// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <map>
#include <string>
#include <utility>
#include <vector>

namespace rw::desk::test {

/// Everything a ledger holds, as values: a transaction works on a copy, and to commit is to put the copy in place.
struct Rows {
    struct Note {
        JobId job;
        std::string words;
    };
    struct Payment {
        JobId job;
        Money amount;
        std::string way;
    };
    std::vector<Customer> customers;
    std::vector<Racket> rackets;
    std::vector<FrameModel> frames;
    std::vector<UsualCut> usualCuts;
    std::vector<StringArticle> articles;
    std::vector<Lot> lots;
    std::vector<Movement> movements;
    std::vector<Job> jobs; ///< without what is derived
    std::vector<JobEvent> events;
    std::vector<Payment> payments;
    std::map<JobId, std::string> takenBy;
    std::vector<PriceList> priceLists;
    std::map<std::string, std::string, std::less<>> settings;
    std::vector<StaffMember> staff;
    std::vector<Machine> machines;
    std::int64_t lastId = 0;

    template<class AnyId>
    AnyId next() {
        return AnyId::of(++lastId);
    }
};

/// A ledger in memory, for tests of the use cases: honest about transactions and about the guards that they must never
/// run into (LedgerGuard), and nothing more.
class FakeLedger final : public Ledger {
public:
    [[nodiscard]] std::unique_ptr<Transaction> begin(Access access) override;
    [[nodiscard]] std::vector<Finding> check() override;
    [[nodiscard]] std::int64_t changeCount() override { return changes; }

    Rows rows;
    std::int64_t changes = 0; ///< a test raises it, as another connection would
    int busyTimes = 0;        ///< so many commits find another station first
    int commits = 0;
};

} // namespace rw::desk::test
