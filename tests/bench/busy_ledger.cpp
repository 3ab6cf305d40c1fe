// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/bench.h"
#include "core/desk/demo_shop.h"
#include "core/desk/intake.h"
#include "core/desk/lessons.h"
#include "core/desk/unit_of_work.h"
#include "core/sql/ledger_address.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <stdexcept>

// How long the counter waits for a plan when the shop has strung for years: `busy_ledger LEDGER JOBS` makes the demo
// shop in a new ledger, books so many finished jobs on its frames beside it, every second one with its tails, and
// prints the times of what a station asks. With 0 jobs nothing is booked: a ledger that was made so is asked again.
namespace {
using namespace rw;
using Clock = std::chrono::steady_clock;

constexpr Instant kNow = std::chrono::sys_days(std::chrono::year(2026) / 3 / 12) + std::chrono::hours(11);

/// Two pieces off one endless reel, strung and collected.
void bookJob(desk::Transaction& ledger, const Racket& racket, const StringArticle& article, LotId reel, int number) {
    const By by{*ledger.shop().staff().front().id, "bench", kNow - std::chrono::minutes(number)};
    const TensionPair pull{*Tension::tryParse(std::to_string(48 + number % 9), TensionUnit::Pound),
                           *Tension::tryParse(std::to_string(46 + number % 9), TensionUnit::Pound)};
    const auto piece = [&](PieceRole role, std::int64_t mm) {
        return JobPiece{.id = {},
                        .role = role,
                        .article = *article.id,
                        .lot = reel,
                        .planned = Length::fromMillimetres(mm),
                        .expected = Length::fromMillimetres(mm),
                        .attempts = {}};
    };
    Job job{.id = {},
            .number = 0,
            .requestKey = "busy " + std::to_string(number),
            .customer = racket.customer,
            .racket = *racket.id,
            .route = {},
            .shortSideLength = {},
            .asked = pull,
            .pieces = {piece(PieceRole::Mains, 6200), piece(PieceRole::Crosses, 5600)},
            .charges = {},
            .total = Money::zero(ledger.shop().currency()),
            .promised = {},
            .note = {},
            .logged = by.at,
            .strung = {},
            .collected = {}};
    const JobId id = ledger.jobs().add(job, by);
    const MachineId machine = *ledger.shop().machines().front().id;
    ledger.jobs().record({{}, id, JobEventKind::Taken, by, machine, {}});
    const Job stored = *ledger.jobs().get(id);
    for (const JobPiece& each : stored.pieces) {
        const AttemptId attempt = *each.current().id;
        ledger.lots().move({{}, reel, MovementReason::Cut, -each.planned, attempt, {}, {}, by});
        ledger.jobs().record({{}, id, JobEventKind::Cut, by, {}, attempt});
        if (number % 2 == 0) {
            const Length tail = Length::fromMillimetres(400 + number % 150);
            ledger.ownCuts().keepTails(attempt, {each.role, false, Tails::measured(tail)}, by);
        }
    }
    const JobEventId strung = ledger.jobs().record({{}, id, JobEventKind::Strung, by, machine, {}});
    ledger.jobs().setStrung(strung, id, pull, machine);
    ledger.jobs().record({{}, id, JobEventKind::Collected, by, {}, {}});
}

Result<void> bookYears(desk::Transaction& ledger, int jobs) {
    if (const auto stocked = desk::stockDemoShop(ledger, kNow); !stocked) {
        return stocked;
    }
    const auto articles = ledger.strings().all();
    const StringArticle article = *std::ranges::find(articles, "L", &StringArticle::code);
    std::vector<Racket> rackets;
    for (const Customer& customer : ledger.customers().find("", 1000)) {
        for (const Racket& racket : ledger.customers().racketsOf(*customer.id)) {
            if (ledger.frames().get(racket.frame)->sport == Sport::Tennis) {
                rackets.push_back(racket);
            }
        }
    }
    const By by{*ledger.shop().staff().front().id, "stockroom", kNow};
    LotId reel = LotId::of(0);
    for (int number = 0; number < jobs; ++number) {
        if (number % 50 == 0) { // a reel holds some fifty of them
            reel = ledger.lots().add({.id = {},
                                      .tag = "busy " + std::to_string(number),
                                      .article = *article.id,
                                      .kind = LotKind::Reel,
                                      .owner = {},
                                      .nominal = Length::fromMillimetres(660'000),
                                      .length = Length::fromMillimetres(0),
                                      .price = Money::zero(ledger.shop().currency()),
                                      .shipping = Money::zero(ledger.shop().currency()),
                                      .batch = {},
                                      .received = by.at,
                                      .closed = {}});
            ledger.lots().move({{}, reel, MovementReason::Received, Length::fromMillimetres(660'000), {}, {}, {}, by});
        }
        bookJob(ledger, rackets[static_cast<std::size_t>(number * 7) % rackets.size()], article, reel, number);
    }
    return {};
}

template<class Work>
void timed(const char* what, desk::Ledger& ledger, Work work) {
    std::array<double, 15> ms{};
    for (double& each : ms) {
        const auto before = Clock::now();
        if (const auto done = desk::inTransaction(ledger, desk::Access::Read, work); !done) {
            throw std::logic_error(what);
        }
        each = std::chrono::duration<double, std::milli>(Clock::now() - before).count();
    }
    std::ranges::sort(ms);
    std::printf("%-44s %7.1f ms (median of %zu), %7.1f at most\n", what, ms[ms.size() / 2], ms.size(), ms.back());
}
} // namespace

int main(int argc, char** argv) {
    const std::string path = argc > 1 ? argv[1] : (std::filesystem::temp_directory_path() / "busy.sqlite").string();
    const int jobs = argc > 2 ? std::atoi(argv[2]) : 5000;
    const auto address = sql::LedgerAddress::parse(path);
    auto opened = address ? sql::openLedger(*address) : tl::unexpected(address.error());
    if (!opened) {
        return 2;
    }
    desk::Ledger& ledger = **opened;
    const auto book = [&](desk::Transaction& open) { return jobs > 0 ? bookYears(open, jobs) : Result<void>(); };
    if (!desk::inTransaction(ledger, desk::Access::Write, book)) {
        return 2;
    }
    std::printf("%d jobs booked\n", jobs);
    const auto reading = ledger.begin(desk::Access::Read);
    const FrameModel frame = reading->frames().find("Aldermoor 98", 1).front();
    const auto articles = reading->strings().all();
    const StringArticle article = *std::ranges::find(articles, "L", &StringArticle::code);
    reading->commit();
    const desk::IntakeDraft draft{
        .frame = *frame.id,
        .racket = {},
        .method = Method::TwoPiece,
        .route = {},
        .shortSide = {},
        .mains = {*article.id, PieceSource::ShopLot, {}},
        .crosses = {},
        .tensions = {*Tension::tryParse("52", TensionUnit::Pound), *Tension::tryParse("50", TensionUnit::Pound)},
        .extras = {}};
    using desk::Transaction;
    timed("the cuts of a frame, and tails elsewhere", ledger, [&](Transaction& t) -> Result<std::size_t> {
        return t.ownCuts().cuts(*frame.id, frame.sport, desk::kJobsOfFrameTold, desk::kPiecesElsewhereTold).size();
    });
    timed("what they tell", ledger, [&](Transaction& t) -> Result<std::size_t> {
        return desk::toldFor(t, frame, articles, desk::readSettings(t.shop())).size();
    });
    timed("tails of a sport that has none", ledger, [&](Transaction& t) -> Result<std::size_t> {
        return t.ownCuts().cuts(*frame.id, Sport::Badminton, 0, desk::kPiecesElsewhereTold).size();
    });
    timed("a plan at the counter", ledger, [&](Transaction& t) { return desk::previewIntake(t, draft, kNow); });
    timed("everything that the ledger has taught", ledger, [](Transaction& t) { return desk::lessons(t); });
    return 0;
}
