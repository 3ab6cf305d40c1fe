// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/job_course.h"
#include "core/desk/lookups.h"
#include "core/desk/tagged_job.h"
#include "tests/core/desk/demo_fixture.h"

#include <algorithm>

// People, rackets and frames; handing over; history.
namespace rw::desk::test {
namespace {

class Counter : public DemoInMemory {
protected:
    /// Through a form of its own, or `form`.
    Result<CustomerId> add(const Customer& customer, const std::string& form = {}) {
        return write([&](Transaction& t) { return addCustomer(t, {form.empty() ? newForm() : form, customer}); });
    }
    Result<RacketId> add(AddRacket racket) {
        if (racket.requestKey.empty()) {
            racket.requestKey = newForm();
        }
        return write([&](Transaction& t) { return addRacket(t, racket); });
    }
    Result<FrameModelId> add(const FrameModel& frame) {
        return write([&](Transaction& t) { return addFrame(t, frame); });
    }
    JobId onRack() {
        return read([](Transaction& t) { return onTheRack(t); })->front().id;
    }

private:
    std::string newForm() { return "form-" + std::to_string(++m_forms); }
    int m_forms = 0;
};

TEST_F(Counter, PeopleAreFoundByNameOrPhone) {
    EXPECT_EQ(personCalled("lind pet").customer.name, "Petra Lindobi");
    EXPECT_EQ(personCalled("0862").customer.name, "Tomas Ferreday");
    EXPECT_TRUE(read([](Transaction& t) { return findPeople(t, "nobody such"); })->empty());
    EXPECT_EQ(read([](Transaction& t) { return findPeople(t, "", 5); })->size(), 5U);
    EXPECT_EQ(refusalOf(read([](Transaction& t) { return person(t, CustomerId::of(999'999)); })), Code::NotFound);
}

TEST_F(Counter, AListHasTheFirstWholeAndNamesTheRacketsOfTheOthers) {
    const auto listed = read([](Transaction& t) { return listPeople(t, "a"); });
    ASSERT_GE(listed->size(), 2U);
    bool isFirst = true;
    for (const PersonFound& person : *listed) {
        const PersonFound whole = *read([&](Transaction& t) { return desk::person(t, *person.customer.id); });
        EXPECT_EQ(person.customer.name, whole.customer.name);
        EXPECT_EQ(person.isWhole, isFirst);
        ASSERT_EQ(person.rackets.size(), whole.rackets.size());
        for (std::size_t i = 0; isFirst && i < whole.rackets.size(); ++i) {
            EXPECT_EQ(person.rackets[i].newest, whole.rackets[i].newest);
        }
        isFirst = false;
    }
    EXPECT_TRUE(read([](Transaction& t) { return listPeople(t, "nobody such"); })->empty());
}

TEST_F(Counter, ATagsNumberLeadsToItsJobAndNothingElseDoes) {
    const auto tagged = [&](std::string_view text) { return *read([&](Transaction& t) { return jobByTag(t, text); }); };
    const JobId hanging = onRack();
    const Job job = *read([&](Transaction& t) { return jobOf(t, hanging); });
    const auto found = tagged(std::to_string(job.number));
    ASSERT_TRUE(found);
    EXPECT_EQ(found->job.id, hanging);
    EXPECT_EQ(found->person.customer.id, job.customer);
    EXPECT_EQ(found->racket().racket.id, job.racket);
    EXPECT_TRUE(found->isInTheShop());
    for (const std::string& text :
         {std::string(), std::string("999999"), '0' + std::to_string(job.number), std::to_string(job.number) + 'a',
          '-' + std::to_string(job.number), std::string("99999999999999999999")}) {
        EXPECT_FALSE(tagged(text)) << text;
    }
}

TEST_F(Counter, ALastJobIsTheLastStrungOne) {
    const RacketSummary waiting = racketOf("Oakhanger", "Aldermoor 98", "A");
    EXPECT_EQ(waiting.lastJob->state, JobState::Collected) << "not the one that waits";
    const RacketSummary fresh = racketOf("Ferreday", "Aldermoor 98");
    EXPECT_FALSE(fresh.lastJob.has_value());
    logged(fresh, draftFor(fresh, "K", "L", "50", "52"), "first");
    EXPECT_EQ(racketOf("Ferreday", "Aldermoor 98").lastJob->state, JobState::Logged) << "better than nothing";
}

TEST_F(Counter, ARacketThatIsHereStandsAfterThoseThatAreNot) {
    const auto petras = [&] { return personCalled("lind pet").rackets; };
    ASSERT_EQ(petras().size(), 2U);
    const RacketSummary b = petras().front();
    ASSERT_EQ(b.racket.mark, "B") << "it was here last";
    EXPECT_FALSE(b.here);
    const Job job = logged(b, draftFor(b, "L", "L", "50", "50"), "here");
    EXPECT_EQ(petras().front().racket.mark, "A");
    EXPECT_FALSE(petras().front().here);
    ASSERT_TRUE(petras().back().here);
    EXPECT_EQ(petras().back().here->number, job.number);
    EXPECT_EQ(petras().back().here->state, JobState::Logged);

    const Job second = logged(b, draftFor(b, "L", "L", "50", "50"), "here twice");
    EXPECT_EQ(petras().back().here->number, second.number);
    for (const Job& each : {job, second}) {
        const JobStep step{*each.id, by("counter")};
        ASSERT_TRUE(write([&](Transaction& t) { return withdrawJob(t, step); }));
    }
    EXPECT_EQ(petras().front().racket.mark, "B");
    EXPECT_FALSE(petras().front().here);
}

TEST_F(Counter, ARacketOnTheRackIsHereUntilItIsHandedOver) {
    const JobId job = onRack();
    const auto owner = look([&](Transaction& t) { return t.jobs().get(job); })->customer;
    const auto isHere = [&] {
        const auto found = read([&](Transaction& t) { return person(t, owner); });
        return std::ranges::any_of(found->rackets,
                                   [&](const RacketSummary& racket) { return racket.here && racket.here->id == job; });
    };
    EXPECT_TRUE(isHere());
    const HandOver command{job, {}, std::nullopt, "", by("counter")};
    ASSERT_TRUE(write([&](Transaction& t) { return handOver(t, command); }));
    EXPECT_FALSE(isHere());
}

TEST_F(Counter, ANameDoesNotTurnItsLineAround) {
    const auto id =
        add(Customer{std::nullopt, "\u202ENira Vell\u202C", {{Contact::Kind::Phone, "\u20660700 1\u2069"}}});
    ASSERT_TRUE(id);
    const Customer kept = read([&](Transaction& t) { return person(t, *id); })->customer;
    EXPECT_EQ(kept.name, "Nira Vell");
    EXPECT_EQ(kept.contacts.front().text, "0700 1");
    EXPECT_EQ(refusalOf(add(Customer{std::nullopt, " \u202E ", {}})), Code::Missing);
}

TEST_F(Counter, NamesHaveSomethingInThemAndAnEnd) {
    EXPECT_EQ(refusalOf(add(Customer{std::nullopt, " \t ", {}})), Code::Missing);
    const auto tooLong = add(Customer{std::nullopt, std::string(10'000, 'x'), {}});
    EXPECT_EQ(refusalOf(tooLong), Code::TooLong);
    EXPECT_EQ(tooLong.error().number("length"), 10'000);
    EXPECT_EQ(tooLong.error().number("most"), 200);
    std::string bats; // 200 characters, 800 bytes
    for (int i = 0; i < 200; ++i) {
        bats += "\U0001F987";
    }
    EXPECT_TRUE(add(Customer{std::nullopt, bats, {}}));
    EXPECT_EQ(refusalOf(add(Customer{std::nullopt, bats + "x", {}})), Code::TooLong);
    EXPECT_EQ(refusalOf(add(Customer{std::nullopt, "A", {{Contact::Kind::Phone, ""}}})), Code::Missing);
    const auto kept = add(Customer{std::nullopt, "  Zoë Ångström\u00a0", {{Contact::Kind::Phone, " 07700 900111 "}}});
    ASSERT_TRUE(kept.has_value());
    EXPECT_EQ(personCalled("zoe angstrom").customer.name, "Zoë Ångström");
    EXPECT_EQ(personCalled("900111").customer.contacts.front().text, "07700 900111");
}

// The answer to the first may be lost when a station loses its ledger just after the commit.
TEST_F(Counter, WhatOneFormAddsTwiceStaysOne) {
    const Customer zoe{std::nullopt, "Zoë Marchbanks", {{Contact::Kind::Phone, "07700 900111"}}};
    const auto first = add(zoe, "her form");
    ASSERT_TRUE(first.has_value());
    EXPECT_EQ(*add(zoe, "her form"), *first);
    FrameModel frame;
    frame.name = " Fennel Prow 102";
    const AddRacket bring{"its form", *first, frame, "A "};
    const auto racket = add(bring);
    ASSERT_TRUE(racket.has_value());
    EXPECT_EQ(*add(bring), *racket);
    EXPECT_EQ(personCalled("Marchbanks").rackets.size(), 1U);
    const auto frames = read([](Transaction& t) { return findFrames(t, "fennel prow"); });
    ASSERT_EQ(frames->size(), 1U);
    EXPECT_EQ(*add({"its form", *first, *frames->front().id, "A"}), *racket) << "a known frame by now";
}

TEST_F(Counter, AFormThatAddedSaysSoRatherThanLosingOtherWords) {
    const auto zoe = add(Customer{std::nullopt, "Zoe Marchbanks", {}}, "her form");
    const auto again = add(Customer{std::nullopt, "Zoë Marchbanks", {}}, "her form");
    ASSERT_EQ(refusalOf(again), Code::ChangedMeanwhile);
    EXPECT_EQ(again.error().text("added"), "Zoe Marchbanks");
    const FrameModelId frame = racketOf("Lindobi", "Aldermoor 98", "A").racket.frame;
    ASSERT_TRUE(add({"its form", *zoe, frame, "A"}));
    const auto other = add({"its form", *zoe, frame, "B"});
    ASSERT_EQ(refusalOf(other), Code::ChangedMeanwhile);
    EXPECT_EQ(other.error().text("added"), "Aldermoor 98 A");
    EXPECT_EQ(personCalled("Marchbanks").rackets.size(), 1U);
    EXPECT_EQ(refusalOf(add(Customer{std::nullopt, "Zoe", {}}, " ")), Code::Missing);
    EXPECT_EQ(refusalOf(add({" ", *zoe, frame, "C"})), Code::Missing);
}

TEST_F(Counter, AlikeIsNotTheSame) {
    const Customer zoe{std::nullopt, "Zoë Marchbanks", {}};
    const auto first = add(zoe);
    EXPECT_NE(*add(zoe), *first) << "two namesakes without a number are two people";
    const FrameModelId frame = racketOf("Lindobi", "Aldermoor 98", "A").racket.frame;
    ASSERT_TRUE(add({"", *first, frame, ""}));
    EXPECT_EQ(refusalOf(add({"", *first, frame, ""})), Code::Missing) << "two alike, brought together, need a mark";
    EXPECT_TRUE(add({"", *first, frame, "B"}));
    EXPECT_EQ(refusalOf(add({"", *first, frame, "B"})), Code::ImpossibleValue);
}

TEST_F(Counter, ARacketThatWasHereLastComesFirst) {
    const auto marks = [&] {
        std::string text;
        for (const RacketSummary& racket : personCalled("Castelmere").rackets) {
            text += racket.racket.mark;
        }
        return text;
    };
    ASSERT_EQ(marks().size(), 2U);
    const std::string last = marks().substr(1);
    const RacketSummary racket = racketOf("Castelmere", "Aldermoor 98", last);
    logged(racket, draftFor(racket, "L", "L", "52", "50"), "now");
    EXPECT_EQ(marks().substr(0, 1), last);
}

TEST_F(Counter, NamesakesOnTheRackAreTwoPeopleWithTheirNumbers) {
    const auto rack = read([](Transaction& t) { return onTheRack(t); });
    ASSERT_FALSE(rack->empty());
    for (const JobLine& line : *rack) {
        const Customer whose = look([&](Transaction& t) { return *t.customers().get(line.customerId); });
        EXPECT_EQ(line.customer, whose.name);
        const auto phone = std::ranges::find(whose.contacts, Contact::Kind::Phone, &Contact::kind);
        EXPECT_EQ(line.phone, phone == whose.contacts.end() ? "" : phone->text);
    }
}

TEST_F(Counter, TwinsNeedAMarkEach) {
    const RacketSummary a = racketOf("Lindobi", "Aldermoor 98", "A");
    AddRacket third{"", a.racket.customer, a.racket.frame, ""};
    EXPECT_EQ(refusalOf(add(third)), Code::Missing);
    third.mark = " A ";
    EXPECT_EQ(refusalOf(add(third)), Code::ImpossibleValue);
    third.mark = std::string(41, 'm');
    EXPECT_EQ(refusalOf(add(third)), Code::TooLong);
    third.mark = "C";
    EXPECT_TRUE(add(third));
    EXPECT_EQ(refusalOf(add({"", CustomerId::of(999'999), a.racket.frame, "D"})), Code::NotFound);
    EXPECT_EQ(refusalOf(add({"", a.racket.customer, FrameModelId::of(999'999), "D"})), Code::NotFound);
}

TEST_F(Counter, AFrameNeedsAnameASportAndAPattern) {
    FrameModel frame;
    EXPECT_EQ(refusalOf(add(frame)), Code::Missing);
    frame.name = std::string(81, 'f');
    EXPECT_EQ(refusalOf(add(frame)), Code::TooLong);
    frame.name = "Unheard Of 1";
    EXPECT_TRUE(add(frame));
    frame.pattern.mains = 31;
    EXPECT_EQ(refusalOf(add(frame)), Code::ImpossibleValue);
    frame.pattern.mains = 16;
    frame.hoop.lengthMm = 32.9; // in centimetres, by mistake
    EXPECT_EQ(refusalOf(add(frame)), Code::ImpossibleValue);
    frame.hoop.lengthMm = std::nullopt;
    frame.marked = {lb("60"), lb("50")};
    EXPECT_EQ(refusalOf(add(frame)), Code::ImpossibleValue);
    EXPECT_EQ(read([](Transaction& t) { return findFrames(t, "unheard"); })->size(), 1U);
}

TEST_F(Counter, HandedOverOnceAndPaidOnce) {
    const JobId job = onRack();
    const Money total = look([&](Transaction& t) { return *t.jobs().get(job); }).total;
    const HandOver command{job, "her brother", total, "card", by("counter")};
    const auto give = [&](const HandOver& hand) { return write([&](Transaction& t) { return handOver(t, hand); }); };

    HandOver odd = command;
    odd.payment = Money::fromMinor(100, *Currency::fromCode("EUR"));
    EXPECT_EQ(refusalOf(give(odd)), Code::CurrencyMismatch);
    odd = command;
    odd.payment = pounds(-100);
    EXPECT_EQ(refusalOf(give(odd)), Code::ImpossibleValue);
    odd = command;
    odd.way = "";
    EXPECT_EQ(refusalOf(give(odd)), Code::Missing);
    odd = command;
    odd.takenBy = std::string(201, 'x');
    EXPECT_EQ(refusalOf(give(odd)), Code::TooLong);
    EXPECT_TRUE(look([&](Transaction& t) { return t.jobs().paid(job); }).minor() == 0) << "nothing of a refused one";

    const auto done = give(command);
    ASSERT_TRUE(done.has_value());
    EXPECT_EQ(done->job.state, JobState::Collected);
    EXPECT_EQ(done->job.collected, kNow);
    EXPECT_FALSE(done->already);
    EXPECT_EQ(done->paidNow, total);
    EXPECT_EQ(done->owed(), pounds(0));
    const auto again = give(command);
    ASSERT_TRUE(again.has_value());
    EXPECT_TRUE(again->already);
    EXPECT_EQ(again->paidNow, std::nullopt) << "nothing was booked now";
    EXPECT_EQ(again->paid, total);
    EXPECT_EQ(again->job.collected, kNow);
    EXPECT_EQ(look([&](Transaction& t) { return t.jobs().paid(job); }), total);
    EXPECT_EQ(look([&](Transaction& t) { return t.jobs().handover(job); }), (Handover{"her brother", false}));
    const JobId waiting = read([](Transaction& t) { return benchQueue(t); })->front().id;
    EXPECT_EQ(refusalOf(give({waiting, "", std::nullopt, "", by("counter")})), Code::WrongState);
}

TEST_F(Counter, WhatWentHomeUnpaidStaysKnownWithWhatWasSaid) {
    const auto rack = read([](Transaction& t) { return onTheRack(t); });
    ASSERT_GE(rack->size(), 3U);
    EXPECT_TRUE(read([](Transaction& t) { return collectedUnpaid(t); })->empty());
    const auto give = [&](std::size_t which, const std::optional<Money>& payment, bool onAccount) {
        const HandOver command{(*rack)[which].id, {}, payment, payment ? "cash" : "", by("counter"), onAccount};
        return write([&](Transaction& t) { return handOver(t, command); });
    };
    const Money total = give(0, std::nullopt, true)->job.total;
    ASSERT_TRUE(give(1, pounds(500), false));
    const auto whole = look([&](Transaction& t) { return t.jobs().get((*rack)[2].id); });
    ASSERT_TRUE(give(2, whole->total, false));

    const auto unpaid = read([](Transaction& t) { return collectedUnpaid(t); });
    ASSERT_EQ(unpaid->size(), 2U);
    const auto of = [&](std::size_t which) {
        return *std::ranges::find(*unpaid, (*rack)[which].id, [](const UnpaidJob& job) { return job.job.id; });
    };
    EXPECT_EQ(of(0).owed, total);
    EXPECT_TRUE(of(0).handover.onAccount);
    EXPECT_EQ(of(0).collected, kNow);
    EXPECT_FALSE(of(1).handover.onAccount) << "nothing was said of the rest";
}

TEST_F(Counter, HistoryIsEachRacketsOwn) {
    const RacketSummary a = racketOf("Castelmere", "Aldermoor 98", "A");
    const auto ofRacket = read([&](Transaction& t) { return historyOfRacket(t, *a.racket.id); });
    ASSERT_EQ(ofRacket->size(), 3U);
    for (const HistoryEntry& entry : *ofRacket) {
        EXPECT_EQ(entry.mark, "A");
        EXPECT_EQ(entry.customer, "Ivo Castelmere");
        EXPECT_EQ(entry.frame, "Aldermoor 98");
        EXPECT_EQ(entry.strings.front().code, "L");
    }
    EXPECT_EQ(ofRacket->front().machine, "") << "not strung yet";
    EXPECT_EQ((*ofRacket)[1].machine, "Bench A");
    const auto ofCustomer = read([&](Transaction& t) { return historyOfCustomer(t, a.racket.customer); });
    EXPECT_EQ(ofCustomer->size(), 6U);
    const auto ofFrame = read([&](Transaction& t) { return historyOfFrame(t, a.racket.frame, 7); });
    EXPECT_EQ(ofFrame->size(), 7U);
}

} // namespace
} // namespace rw::desk::test
