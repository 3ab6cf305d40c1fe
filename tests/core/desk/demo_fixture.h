// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/bench.h"
#include "core/desk/counter.h"
#include "core/desk/demo_shop.h"
#include "core/desk/intake.h"
#include "core/desk/stockroom.h"
#include "core/desk/unit_of_work.h"
#include "tests/core/desk/stocked_shop.h"

#include <gtest/gtest.h>

#include <cmath>
#include <optional>
#include <string>
#include <string_view>

namespace rw::desk::test {

inline Tension lb(std::string_view text) { return *Tension::tryParse(text, TensionUnit::Pound); }
inline Length metres(double m) { return Length::fromMillimetres(std::llround(m * 1000)); }
inline Money pounds(std::int64_t pence) { return Money::fromMinor(pence, Currency::pounds()); }

/// Why it was refused; nothing when it was not.
template<class T>
std::optional<Code> refusalOf(const Result<T>& result) {
    return result ? std::nullopt : std::optional(result.error().code());
}

/// Harbour Lane Strings on a Thursday at eleven. Each call is one transaction, as at a station.
class DemoShop : public ::testing::Test {
protected:
    [[nodiscard]] virtual Ledger& ledger() = 0;

    template<class Work>
    auto read(Work work) {
        return inTransaction(ledger(), Access::Read, work);
    }
    template<class Work>
    auto write(Work work) {
        return inTransaction(ledger(), Access::Write, work);
    }
    /// What a repository holds now, without a use case.
    template<class Work>
    auto look(Work work) {
        const auto transaction = ledger().begin(Access::Read);
        return work(*transaction);
    }

    PersonFound personCalled(std::string_view text) {
        const auto found = read([&](Transaction& t) { return findPeople(t, text); });
        EXPECT_EQ(found->size(), 1U) << text;
        return found->front();
    }
    RacketSummary racketOf(std::string_view person, std::string_view frame, std::string_view mark = "") {
        for (const RacketSummary& racket : personCalled(person).rackets) {
            if (racket.frame.name == frame && racket.racket.mark == mark) {
                return racket;
            }
        }
        throw std::invalid_argument("no such racket in the demo shop");
    }
    StringArticle string(std::string_view code) {
        for (StringArticle& article : look([](Transaction& t) { return t.strings().all(); })) {
            if (article.code == code) {
                return article;
            }
        }
        throw std::invalid_argument("no such string in the demo shop");
    }
    Lot lot(std::string_view tag) {
        return *look([&](Transaction& t) { return t.lots().byTag(tag); });
    }
    Machine machine(std::string_view name) {
        for (Machine& found : look([](Transaction& t) { return t.shop().machines(); })) {
            if (found.name == name) {
                return found;
            }
        }
        throw std::invalid_argument("no such machine in the demo shop");
    }
    By by(std::string_view station = "bench") {
        return {*look([](Transaction& t) { return t.shop().staff(); })[1].id, std::string(station), kNow};
    }

