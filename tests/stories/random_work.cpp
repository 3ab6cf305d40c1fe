// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/stories/random_work.h"

#include "core/desk/bench.h"
#include "core/desk/counter.h"
#include "core/desk/intake.h"
#include "core/desk/job_course.h"
#include "core/desk/lot_care.h"
#include "core/desk/stockroom.h"
#include "core/desk/undo.h"

#include <algorithm>

namespace rw::stories {

namespace {
using namespace std::chrono_literals;

constexpr std::size_t kMostWaiting = 24; ///< more, and no more racket is taken in for a while
constexpr std::size_t kMostLots = 24;
const TensionPair kTensions{lb(52), lb(50)};

/// Refused is an answer too: it only must not change anything, which the check afterwards proves.
constexpr auto wasDone = [](const auto& result) { return result.has_value(); };
} // namespace

RandomWork::RandomWork(desk::Ledger& ledger, const HarbourLane& shop, std::uint64_t seed)
    : m_ledger(ledger)
    , m_shop(shop)
    , m_random(seed) {
    write(m_ledger, [&](desk::Transaction& open) -> Result<void> {
        for (const char* name : {"Petra Lindobi", "Tomas Ferreday", "Dario Penhallow"}) {
            const CustomerId person = customer(open, name);
            for (const FrameModelId frame : {shop.aldermoor98, shop.corranDrop}) {
                m_rackets.push_back({person, racket(open, person, frame), frame});
            }
        }
        return {};
    });
}

By RandomWork::by(std::string_view station) const {
    return {m_shop.bastian, std::string(station),
            at(std::chrono::year(2026) / 1 / 5, 10h) + std::chrono::minutes(m_minute)};
}

std::vector<Lot> RandomWork::openLots() {
    return read(m_ledger, [](desk::Transaction& open) { return Result<std::vector<Lot>>(open.lots().open()); });
}

template<class Work>
RandomWork::Command RandomWork::plain(std::string name, Work work) {
    return [this, name = std::move(name), work] {
        const bool done = wasDone(tryWrite(m_ledger, work));
        m_done[name] += done ? 1 : 0;
        return done;
    };
}

void RandomWork::next() {
    m_minute += 1 + upTo(20);
    const int dice = upTo(99);
    const Command command = dice < 6 ? receive() : dice < 24 ? promise() : dice < 85 ? onJob() : onLot();
    if (command && command() && oneIn(10)) {
        (void)command();
    }
}

RandomWork::Command RandomWork::receive() {
    const auto lots = openLots();
    if (lots.size() >= kMostLots) {
        return {};
    }
    const bool packet = oneIn(5);
    const bool kept = oneIn(6);
    const desk::ReceiveLot command{
        .tag = {},
        .article = any(std::vector{m_shop.kestrelline, m_shop.kestrelline, m_shop.larkspun, m_shop.tarnweave}),
        .kind = packet ? LotKind::Packet : LotKind::Reel,
        .owner = kept ? std::optional(any(m_rackets).customer) : std::nullopt,
        .nominal = packet ? mm(12'000) : mm(10'000 + 100 * upTo(1'900)),
        .price = pounds(9'000),
        .shipping = pounds(0),
        .batch = {},
        .by = by("stockroom"),
        .requestKey = "lot-" + std::to_string(++m_keys)};
    return [this, command] {
        const auto lot = tryWrite(m_ledger, [&](desk::Transaction& open) { return desk::receiveLot(open, command); });
        if (lot) {
            book(lot->tag, lot->length);
            ++m_done["received"];
        }
        return lot.has_value();
    };
}

RandomWork::Command RandomWork::promise() {
    const auto waiting = read(m_ledger, [](desk::Transaction& open) {
        return Result<std::size_t>(
            open.jobs().inStates({JobState::Logged, JobState::OnTheMachine, JobState::Waiting}).size());
    });
    if (waiting >= kMostWaiting) {
        return {};
    }
    const Owned racket = any(m_rackets);
    const bool squash = racket.frame == m_shop.corranDrop;
    desk::WantedString mains{.article = squash     ? m_shop.tarnweave
                                        : oneIn(3) ? m_shop.larkspun
                                                   : m_shop.kestrelline,
                             .lot = std::nullopt};
    mains.source = oneIn(8) ? PieceSource::CustomersSet : oneIn(8) ? PieceSource::CustomersLot : PieceSource::ShopLot;
    if (mains.source == PieceSource::ShopLot && oneIn(5)) {
        for (const Lot& lot : openLots()) {
            mains.lot = lot.article == mains.article && !lot.owner ? lot.id : mains.lot;
        }
    }
    desk::IntakeDraft draft{.frame = racket.frame,
                            .racket = racket.racket,
                            .method = oneIn(2) ? std::optional(Method::TwoPiece) : std::nullopt,
                            .route = std::nullopt,
                            .shortSide = std::nullopt,
                            .mains = mains,
                            .crosses = std::nullopt,
                            .tensions = kTensions,
                            .extras = {}};
    if (!squash && oneIn(4)) {
        draft.method = Method::TwoPiece;
        draft.crosses = desk::WantedString{.article = m_shop.larkspun, .lot = std::nullopt};
    }
    const desk::LogJob command{.requestKey = "job-" + std::to_string(++m_keys),
                               .customer = racket.customer,
                               .racket = racket.racket,
                               .draft = draft,
                               .note = "",
                               .promised = std::nullopt,
                               .by = by("counter")};
    return [this, command] {
        const auto job = tryWrite(m_ledger, [&](desk::Transaction& open) { return desk::logJob(open, command); });
        if (job && std::ranges::find(m_jobs, *job->id) == m_jobs.end()) {
            m_jobs.push_back(*job->id);
            ++m_done["promised"];
        }
        return job.has_value();
    };
}

RandomWork::Command RandomWork::onJob() {
    if (m_jobs.empty()) {
        return {};
    }
    // Mostly one of the newest: the old ones are at home.
    const int back = std::min(static_cast<int>(m_jobs.size()) - 1, upTo(oneIn(20) ? 500 : 40));
    const JobId id = m_jobs[m_jobs.size() - 1 - static_cast<std::size_t>(back)];
    const Job job = read(m_ledger, [&](desk::Transaction& open) { return Result<Job>(*open.jobs().get(id)); });
    const By bench = by("bench");
    switch (job.state) {
    case JobState::Logged:
        if (oneIn(12)) {
            return plain("cancelled", [id, bench](desk::Transaction& open) {
                return desk::withdrawJob(open, {id, bench});
            });
        }
        return oneIn(15) ? plain("waits",
                                 [id, bench](desk::Transaction& open) {
                                     return desk::letJobWait(open, {id, "a call", bench});
                                 })
                         : take(job);
    case JobState::Waiting:
    case JobState::Withdrawn:
        return plain("resumed", [id, bench](desk::Transaction& open) { return desk::resumeJob(open, {id, bench}); });
    case JobState::OnTheMachine:
        if (oneIn(12)) {
            return plain("put down", [id, bench](desk::Transaction& open) {
                return desk::putDownJob(open, {id, bench});
            });
        }
        return std::ranges::all_of(job.pieces, &JobPiece::isCut) && !oneIn(4) ? take(job) : cut(job);
    case JobState::Strung:
        return oneIn(10) ? plain("reopened",
                                 [id, bench](desk::Transaction& open) {
                                     return desk::reopenJob(open, {id, bench});
                                 })
                         : plain("collected", [id, who = by("counter")](desk::Transaction& open) {
                               return desk::handOver(open, {id, "", std::nullopt, "", who, true});
                           });
    default:
        return {};
    }
}

/// Takes a job that waits, finishes one that is all cut.
RandomWork::Command RandomWork::take(const Job& job) {
    const JobId id = *job.id;
    const MachineId machine = oneIn(2) ? m_shop.benchA : m_shop.benchB;
    const By who = by("bench");
    if (job.state == JobState::OnTheMachine) {
        return plain("strung", [id, machine, who](desk::Transaction& open) {
            return desk::finishJob(open, {id, kTensions, machine, "", who});
        });
    }
    return plain("taken", [id, machine, who](desk::Transaction& open) {
        return desk::takeJob(open, {id, machine, who});
    });
}

RandomWork::Command RandomWork::cut(const Job& job) {
    const JobPiece piece = any(job.pieces);
    if (piece.isCut()) {
        return oneIn(3) ? takeBackCut(job) : lose(job);
    }
    desk::ConfirmCut command{.job = *job.id,
                             .role = piece.role,
                             .attempt = piece.current().number,
                             .lot = std::nullopt,
                             .length = piece.planned + mm(10 * (upTo(40) - 10)),
                             .measuredLeft = std::nullopt,
                             .by = by("bench")};
    if (oneIn(6)) {
        for (const Lot& lot : openLots()) {
            command.lot = lot.article == piece.article && oneIn(2) ? lot.id : command.lot;
        }
    }
    if (oneIn(8)) {
        command.measuredLeft = command.length + mm(10 * upTo(300));
    }
    return [this, command] {
        const auto cut = tryWrite(m_ledger, [&](desk::Transaction& open) { return desk::confirmCut(open, command); });
        if (cut && cut->lot && !cut->already) {
            book(cut->lot->tag, cut->lot->length);
        }
        m_done["cut"] += cut ? 1 : 0;
        return cut.has_value();
    };
}

RandomWork::Command RandomWork::lose(const Job& job) {
    const JobPiece piece = any(job.pieces);
    const auto reason = oneIn(2) ? LostReason::CameShort : LostReason::Kinked;
    const desk::LoseLength command{*job.id, piece.role, piece.current().number, reason, by("bench")};
    return plain("lost", [command](desk::Transaction& open) { return desk::loseLength(open, command); });
}

RandomWork::Command RandomWork::takeBackCut(const Job& job) {
    const JobPiece piece = any(job.pieces);
    if (!piece.isCut()) {
        return {};
    }
    const desk::TakeBackCut command{*job.id, piece.role, piece.current().number, by("bench")};
    const DoneCut was = *piece.current().cut;
    return [this, command, was, first = true]() mutable {
        const auto back = tryWrite(m_ledger, [&](desk::Transaction& open) { return desk::takeBackCut(open, command); });
        if (back && was.lot && first) {
            m_lots.at(was.lotTag) += was.length;
        }
        first = first && !back;
        m_done["cut taken back"] += back ? 1 : 0;
        return back.has_value();
    };
}

RandomWork::Command RandomWork::onLot() {
    const auto lots = openLots();
    if (lots.empty()) {
        return {};
    }
    const Lot lot = any(lots);
    if (oneIn(4)) {
        return takeBackStep(lot);
    }
    const bool leaves = oneIn(8);
    const Length measured = oneIn(12) ? mm(0) : std::max(mm(0), lot.length + mm(10 * (upTo(200) - 150)));
    const By who = by("stockroom");
    return [this, lot, leaves, measured, who] {
        const auto now = tryWrite(m_ledger, [&](desk::Transaction& open) {
            return leaves ? desk::takeOffShelf(open, {*lot.id, desk::LotLeaves::Returned, "not wanted", who})
                          : desk::correctLot(open, {*lot.id, measured, who});
        });
        if (now) {
            book(lot.tag, leaves ? mm(0) : measured);
            ++m_done[leaves ? "given back" : "corrected"];
        }
        return now.has_value();
    };
}

RandomWork::Command RandomWork::takeBackStep(const Lot& lot) {
    const auto movements = read(m_ledger, [&](desk::Transaction& open) {
        return Result<std::vector<Movement>>(open.lots().movements(*lot.id));
    });
    const Movement last = movements.back();
    const desk::TakeBack command{{{*lot.id, *last.id}}, by("stockroom")};
    return [this, command, tag = lot.tag] {
        const auto back = tryWrite(m_ledger, [&](desk::Transaction& open) { return desk::takeBack(open, command); });
        if (back) {
            book(tag, back->front().length);
            ++m_done["step taken back"];
        }
        return back.has_value();
    };
}

} // namespace rw::stories
