// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/repositories.h"
#include "core/sql/connection.h"
#include "core/sql/repositories/known_people.h"

namespace rw::sql {

/// desk::Customers over the open transaction of a connection. Both references must outlive it.
class SqlCustomers final : public desk::Customers {
public:
    SqlCustomers(Connection& connection, KnownPeople& people)
        : m_connection(connection)
        , m_people(people) {}

    CustomerId add(const Customer& customer, std::string_view requestKey) override;
    [[nodiscard]] std::optional<CustomerId> byRequestKey(std::string_view key) override;
    Result<void> update(const Customer& customer) override;
    [[nodiscard]] std::optional<Customer> get(CustomerId id) override;
    [[nodiscard]] std::vector<Customer> find(std::string_view text, int atMost) override;
    void erase(CustomerId id, Instant at) override;
    RacketId addRacket(const Racket& racket, std::string_view requestKey) override;
    [[nodiscard]] std::optional<RacketId> racketByRequestKey(std::string_view key) override;
    [[nodiscard]] std::optional<Racket> racket(RacketId id) override;
    [[nodiscard]] std::vector<Racket> racketsOf(CustomerId customer) override;

private:
    Connection& m_connection;
    KnownPeople& m_people;
};

} // namespace rw::sql
