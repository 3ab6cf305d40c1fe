// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger_table.h"
#include "core/desk/port/repositories.h"

#include <optional>
#include <string>
#include <vector>

// What the books ask of a ledger: rows over many jobs, read only. core/sql implements it.
namespace rw::desk {

/// A job with which something is still to be done after it was strung: telling, paying, collecting.
struct OpenMatter {
    JobLine job;
    std::optional<Instant> strung; ///< the last time
    std::optional<Instant> told;   ///< the last time since it was strung
    std::optional<Instant> collected;
    Money total; ///< nothing for a job that is withdrawn
    Money paid;
    /// What is still owed; negative when too much was paid.
    [[nodiscard]] Money owed() const { return total - paid; }
};

struct PaymentLine {
    JobId job;
    std::int64_t number; ///< of the job
    std::string customer;
    Money amount;
    std::string way;
    Instant at;
};

/// A job that was strung in some period, with what it charged and what string it took.
struct StrungJob {
    struct Cut {
        Length length;
        Money landedCost; ///< of the lot it came from
        Length nominal;   ///< of that lot
    };
    JobId id;
    std::int64_t number;
    std::string customer;
    std::string frame;
    Instant strung;
    std::vector<Charge> charges;
    std::vector<Cut> cuts; ///< lost lengths too
};

/// What was left on one of the shop's lots when it was closed: thrown away, or measured to be nothing.
struct ScrappedEnd {
    std::string tag;
    std::string string; ///< its code
    Length length;      ///< > 0
    Money landedCost;   ///< of the lot
    Length nominal;     ///< of the lot
};

class Reports {
public:
    virtual ~Reports() = default;
    /// Jobs on the rack, those that have left with something owed or with too much paid, and those that were withdrawn
    /// with something paid; oldest strung first.
    [[nodiscard]] virtual std::vector<OpenMatter> openMatters() = 0;
    /// What is owed for a person's jobs that were collected, less what was paid for those that were withdrawn; negative:
    /// in their favour.
    [[nodiscard]] virtual Money account(CustomerId customer) = 0;
    /// Payments in [from, to), oldest first.
    [[nodiscard]] virtual std::vector<PaymentLine> payments(Instant from, Instant to) = 0;
    /// Jobs whose last stringing lies in [from, to), oldest first.
    [[nodiscard]] virtual std::vector<StrungJob> strung(Instant from, Instant to) = 0;
    /// Of the shop's lots that were closed in [from, to), the first closed first; lots that were used up are left out.
    [[nodiscard]] virtual std::vector<ScrappedEnd> scrap(Instant from, Instant to) = 0;
    /// Everything, table by table.
    [[nodiscard]] virtual std::vector<LedgerTable> tables() = 0;
};

} // namespace rw::desk
