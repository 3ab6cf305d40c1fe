// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/sql_customers.h"

#include "core/customers/search_key.h"
#include "core/sql/repositories/bound_values.h"
#include "core/sql/repositories/row.h"
#include "core/sql/repositories/stored_texts.h"

#include <cassert>

namespace rw::sql {

namespace {
/// People with their contacts, one row a contact (or one without any), rows of one person together.
std::vector<Customer> peopleIn(Statement& statement) {
    std::vector<Customer> people;
    while (statement.next()) {
        const Row row(statement, "customer");
        const auto id = row.id<CustomerId>();
        if (people.empty() || people.back().id != id) {
            people.push_back({.id = id,
                              .name = row.text("name"),
                              .contacts = {},
                              .version = row.wide("row_version"),
                              .removed = row.optionalInstant("removed_at")});
        }
        if (!row.isNull("contact_id")) {
            const Row contact(statement, "contact", "contact_id");
            people.back().contacts.push_back({contact.oneOf("kind", contactKindFromText), contact.text("text")});
        }
    }
    return people;
}

/// A person as two stations would tell them apart.
std::string inWords(const Customer& customer) {
    std::string words = customer.name;
    for (const Contact& contact : customer.contacts) {
        words += ", " + contact.text;
    }
    return words;
}

void addContacts(Connection& connection, CustomerId id, const std::vector<Contact>& contacts) {
    for (const Contact& contact : contacts) {
        Statement statement(connection, "add_contact");
        statement.bind(":customer", stored(id));
        statement.bind(":kind", contactKindText(contact.kind));
        statement.bind(":text", contact.text);
        statement.bind(":digits", digitsOf(contact.text));
        statement.run();
    }
}

Racket racketIn(const Row& row) {
    return {row.id<RacketId>(), row.id<CustomerId>("customer_id"), row.id<FrameModelId>("frame_model_id"),
            row.text("mark")};
}

template<class AnyId>
std::optional<AnyId> addedUnder(std::string_view requestKey, Connection& connection, std::string_view table) {
    Statement statement(connection, "get_" + std::string(table) + "_by_request_key");
    statement.bind(":request_key", requestKey);
    statement.run();
    return statement.next() ? std::optional(Row(statement, table).id<AnyId>()) : std::nullopt;
}
} // namespace

CustomerId SqlCustomers::add(const Customer& customer, std::string_view requestKey) {
    Statement statement(m_connection, "add_customer");
    statement.bind(":request_key", requestKey);
    statement.bind(":name", customer.name);
    statement.bind(":search_key", searchKey(customer.name));
    statement.run();
    const auto id = CustomerId::of(statement.insertedId());
    addContacts(m_connection, id, customer.contacts);
    return id;
}

std::optional<CustomerId> SqlCustomers::byRequestKey(std::string_view key) {
    return addedUnder<CustomerId>(key, m_connection, "customer");
}

Result<void> SqlCustomers::update(const Customer& customer) {
    assert(customer.id);
    Statement change(m_connection, "update_customer");
    change.bind(":customer", stored(*customer.id));
    change.bind(":name", customer.name);
    change.bind(":search_key", searchKey(customer.name));
    change.bind(":version", customer.version);
    change.run();
    if (change.rowsAffected() == 0) {
        const auto theirs = get(*customer.id);
        if (!theirs) {
            return refuse(Code::NotFound, {{"what", "customer"}, {"text", customer.name}});
        }
        return refuse(Code::ChangedMeanwhile,
                      {{"what", "customer"}, {"mine", inWords(customer)}, {"theirs", inWords(*theirs)}});
    }
    Statement clear(m_connection, "delete_contacts_of_customer");
    clear.bind(":customer", stored(*customer.id));
    clear.run();
    addContacts(m_connection, *customer.id, customer.contacts);
    return {};
}

void SqlCustomers::erase(CustomerId id, Instant at) {
    // First of all: notes go with somebody who is removed, and with nobody else.
    Statement remove(m_connection, "remove_customer");
    remove.bind(":customer", stored(id));
    remove.bind(":at", stored(at));
    remove.run();
    for (const char* query :
         {"delete_contacts_of_customer", "erase_notes_of_customer", "erase_inspections_of_customer",
          "erase_consent_words_of_customer", "erase_event_words_of_customer", "erase_charge_words_of_customer",
          "erase_movement_words_of_customer", "erase_takers_of_customer"}) {
        Statement statement(m_connection, query);
        statement.bind(":customer", stored(id));
        statement.run();
    }
}

std::optional<Customer> SqlCustomers::get(CustomerId id) {
    Statement statement(m_connection, "get_customer");
    statement.bind(":customer", stored(id));
    statement.run();
    std::vector<Customer> people = peopleIn(statement);
    return people.empty() ? std::nullopt : std::optional(std::move(people.front()));
}

std::vector<Customer> SqlCustomers::find(std::string_view text, int atMost) {
    std::vector<Customer> people;
    for (const CustomerId id : m_people.now(m_connection).find(text, atMost)) {
        if (auto customer = get(id)) {
            people.push_back(*std::move(customer));
        }
    }
    return people;
}

RacketId SqlCustomers::addRacket(const Racket& racket, std::string_view requestKey) {
    Statement statement(m_connection, "add_racket");
    statement.bind(":request_key", requestKey);
    statement.bind(":customer", stored(racket.customer));
    statement.bind(":frame", stored(racket.frame));
    statement.bind(":mark", racket.mark);
    statement.run();
    return RacketId::of(statement.insertedId());
}

std::optional<RacketId> SqlCustomers::racketByRequestKey(std::string_view key) {
    return addedUnder<RacketId>(key, m_connection, "racket");
}

std::optional<Racket> SqlCustomers::racket(RacketId id) {
    Statement statement(m_connection, "get_racket");
    statement.bind(":racket", stored(id));
    statement.run();
    return statement.next() ? std::optional(racketIn(Row(statement, "racket"))) : std::nullopt;
}

std::vector<Racket> SqlCustomers::racketsOf(CustomerId customer) {
    Statement statement(m_connection, "list_rackets_of_customer");
    statement.bind(":customer", stored(customer));
    statement.run();
    std::vector<Racket> rackets;
    while (statement.next()) {
        rackets.push_back(racketIn(Row(statement, "racket")));
    }
    return rackets;
}

} // namespace rw::sql
