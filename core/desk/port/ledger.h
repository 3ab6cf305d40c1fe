// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/own_cuts.h"
#include "core/desk/port/reports.h"
#include "core/desk/port/repositories.h"
#include "core/desk/port/supply.h"
#include "core/desk/port/weighings.h"

#include <memory>
#include <string>
#include <vector>

namespace rw::desk {

/// One open transaction. Destroyed without commit() it leaves nothing behind.
class Transaction {
public:
    virtual ~Transaction() = default;
    virtual Customers& customers() = 0;
    virtual Frames& frames() = 0;
    virtual Strings& strings() = 0;
    virtual Lots& lots() = 0;
    virtual Weighings& weighings() = 0;
    virtual Jobs& jobs() = 0;
    virtual PriceLists& priceLists() = 0;
    virtual Shop& shop() = 0;
    virtual Reports& reports() = 0;
    virtual Supply& supply() = 0;
    virtual OwnCuts& ownCuts() = 0;
    /// Makes it last. Throws WorldError; LedgerBusy when another station was first and the work must be done again.
    virtual void commit() = 0;
};

enum class Access { Read, Write };

/// What `check` found to be wrong: which rule, and which row breaks it.
struct Finding {
    std::string rule; ///< "lot length equals its movements"
    std::string what; ///< "lot K-2: 6400 mm in the book, 6350 mm by its movements"
};

/// An open ledger. Belongs to the thread that opened it.
class Ledger {
public:
    virtual ~Ledger() = default;
    /// Write begins at once (no other writer gets in between). Throws LedgerBusy when it cannot have its turn.
    [[nodiscard]] virtual std::unique_ptr<Transaction> begin(Access access) = 0;
    /// Proves the invariants on the stored rows; empty when the ledger is whole.
    [[nodiscard]] virtual std::vector<Finding> check() = 0;
    /// Grows when another connection has changed the ledger since.
    [[nodiscard]] virtual std::int64_t changeCount() = 0;
};

} // namespace rw::desk
