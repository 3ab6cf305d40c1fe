// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/customers/people_index.h"
#include "core/sql/connection.h"

#include <cstdint>

namespace rw::sql {

/// Everybody in the ledger as they are searched, kept from one transaction to the next. The ledger numbers each change
/// of a customer (customer_change), so that what other stations changed is read and nothing else.
class KnownPeople {
public:
    /// As the open transaction sees them.
    [[nodiscard]] PeopleIndex& now(Connection& connection);

    /// The transaction has ended, and what it saw is what the ledger holds; or else it was rolled back.
    void keep() { m_isSure = true; }
    void takeBack();

private:
    void readAll(Connection& connection);
    void readAgain(Connection& connection, CustomerId id);

    PeopleIndex m_index;
    std::int64_t m_seen = kNothing; ///< the number of the last change that is in m_index
    bool m_isSure = true;

    static constexpr std::int64_t kNothing = -1;
};

} // namespace rw::sql
