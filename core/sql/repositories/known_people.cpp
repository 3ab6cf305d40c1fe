// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/known_people.h"

#include "core/sql/repositories/bound_values.h"
#include "core/sql/repositories/row.h"

#include <set>
#include <string>
#include <vector>

namespace rw::sql {

namespace {
/// From here on reading everybody is quicker than reading them one by one.
constexpr std::size_t kMostOneByOne = 500;

/// One row a phone number, or one without any; rows of one person together.
template<class Each>
void forEachPerson(Statement& statement, Each each) {
    statement.run();
    std::optional<CustomerId> id;
    std::string key;
    std::vector<std::string> digits;
    while (statement.next()) {
        const Row row(statement, "customer");
        const auto next = row.id<CustomerId>();
        if (id != next) {
            if (id) {
                each(*id, key, digits);
            }
            id = next;
            key = row.text("search_key");
            digits.clear();
        }
        if (!row.isNull("digits")) {
            digits.push_back(row.text("digits"));
        }
    }
    if (id) {
        each(*id, key, digits);
    }
}

std::int64_t lastChange(Connection& connection) {
    Statement statement(connection, "get_last_customer_change");
    statement.run();
    return statement.next() ? statement.integer("id") : 0;
}
} // namespace

PeopleIndex& KnownPeople::now(Connection& connection) {
    if (m_seen == kNothing) {
        readAll(connection);
        return m_index;
    }
    std::set<std::int64_t> changed;
    std::int64_t last = m_seen;
    {
        Statement statement(connection, "list_customer_changes");
        statement.bind(":seen", m_seen);
        statement.run();
        while (statement.next()) {
            last = statement.integer("id");
            changed.insert(statement.integer("customer_id"));
        }
    }
    if (changed.empty()) {
        return m_index;
    }
    m_isSure = false;
    if (changed.size() > kMostOneByOne) {
        readAll(connection);
        return m_index;
    }
    for (const std::int64_t id : changed) {
        readAgain(connection, CustomerId::of(id));
    }
    m_seen = last; // not before: what could not be read is read the next time
    return m_index;
}

void KnownPeople::takeBack() {
    if (!m_isSure) {
        m_index.clear();
        m_seen = kNothing;
        m_isSure = true;
    }
}

void KnownPeople::readAll(Connection& connection) {
    m_isSure = false;
    m_seen = kNothing; // until all is read
    m_index.clear();
    const std::int64_t last = lastChange(connection);
    Statement statement(connection, "list_search_keys");
    forEachPerson(statement, [this](CustomerId id, const std::string& key, const std::vector<std::string>& digits) {
        m_index.add(id, key, digits);
    });
    m_seen = last;
}

void KnownPeople::readAgain(Connection& connection, CustomerId id) {
    m_index.drop(id); // who was removed has no key any more
    Statement statement(connection, "get_search_key_of_customer");
    statement.bind(":customer", stored(id));
    forEachPerson(statement, [this](CustomerId whose, const std::string& key, const std::vector<std::string>& digits) {
        m_index.put(whose, key, digits);
    });
}

} // namespace rw::sql