    WantedString off(std::string_view code) { return {*string(code).id, PieceSource::ShopLot, std::nullopt}; }
    IntakeDraft draftFor(const RacketSummary& racket, std::string_view mains, std::string_view crosses,
                         std::string_view mainsTension, std::string_view crossesTension) {
        return {.frame = *racket.frame.id,
                .racket = racket.racket.id,
                .method = std::nullopt,
                .route = std::nullopt,
                .shortSide = std::nullopt,
                .mains = off(mains),
                .crosses = mains == crosses ? std::nullopt : std::optional(off(crosses)),
                .tensions = {lb(mainsTension), lb(crossesTension)},
                .extras = {}};
    }
    Result<IntakePreview> preview(const IntakeDraft& draft) {
        return read([&](Transaction& t) { return previewIntake(t, draft, kNow); });
    }
    LogJob logging(const RacketSummary& racket, const IntakeDraft& draft, std::string_view key) {
        return {.requestKey = std::string(key),
                .customer = racket.racket.customer,
                .racket = *racket.racket.id,
                .draft = draft,
                .note = {},
                .promised = std::nullopt,
                .by = by("counter")};
    }
    Job logged(const RacketSummary& racket, const IntakeDraft& draft, std::string_view key) {
        const LogJob command = logging(racket, draft, key);
        const auto job = write([&](Transaction& t) { return logJob(t, command); });
        EXPECT_TRUE(job.has_value());
        return *job;
    }
    JobCard card(JobId job, const std::optional<MachineId>& at = std::nullopt) {
        const auto found = read([&](Transaction& t) { return jobCard(t, job, at); });
        EXPECT_TRUE(found.has_value());
        return *found;
    }
    Result<Job> take(JobId job, std::string_view bench = "Bench A") {
        const TakeJob command{job, *machine(bench).id, by()};
        return write([&](Transaction& t) { return takeJob(t, command); });
    }
    ConfirmCut cutting(JobId job, PieceRole role, Length length, int attempt = 1) {
        return {.job = job,
                .role = role,
                .attempt = attempt,
                .lot = std::nullopt,
                .length = length,
                .measuredLeft = std::nullopt,
                .by = by()};
    }
    Result<CutDone> cut(const ConfirmCut& command) {
        return write([&](Transaction& t) { return confirmCut(t, command); });
    }
    Result<Job> lose(JobId job, PieceRole role, int attempt, LostReason reason) {
        const LoseLength command{job, role, attempt, reason, by()};
        return write([&](Transaction& t) { return loseLength(t, command); });
    }
    Result<Job> finish(JobId job, const TensionPair& strung, std::string_view bench = "Bench A",
                       std::string_view note = "") {
        const FinishJob command{job, strung, *machine(bench).id, std::string(note), by()};
        return write([&](Transaction& t) { return finishJob(t, command); });
    }

    ReceiveLot delivery(std::string_view code, std::string_view tag, Length nominal,
                        const std::optional<CustomerId>& owner = std::nullopt) {
        return {.tag = std::string(tag),
                .article = *string(code).id,
                .owner = owner,
                .nominal = nominal,
                .price = pounds(0),
                .shipping = pounds(0),
                .batch = {},
                .by = by("stockroom")};
    }
    Result<Lot> receive(const ReceiveLot& command) {
        return write([&](Transaction& t) { return receiveLot(t, command); });
    }
    Result<Lot> correct(std::string_view tag, Length measured) {
        const CorrectLot command{*lot(tag).id, measured, by("stockroom")};
        return write([&](Transaction& t) { return correctLot(t, command); });
    }

    /// Nobody insists any more on that lot for the jobs that wait for it.
    void letGoOf(std::string_view tag) {
        const Lot chosen = lot(tag);
        (void)write([&](Transaction& t) -> Result<void> {
            for (const WaitingCut& cut : t.lots().waitingCuts(chosen.article)) {
                if (cut.lot == chosen.id) {
                    t.jobs().plan(cut.piece, cut.lot, cut.length, false);
                }
            }
            return {};
        });
    }

    /// How many rows tell of what happened: nothing was written while this stays as it is.
    std::size_t factsOf(JobId job) {
        return look([&](Transaction& t) {
            std::size_t facts = t.jobs().events(job).size();
            for (const std::string_view tag : {"K-2", "K-4", "K-7", "L-2", "L-3", "T-1", "W-1"}) {
                facts += t.lots().movements(*t.lots().byTag(tag)->id).size();
            }
            return facts;
        });
    }
};

/// The shop in memory, where a test may also reach into the rows.
class DemoInMemory : public DemoShop {
protected:
    void SetUp() override { fake.rows = stockedRows(); }
    Ledger& ledger() override { return fake; }

    FakeLedger fake;
};

/// The shop in memory and on both engines, which must not differ.
class DemoEverywhere : public DemoShop, public ::testing::WithParamInterface<Keeping> {
protected:
    void SetUp() override { m_shop = stockedShop(GetParam()); }
    Ledger& ledger() override { return m_shop->ledger(); }

private:
    std::unique_ptr<StockedShop> m_shop;
};

} // namespace rw::desk::test

#define IN_MEMORY_AND_ON_BOTH_ENGINES(Suite)                                                                           \
    INSTANTIATE_TEST_SUITE_P(Kept, Suite, testing::Values(Keeping::Memory, Keeping::Sqlite, Keeping::Postgres),        \
                             keepingName)
#define IN_MEMORY_AND_IN_A_FILE(Suite)                                                                                 \
    INSTANTIATE_TEST_SUITE_P(Kept, Suite, testing::Values(Keeping::Memory, Keeping::Sqlite), keepingName)
