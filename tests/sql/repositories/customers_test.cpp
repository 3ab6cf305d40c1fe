// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/repositories/repository_test.h"

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

namespace rw::sql::test {

class CustomersTest : public RepositoryTest {
protected:
    CustomerId add(const std::string& name, std::vector<Contact> contacts = {}) {
        return customers().add({std::nullopt, name, std::move(contacts), 0}, std::to_string(++m_added));
    }
    CustomerId addWithPhone(const std::string& name, const std::string& phone) {
        return add(name, {{Contact::Kind::Phone, phone}});
    }
    std::vector<std::string> found(std::string_view text, int atMost = 20) {
        std::vector<std::string> names;
        for (const Customer& customer : customers().find(text, atMost)) {
            names.push_back(customer.name);
        }
        return names;
    }

private:
    int m_added = 0;
};
ON_BOTH_ENGINES(CustomersTest);

std::string times(int count, const std::string& text) {
    std::string out;
    for (int i = 0; i < count; ++i) {
        out += text;
    }
    return out;
}

TEST_P(CustomersTest, ComeBackAsTheyWereStored) {
    const std::vector<Contact> contacts = {{Contact::Kind::Phone, "+44 (0)20 7946 0771"},
                                           {Contact::Kind::Email, "zoe@harbour.example"},
                                           {Contact::Kind::Other, "knock at number 4; ask for O'Tooley"}};
    const auto id = add("Zoë  Ångström", contacts);
    const auto stored = customers().get(id).value();
    EXPECT_EQ(stored.id, id);
    EXPECT_EQ(stored.name, "Zoë  Ångström");
    EXPECT_EQ(stored.contacts, contacts);

    const auto alone = customers().get(add("Nobody's Friend")).value();
    EXPECT_THAT(alone.contacts, IsEmpty());
    EXPECT_FALSE(customers().get(CustomerId::of(987'654)));
}

TEST_P(CustomersTest, KeepAnyScriptAndCountLettersNotBytes) {
    for (const std::string& name : {std::string("שרה בן־עמי"), std::string("ليلى الحداد"), std::string("🎾🏸 Ace"),
                                    std::string("李 小龙"), times(200, "ü"), times(200, "🎾")}) {
        EXPECT_EQ(customers().get(add(name)).value().name, name);
    }
    for (const std::string& name : {std::string(), times(201, "ü"), times(10'000, "x"), times(10'000, "🎾")}) {
        EXPECT_THAT(guardOf([&] { add(name); }), HasSubstr("customer_name"));
    }
    EXPECT_THAT(guardOf([&] { addWithPhone("Long Phone", times(201, "7")); }), HasSubstr("contact_text"));
    EXPECT_THAT(guardOf([&] { addWithPhone("No Phone", ""); }), HasSubstr("contact_text"));
    EXPECT_THAT(guardOf([&] { add(std::string("nul\0 inside", 11)); }), HasSubstr("nul"));
}

TEST_P(CustomersTest, ChangeOnlyWhatTheyRead) {
    const auto id = addWithPhone("Petra Lindobi", "0771");
    Customer mine = customers().get(id).value();
    Customer theirs = mine;

    theirs.name = "Petra Lindobi-Ferreday";
    theirs.contacts = {{Contact::Kind::Email, "petra@harbour.example"}, {Contact::Kind::Phone, "0772"}};
    ASSERT_TRUE(customers().update(theirs));
    const auto stored = customers().get(id).value();
    EXPECT_EQ(stored.name, theirs.name);
    EXPECT_EQ(stored.contacts, theirs.contacts);
    EXPECT_GT(stored.version, theirs.version);
    EXPECT_THAT(found("ferreday"), ElementsAre("Petra Lindobi-Ferreday"));
    EXPECT_THAT(found("0771"), IsEmpty());

    mine.name = "P. Lindobi";
    const auto refused = customers().update(mine);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code(), Code::ChangedMeanwhile);
    EXPECT_EQ(refused.error().text("mine"), "P. Lindobi, 0771");
    EXPECT_EQ(refused.error().text("theirs"), "Petra Lindobi-Ferreday, petra@harbour.example, 0772");
    EXPECT_EQ(customers().get(id).value().name, theirs.name);

    mine.id = CustomerId::of(987'654);
    EXPECT_EQ(customers().update(mine).error().code(), Code::NotFound);
}

TEST_P(CustomersTest, AreFoundByEveryWordInAnyOrderAndListedByName) {
    add("Zoë Ångström");
    add("Angela Storm");
    add("Ánna Zoega");
    EXPECT_THAT(found("angstrom zoe"), ElementsAre("Zoë Ångström"));
    EXPECT_THAT(found("ZOË"), ElementsAre("Ánna Zoega", "Zoë Ångström"));
    EXPECT_THAT(found("  ang "), ElementsAre("Angela Storm", "Zoë Ångström"));
    EXPECT_THAT(found("zoe storm"), IsEmpty());
    EXPECT_THAT(found(""), ElementsAre("Angela Storm", "Ánna Zoega", "Zoë Ångström"));
    EXPECT_THAT(found("", 2), ElementsAre("Angela Storm", "Ánna Zoega"));
    EXPECT_THAT(found("", 0), IsEmpty());
    EXPECT_THAT(found(std::string_view("zoe\0", 4)), ElementsAre("Ánna Zoega", "Zoë Ångström"));
}

TEST_P(CustomersTest, AreFoundByMoreWordsThanOneStatementTakes) {
    add("Ana Bea Carla Dora Eva Fay");
    add("Ana Bea Carla Dora Eva");
    addWithPhone("Somebody Else", "11 22 33 44 55");
    EXPECT_THAT(found("fay eva dora carla bea ana"), ElementsAre("Ana Bea Carla Dora Eva Fay"));
    EXPECT_THAT(found("eva dora carla bea ana", 1), ElementsAre("Ana Bea Carla Dora Eva"));
    EXPECT_THAT(found("ana bea carla dora gus"), IsEmpty());
    EXPECT_THAT(found("11 22 33 44 55"), ElementsAre("Somebody Else"));
}

TEST_P(CustomersTest, AreFoundByTheDigitsOfAPhoneNumber) {
    addWithPhone("Petra Lindobi", "+44 (0)20 7946 0771");
    add("Dario Penhallow", {{Contact::Kind::Email, "dario0771@harbour.example"}, {Contact::Kind::Phone, "0990"}});
    add("Team 77");
    EXPECT_THAT(found("0771"), ElementsAre("Petra Lindobi"));
    EXPECT_THAT(found("20-79 46"), ElementsAre("Petra Lindobi"));
    EXPECT_THAT(found("77"), ElementsAre("Petra Lindobi", "Team 77"));
    EXPECT_THAT(found("7"), ElementsAre("Team 77")); // a single digit looks in names only
    const auto petra = customers().find("0771", 5);
    ASSERT_EQ(petra.size(), 1U);
    EXPECT_THAT(petra.front().contacts, ElementsAre(Contact{Contact::Kind::Phone, "+44 (0)20 7946 0771"}));
}

TEST_P(CustomersTest, AreFoundByWhatWasTypedAndNotByWhatSqlMakesOfIt) {
    add("100% Rackets");
    add("1000 Rackets");
    add("Snake_Case");
    add("SnakeXCase");
    add("What! Ltd");
    add("Back\\slash");
    EXPECT_THAT(found("100%"), ElementsAre("100% Rackets"));
    EXPECT_THAT(found("%"), ElementsAre("100% Rackets"));
    EXPECT_THAT(found("snake_case"), ElementsAre("Snake_Case"));
    EXPECT_THAT(found("_"), ElementsAre("Snake_Case"));
    EXPECT_THAT(found("what!"), ElementsAre("What! Ltd"));
    EXPECT_THAT(found("\\"), ElementsAre("Back\\slash"));

    const std::string rascal = "Robert'); DROP TABLE customer;--";
    const auto id = add(rascal, {{Contact::Kind::Other, "' OR '1'='1"}});
    EXPECT_EQ(customers().get(id).value().name, rascal);
    EXPECT_THAT(found("' OR '1'='1"), IsEmpty());
    EXPECT_THAT(found("robert'); drop"), ElementsAre(rascal));
    const auto named = add(":name $1 ? ::text {0}");
    EXPECT_EQ(customers().get(named).value().name, ":name $1 ? ::text {0}");
}

TEST_P(CustomersTest, NobodyIsFoundByMoreThanANameCanHold) {
    // SQLite takes no pattern of more than 50 000 bytes (sqlite.org, "Implementation Limits", 8).
    addWithPhone("Petra Lindobi", "0771");
    EXPECT_THAT(found(times(60'000, "p")), IsEmpty());
    EXPECT_THAT(found(times(30'000, "_")), IsEmpty());
    EXPECT_THAT(found(times(60'000, "7")), IsEmpty());
    EXPECT_THAT(found("petra " + times(60'000, "p")), IsEmpty());
    EXPECT_THAT(found(times(60'000, "p") + " 0771"), ElementsAre("Petra Lindobi")) << "by her number";
    const std::string longest = times(200, "\uFDFA"); // no letter is spelled out longer
    add(longest);
    EXPECT_THAT(found(longest), ElementsAre(longest));
}

TEST_P(CustomersTest, WhoWasRemovedIsNotFoundButStillThere) {
    const auto id = addWithPhone("Petra Lindobi", "0771");
    connection().execute("UPDATE customer SET removed_at = 1");
    EXPECT_THAT(found("petra"), IsEmpty());
    EXPECT_THAT(found("0771"), IsEmpty());
    EXPECT_TRUE(customers().get(id));
}

TEST_P(CustomersTest, HaveRacketsToldApartByAMark) {
    const auto owner = add("Petra Lindobi");
    FrameModel model;
    model.name = "Tarn Ridge 100";
    const auto tarn = frames().add(model);
    model.name = "Aldermoor 98";
    const auto aldermoor = frames().add(model);

    const auto b = customers().addRacket({std::nullopt, owner, aldermoor, "B"}, "b");
    const auto only = customers().addRacket({std::nullopt, owner, tarn, ""}, "only");
    const auto a = customers().addRacket({std::nullopt, owner, aldermoor, "A"}, "a");
    std::vector<std::optional<RacketId>> ids;
    for (const Racket& racket : customers().racketsOf(owner)) {
        EXPECT_EQ(racket.customer, owner);
        ids.push_back(racket.id);
    }
    EXPECT_THAT(ids, ElementsAre(a, b, only));

    const auto stored = customers().racket(b).value();
    EXPECT_EQ(stored.frame, aldermoor);
    EXPECT_EQ(stored.mark, "B");
    EXPECT_FALSE(customers().racket(RacketId::of(987'654)));
    EXPECT_THAT(customers().racketsOf(add("Somebody Else")), IsEmpty());
    EXPECT_NE(guardOf([&] { (void)customers().addRacket({std::nullopt, owner, aldermoor, "B"}, "b again"); }), "");
    EXPECT_NE(guardOf([&] {
                  (void)customers().addRacket({std::nullopt, owner, FrameModelId::of(987'654), ""}, "lost");
              }),
              "");
}

TEST_P(CustomersTest, WhatIsAddedIsFoundByItsRequestKeyAndTheKeyIsUsedOnce) {
    const auto owner = customers().add({std::nullopt, "Petra Lindobi", {}, 0}, "her form");
    FrameModel model;
    model.name = "Tarn Ridge 100";
    const auto tarn = frames().add(model);
    const auto racket = customers().addRacket({std::nullopt, owner, tarn, "A"}, "its form");
    EXPECT_EQ(customers().byRequestKey("her form"), owner);
    EXPECT_EQ(customers().racketByRequestKey("its form"), racket);
    EXPECT_FALSE(customers().byRequestKey("its form"));
    EXPECT_FALSE(customers().racketByRequestKey("her form"));
    EXPECT_NE(guardOf([&] { (void)customers().add({std::nullopt, "Petra Lindobi", {}, 0}, "her form"); }), "");
    EXPECT_NE(guardOf([&] { (void)customers().addRacket({std::nullopt, owner, tarn, "B"}, "its form"); }), "");
}

} // namespace rw::sql::test
