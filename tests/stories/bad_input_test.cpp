// SPDX-License-Identifier: GPL-3.0-or-later
// What people type that cannot be, through the use cases: refused with a reason, and nothing half done.
#include "tests/stories/step.h"
#include "tests/stories/story.h"

#include "core/desk/bench.h"
#include "core/desk/counter.h"
#include "core/desk/intake.h"
#include "core/desk/stockroom.h"

#include <gtest/gtest.h>

using namespace rw;
using namespace rw::stories;
using namespace std::chrono_literals;

namespace {

constexpr CivilDate kToday = std::chrono::year(2026) / 5 / 14;

class BadInput : public Story {
protected:
    void SetUp() override {
        Story::SetUp();
        write(ledger(), [&](desk::Transaction& open) -> Result<void> {
            m_k7 = putOnShelf(open, shop(), "K-7", shop().kestrelline, mm(200'000), mm(60'000), at(kToday, 10h));
            m_l3 = putOnShelf(open, shop(), "L-3", shop().larkspun, mm(200'000), mm(60'000), at(kToday, 10h));
            m_petra = customer(open, "Petra Lindobi");
            m_racket = racket(open, *m_petra, shop().aldermoor98, "A");
            return {};
        });
        must(perform(ledger(), {.kind = Step::Kind::Log, .key = "petra", .what = "whole"}));
        must(perform(ledger(), {.kind = Step::Kind::Take, .key = "petra"}));
        m_job = read(ledger(), [](desk::Transaction& open) { return Result<JobId>(*jobOf(open, "petra").id); });
    }

    /// The refusal of a use case, after which the ledger must hold what it held before.
    template<class Work>
    [[nodiscard]] Refusal refusalOf(Work&& work) {
        const std::string before = everything();
        const auto result = tryWrite(ledger(), std::forward<Work>(work));
        EXPECT_EQ(everything(), before);
        return result ? Refusal(Code::NotFound, {{"what", "the refusal"}}) : result.error();
    }

    [[nodiscard]] Code codeOfCut(Length length, std::optional<Length> measured = std::nullopt,
                                 std::optional<LotId> lot = std::nullopt, int attempt = 1) {
        return refusalOf([&](desk::Transaction& open) {
                   return desk::confirmCut(open, {*m_job, PieceRole::Whole, attempt, lot, length, measured, by()});
               })
            .code();
    }

    [[nodiscard]] Refusal refusalOfName(const std::string& name) {
        return refusalOf([&](desk::Transaction& open) {
            return desk::addCustomer(open, {"a form", {.id = std::nullopt, .name = name, .contacts = {}}});
        });
    }

    [[nodiscard]] By by() const { return shop().bench(at(kToday, 12h)); }

