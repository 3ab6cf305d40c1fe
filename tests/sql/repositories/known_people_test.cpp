// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/repositories/known_people.h"

#include "core/base/world_error.h"
#include "tests/sql/engines.h"
#include "tests/sql/ledgers.h"

#include <gmock/gmock.h>

using testing::ElementsAre;
using testing::IsEmpty;

// Who is known by name stays what the ledger holds, whoever writes to it and however that ends.
namespace rw::sql::test {

class KnownPeopleTest : public OnEngine {
protected:
    void SetUp() override {
        m_here = mustOpen(place().address());
        m_there = mustOpen(place().address());
    }
    static CustomerId addIn(desk::Transaction& work, const std::string& name, const std::string& phone = "0771") {
        return work.customers().add({std::nullopt, name, {{Contact::Kind::Phone, phone}}, 0}, name);
    }
    static CustomerId addAt(desk::Ledger& ledger, const std::string& name, const std::string& phone = "0771") {
        const auto work = ledger.begin(desk::Access::Write);
        const CustomerId id = addIn(*work, name, phone);
        work->commit();
        return id;
    }
    static std::vector<std::string> foundIn(desk::Transaction& work, std::string_view text) {
        std::vector<std::string> names;
        for (const Customer& customer : work.customers().find(text, 20)) {
            names.push_back(customer.name);
        }
        return names;
    }
    static std::vector<std::string> foundAt(desk::Ledger& ledger, std::string_view text) {
        return foundIn(*ledger.begin(desk::Access::Read), text);
    }
    [[nodiscard]] desk::Ledger& here() { return *m_here; }
    [[nodiscard]] desk::Ledger& there() { return *m_there; }

private:
    std::unique_ptr<desk::Ledger> m_here;
    std::unique_ptr<desk::Ledger> m_there;
};
ON_BOTH_ENGINES(KnownPeopleTest);

TEST_P(KnownPeopleTest, WhatTheOtherStationWroteIsKnownHere) {
    EXPECT_THAT(foundAt(here(), "lindobi"), IsEmpty());
    const CustomerId id = addAt(there(), "Petra Lindobi");
    EXPECT_THAT(foundAt(here(), "lindobi"), ElementsAre("Petra Lindobi"));
    {
        const auto work = there().begin(desk::Access::Write);
        Customer petra = work->customers().get(id).value();
        petra.name = "Petra Ferreday";
        petra.contacts = {{Contact::Kind::Phone, "0990"}};
        ASSERT_TRUE(work->customers().update(petra));
        work->commit();
    }
    EXPECT_THAT(foundAt(here(), "lindobi"), IsEmpty());
    EXPECT_THAT(foundAt(here(), "0771"), IsEmpty());
    EXPECT_THAT(foundAt(here(), "0990"), ElementsAre("Petra Ferreday"));
    {
        const auto work = there().begin(desk::Access::Write);
        work->customers().erase(id, Instant(std::chrono::milliseconds(1)));
        work->commit();
    }
    EXPECT_THAT(foundAt(here(), ""), IsEmpty());
}

TEST_P(KnownPeopleTest, WhatWasRolledBackIsNotKnown) {
    addAt(here(), "Tomas Ferreday");
    EXPECT_THAT(foundAt(here(), ""), ElementsAre("Tomas Ferreday"));
    {
        const auto work = here().begin(desk::Access::Write);
        addIn(*work, "Nobody Yet");
        EXPECT_THAT(foundIn(*work, "nobody"), ElementsAre("Nobody Yet")) << "as the transaction sees it";
    }
    EXPECT_THAT(foundAt(here(), "nobody"), IsEmpty());
    // SQLite gives the number of a change that was rolled back to the next one.
    addAt(there(), "Petra Lindobi");
    EXPECT_THAT(foundAt(here(), ""), ElementsAre("Petra Lindobi", "Tomas Ferreday"));
}

TEST_P(KnownPeopleTest, AWholeAddressBookThatWasAddedElsewhereIsKnown) {
    constexpr int kMany = 600; // more than are read one by one
    EXPECT_THAT(foundAt(here(), ""), IsEmpty());
    {
        const auto work = there().begin(desk::Access::Write);
        for (int i = 0; i < kMany; ++i) {
            addIn(*work, "Person " + std::to_string(i), std::to_string(100'000 + i));
        }
        work->commit();
    }
    EXPECT_THAT(foundAt(here(), "100599"), ElementsAre("Person 599"));
    EXPECT_THAT(foundAt(here(), "person 42"), testing::SizeIs(16)) << "six that end in it, and 420 to 429";
}

TEST_P(KnownPeopleTest, WhatCouldNotBeReadIsReadTheNextTime) {
    const auto raw = place().connect();
    const auto whileBroken = [&](auto work) {
        raw->execute("ALTER TABLE contact RENAME COLUMN digits TO digits_gone");
        EXPECT_THROW(work(), WorldError);
        raw->execute("ALTER TABLE contact RENAME COLUMN digits_gone TO digits");
    };
    addAt(there(), "Petra Lindobi");
    whileBroken([&] { (void)foundAt(here(), "lindobi"); }); // of everybody
    EXPECT_THAT(foundAt(here(), "lindobi"), ElementsAre("Petra Lindobi"));
    addAt(there(), "Tomas Ferreday");
    whileBroken([&] { (void)foundAt(here(), "ferreday"); }); // of what is new
    EXPECT_THAT(foundAt(here(), ""), ElementsAre("Petra Lindobi", "Tomas Ferreday"));
}

TEST_P(KnownPeopleTest, TheNumberOfAChangeStaysWhatItWas) {
    addAt(here(), "Petra Lindobi");
    const auto raw = place().connect();
    EXPECT_THROW(raw->execute("UPDATE customer_change SET id = id + 1"), LedgerGuard);
    EXPECT_THROW(raw->execute("DELETE FROM customer_change"), LedgerGuard);
    EXPECT_THROW(raw->execute(onSqlite() ? "REPLACE INTO customer_change SELECT id, customer_id FROM customer_change"
                                         : "TRUNCATE customer_change"),
                 LedgerGuard);
    EXPECT_EQ(raw->scalar("SELECT count(*) FROM customer_change"), "1");
}

TEST_P(KnownPeopleTest, OneLetterWrongIsForgivenInTheLedgerToo) {
    addAt(here(), "Zoë Ångström");
    EXPECT_THAT(foundAt(here(), "angstrim"), ElementsAre("Zoë Ångström"));
    EXPECT_THAT(foundAt(here(), "ongstrim"), IsEmpty());
}

} // namespace rw::sql::test
