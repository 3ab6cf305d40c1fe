// SPDX-License-Identifier: GPL-3.0-or-later
// What it costs to open the Stockroom of a shop with a year behind it: its shelf as it lies there, with what will
// become of each string, and with what to order. On a ledger file, as a shop has it.
#include "core/desk/demo_shop.h"
#include "core/desk/order_drafts.h"
#include "core/desk/running_short.h"
#include "core/desk/unit_of_work.h"
#include "core/sql/ledger_address.h"

#include <QCoreApplication>
#include <QTemporaryDir>

#include <benchmark/benchmark.h>

#include <string>
#include <utility>

namespace {

using namespace rw;

constexpr Instant kNow = std::chrono::sys_days(std::chrono::year(2026) / 3 / 12) + std::chrono::hours(11);
constexpr int kStrings = 40;
constexpr int kDays = 365;
constexpr int kJobsADay = 10;
constexpr Length kCut = Length::fromMillimetres(10'800);

/// The demo shop's own days, and a year before them in which each string was strung every fourth day.
class Year {
public:
    explicit Year(desk::Transaction& ledger)
        : m_ledger(ledger)
        , m_machine(*ledger.shop().machines().front().id)
        , m_staff(*ledger.shop().staff().front().id)
        , m_racket(ledger.customers().racketsOf(*ledger.customers().find("lindobi", 1).front().id).front()) {
        for (int i = static_cast<int>(m_ledger.strings().all().size()); i < kStrings; ++i) {
            addString(i);
        }
        for (int day = kDays; day > 0; --day) {
            for (int job = 0; job < kJobsADay; ++job) {
                const auto string = static_cast<std::size_t>((day * kJobsADay + job) % std::ssize(m_lots));
                addJob(m_lots[string], kNow - std::chrono::days(day) + std::chrono::minutes(job));
            }
        }
    }

private:
    void addString(int number) {
        StringArticle article = m_ledger.strings().all().front();
        article.code = "S" + std::to_string(number);
        const auto id = m_ledger.strings().add(article);
        const Length length = Length::fromMillimetres(1'200'000);
        const Instant came = kNow - std::chrono::days(kDays + 1);
        const auto lot = m_ledger.lots().add({.id = std::nullopt,
                                              .tag = article.code + "-1",
                                              .article = id,
                                              .owner = std::nullopt,
                                              .nominal = length,
                                              .price = Money::fromMinor(50'000, m_ledger.shop().currency()),
                                              .shipping = Money::zero(m_ledger.shop().currency()),
                                              .batch = {},
                                              .received = came,
                                              .closed = std::nullopt});
        m_ledger.lots().move({.id = std::nullopt,
                              .lot = lot,
                              .reason = MovementReason::Received,
                              .change = length,
                              .attempt = std::nullopt,
                              .lostReason = std::nullopt,
                              .corrects = std::nullopt,
                              .by = {m_staff, "stockroom", came},
                              .words = {}});
        m_lots.emplace_back(id, lot);
    }

    void addJob(const std::pair<StringArticleId, LotId>& from, Instant at) {
        const By by{m_staff, "bench", at};
        JobPiece piece{.id = std::nullopt,
                       .role = PieceRole::Whole,
                       .article = from.first,
                       .lot = from.second,
                       .planned = kCut,
                       .expected = kCut,
                       .attempts = {}};
        const JobId id = m_ledger.jobs().add(
            {.id = std::nullopt,
             .requestKey = "year " + std::to_string(++m_count),
             .customer = m_racket.customer,
             .racket = *m_racket.id,
             .method = Method::OnePiece,
             .route = "plain-2",
             .shortSideLength = std::nullopt,
             .asked = {*Tension::tryParse("52", TensionUnit::Pound), *Tension::tryParse("50", TensionUnit::Pound)},
             .pieces = {piece},
             .charges = {},
             .total = Money::zero(m_ledger.shop().currency()),
             .promised = std::nullopt,
             .note = {},
             .logged = at,
             .strung = std::nullopt,
             .collected = std::nullopt},
            by);
        const Job job = *m_ledger.jobs().get(id);
        const AttemptId attempt = *job.pieces.front().current().id;
        const auto record = [&](JobEventKind kind, const std::optional<AttemptId>& of) {
            return m_ledger.jobs().record({std::nullopt, id, kind, by, m_machine, of});
        };
        record(JobEventKind::Taken, std::nullopt);
        m_ledger.lots().move({.id = std::nullopt,
                              .lot = from.second,
                              .reason = MovementReason::Cut,
                              .change = -kCut,
                              .attempt = attempt,
                              .lostReason = std::nullopt,
                              .corrects = std::nullopt,
                              .by = by,
                              .words = {}});
        record(JobEventKind::Cut, attempt);
        m_ledger.jobs().setStrung(record(JobEventKind::Strung, std::nullopt), id, job.asked, m_machine);
    }

    desk::Transaction& m_ledger;
    MachineId m_machine;
    StaffId m_staff;
    Racket m_racket;
    std::vector<std::pair<StringArticleId, LotId>> m_lots;
    int m_count = 0;
};

desk::Ledger& shop() {
    static const QTemporaryDir folder;
    static const std::unique_ptr<desk::Ledger> kLedger = [] {
        auto ledger =
            *sql::openLedger(*sql::LedgerAddress::parse(folder.filePath(QStringLiteral("shop.sqlite")).toStdString()));
        const auto stocked =
            desk::inTransaction(*ledger, desk::Access::Write, [](desk::Transaction& open) -> Result<void> {
                const auto demo = desk::stockDemoShop(open, kNow);
                Year year(open);
                return demo;
            });
        if (!stocked) {
            std::abort();
        }
        return ledger;
    }();
    return *kLedger;
}

template<class UseCase>
void measure(benchmark::State& state, UseCase useCase) {
    desk::Ledger& ledger = shop();
    for (auto unused : state) {
        benchmark::DoNotOptimize(desk::inTransaction(ledger, desk::Access::Read, useCase));
    }
}

void shelf(benchmark::State& state) {
    measure(state, [](desk::Transaction& ledger) { return desk::shelf(ledger); });
}
BENCHMARK(shelf)->Unit(benchmark::kMillisecond);

void shelfAhead(benchmark::State& state) {
    measure(state, [](desk::Transaction& ledger) { return desk::shelfAhead(ledger, kNow); });
}
BENCHMARK(shelfAhead)->Unit(benchmark::kMillisecond);

void orderDrafts(benchmark::State& state) {
    measure(state, [](desk::Transaction& ledger) { return desk::orderDrafts(ledger, kNow); });
}
BENCHMARK(orderDrafts)->Unit(benchmark::kMillisecond);

void wishes(benchmark::State& state) {
    measure(state, [](desk::Transaction& ledger) -> Result<std::vector<desk::StringWish>> {
        return ledger.supply().wishes(kNow - std::chrono::days(4 * kDays));
    });
}
BENCHMARK(wishes)->Unit(benchmark::kMillisecond);

} // namespace

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