    std::optional<LotId> m_k7;
    std::optional<LotId> m_l3;
    std::optional<CustomerId> m_petra;
    std::optional<RacketId> m_racket;
    std::optional<JobId> m_job;
};

TEST_P(BadInput, ACutLongerThanTheReelWantsATapeFirst) {
    EXPECT_EQ(codeOfCut(mm(60'001)), Code::MeasureFirst);
    EXPECT_EQ(codeOfCut(mm(60'001), mm(60'000)), Code::NotEnoughString);
    EXPECT_EQ(codeOfCut(mm(2'000'000)), Code::OutOfRange);
    EXPECT_EQ(codeOfCut(mm(0)), Code::OutOfRange);
    EXPECT_EQ(codeOfCut(mm(-11'200)), Code::OutOfRange);
    EXPECT_EQ(codeOfCut(mm(11'200), mm(-1)), Code::OutOfRange);
}

TEST_P(BadInput, ACutOffTheWrongReelOrForAnOldCard) {
    EXPECT_EQ(codeOfCut(mm(11'200), std::nullopt, m_l3), Code::WrongLot);
    EXPECT_EQ(codeOfCut(mm(11'200), std::nullopt, LotId::of(999'999)), Code::NotFound);
    EXPECT_EQ(codeOfCut(mm(11'200), std::nullopt, std::nullopt, 2), Code::StaleAttempt);
    EXPECT_EQ(codeOfCut(mm(11'200), std::nullopt, std::nullopt, -1), Code::StaleAttempt);
}

TEST_P(BadInput, AnotherCutForWhatIsCutAlready) {
    must(perform(ledger(), {.kind = Step::Kind::Cut, .key = "petra", .length = mm(11'200)}));
    EXPECT_EQ(codeOfCut(mm(11'300)), Code::AlreadyCut);
    EXPECT_EQ(codeOfCut(mm(11'200), std::nullopt, m_l3), Code::AlreadyCut);
}

TEST_P(BadInput, AFinishBeforeTheCutOrATakeThatCannotBe) {
    const auto finish = [&](desk::Transaction& open) {
        return desk::finishJob(open, {*m_job, {lb(52), lb(50)}, shop().benchA, "", by()});
    };
    EXPECT_EQ(refusalOf(finish).code(), Code::NotCut);
    const auto handOver = [&](desk::Transaction& open) {
        return desk::handOver(open, {*m_job, "", pounds(2'700), "cash", by()});
    };
    EXPECT_EQ(refusalOf(handOver).code(), Code::WrongState);
    const auto takeElsewhere = [&](desk::Transaction& open) {
        return desk::takeJob(open, {*m_job, shop().benchB, by()});
    };
    EXPECT_EQ(refusalOf(takeElsewhere).code(), Code::WrongState);
}

TEST_P(BadInput, NamesThatAreTooLongOrNone) {
    const Refusal tooLong = refusalOfName(std::string(10'000, 'n'));
    EXPECT_EQ(tooLong.code(), Code::TooLong);
    EXPECT_EQ(tooLong.number("length"), 10'000);
    std::string emoji;
    for (int i = 0; i < 201; ++i) {
        emoji += "🎾";
    }
    EXPECT_EQ(refusalOfName(emoji).code(), Code::TooLong); // 201 characters, however many bytes
    EXPECT_EQ(refusalOfName("").code(), Code::Missing);
    EXPECT_EQ(refusalOfName(" \t ").code(), Code::Missing);
}

TEST_P(BadInput, BytesThatAreNoText) {
    EXPECT_EQ(refusalOfName(std::string("Petra\0Lindobi", 13)).code(), Code::Unreadable);
    EXPECT_EQ(refusalOfName("Petra \xff\xfe").code(), Code::Unreadable);
    EXPECT_EQ(refusalOfName("Petra \xed\xa0\x80").code(), Code::Unreadable); // half of a surrogate pair
}

TEST_P(BadInput, EveryTextHasItsBorder) {
    const std::string longWords(10'000, 'n');
    const auto tag = [&](desk::Transaction& open) {
        return desk::receiveLot(open, {.tag = longWords,
                                       .article = shop().kestrelline,
                                       .owner = std::nullopt,
                                       .nominal = mm(200'000),
                                       .price = pounds(1),
                                       .shipping = pounds(0),
                                       .batch = "",
                                       .by = by()});
    };
    EXPECT_EQ(refusalOf(tag).code(), Code::TooLong);
    const auto mark = [&](desk::Transaction& open) {
        return desk::addRacket(open, {"a form", *m_petra, shop().tarnRidge, longWords});
    };
    EXPECT_EQ(refusalOf(mark).code(), Code::TooLong);
    const auto contact = [&](desk::Transaction& open) {
        return desk::addCustomer(
            open, {"a form", {.id = std::nullopt, .name = "Ana", .contacts = {{Contact::Kind::Phone, longWords}}}});
    };
    EXPECT_EQ(refusalOf(contact).code(), Code::TooLong);
    const auto key = [&](desk::Transaction& open) {
        return desk::logJob(open, {.requestKey = longWords,
                                   .customer = *m_petra,
                                   .racket = *m_racket,
                                   .draft = {.frame = shop().aldermoor98,
                                             .racket = m_racket,
                                             .method = std::nullopt,
                                             .route = std::nullopt,
                                             .shortSide = std::nullopt,
                                             .mains = {.article = shop().kestrelline, .lot = std::nullopt},
                                             .crosses = std::nullopt,
                                             .tensions = {lb(52), lb(50)},
                                             .extras = {}},
                                   .note = "",
                                   .promised = std::nullopt,
                                   .by = by()});
    };
    EXPECT_EQ(refusalOf(key).code(), Code::TooLong);
    FrameModel frame;
    frame.name = longWords;
    EXPECT_EQ(refusalOf([&](desk::Transaction& open) { return desk::addFrame(open, frame); }).code(), Code::TooLong);
}

TEST_P(BadInput, NamesOfTheWholeWorldAreKeptAndFound) {
    const std::vector<std::pair<std::string, std::string>> names = {
        {"Zoë Ångström", "angstrom zoe"},
        {"🎾 Ana 🏸", "ana"},
        {"שירה לוין", "לוין"},
        {"محمد النجار", "النجار"},
        {"Wu", "wu"},
        {"O'Brien; DROP TABLE job;--", "o'brien"},
        {"100%_sure \\ \"quoted\"", "100%_sure"},
        {"李小龍", "小龍"},
        {"Weiß", "weiss"},
    };
    for (const auto& [name, typed] : names) {
        write(ledger(), [&](desk::Transaction& open) { return Result<CustomerId>(customer(open, name)); });
        const auto found = read(ledger(), [&](desk::Transaction& open) { return desk::findPeople(open, typed); });
        ASSERT_EQ(found.size(), 1U) << typed;
        EXPECT_EQ(found.front().customer.name, name);
    }
    const auto percent = read(ledger(), [](desk::Transaction& open) { return desk::findPeople(open, "%"); });
    EXPECT_EQ(percent.size(), 1U) << "a per cent sign is a character, not any";
}

TEST_P(BadInput, ALookForWhatIsNoNameFindsNobody) {
    const auto found =
        read(ledger(), [](desk::Transaction& open) { return desk::findPeople(open, std::string(10'000, 'n')); });
    EXPECT_TRUE(found.empty());
    const auto noText = read(ledger(), [](desk::Transaction& open) {
        return desk::findPeople(open, std::string("Petra\0Lindobi \xff", 15));
    });
    EXPECT_TRUE(noText.empty());
}

ON_BOTH_ENGINES(BadInput);

} // namespace
