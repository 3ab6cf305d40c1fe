// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/bench.h"
#include "core/desk/counter.h"
#include "core/desk/demo_shop.h"
#include "core/desk/intake.h"
#include "core/desk/stockroom.h"
#include "core/desk/unit_of_work.h"
#include "tests/core/desk/fake_ledger.h"

#include <gtest/gtest.h>

#include <string>
#include <string_view>

namespace rw::desk::test {

constexpr Instant kNow = std::chrono::sys_days(std::chrono::year(2026) / 3 / 12) + std::chrono::hours(11);

inline Tension lb(std::string_view text) { return *Tension::tryParse(text, TensionUnit::Pound); }
inline Length metres(double m) { return Length::fromMillimetres(static_cast<std::int64_t>(m * 1000 + 0.5)); }
inline Money pounds(std::int64_t pence) { return Money::fromMinor(pence, Currency::pounds()); }

/// Harbour Lane Strings on a ledger in memory, on a Thursday at eleven. Each call is one transaction, as at a station.
class DemoShop : public ::testing::Test {
protected:
    void SetUp() override {
        // stocked once for the whole program: the shop is the same each time
        static const Rows stocked = [] {
            FakeLedger empty;
            const auto done =
                inTransaction(empty, Access::Write, [](Transaction& t) { return stockDemoShop(t, kNow); });
            EXPECT_TRUE(done.has_value());
            return empty.rows;
        }();
        ledger.rows = stocked;
    }

    template<class Work>
    auto read(Work work) {
        return inTransaction(ledger, Access::Read, work);
    }
    template<class Work>
    auto write(Work work) {
        return inTransaction(ledger, Access::Write, work);
    }
    /// What a repository holds now, without a use case.
    template<class Work>
    auto look(Work work) {
        const auto transaction = ledger.begin(Access::Read);
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
        const auto job = write([&](Transaction& t) { return logJob(t, logging(racket, draft, key)); });
        EXPECT_TRUE(job.has_value());
        return *job;
    }
    JobCard card(JobId job, const std::optional<MachineId>& at = std::nullopt) {
        const auto found = read([&](Transaction& t) { return jobCard(t, job, at); });
        EXPECT_TRUE(found.has_value());
        return *found;
    }
    Result<Job> take(JobId job, std::string_view bench = "Bench A") {
        return write([&](Transaction& t) { return takeJob(t, {job, *machine(bench).id, by()}); });
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
        return write([&](Transaction& t) { return loseLength(t, {job, role, attempt, reason, by()}); });
    }
    Result<Job> finish(JobId job, const TensionPair& strung, std::string_view bench = "Bench A",
                       std::string_view note = "") {
        return write([&](Transaction& t) {
            return finishJob(t, {job, strung, *machine(bench).id, std::string(note), by()});
        });
    }

    FakeLedger ledger;
};

} // namespace rw::desk::test
