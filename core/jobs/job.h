// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/id.h"
#include "core/frames/sport.h"
#include "core/jobs/asked_change.h"
#include "core/jobs/bench_step.h"
#include "core/jobs/charge.h"
#include "core/jobs/consent.h"
#include "core/jobs/job_state.h"
#include "core/jobs/payment.h"
#include "core/length/piece_role.h"
#include "core/stock/movement.h"
#include "core/units/length.h"
#include "core/units/tension.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace rw {

/// Where a piece's string comes from. What the customer brought follows its owner.
enum class PieceSource { ShopLot, CustomersLot, CustomersSet };
[[nodiscard]] std::string_view pieceSourceText(PieceSource source); ///< "shop-lot", "customers-lot", "customers-set"
[[nodiscard]] std::optional<PieceSource> pieceSourceFromText(std::string_view text);

/// A cut that happened. A customer's own set is no lot: its cut is known by its event, and as long as was planned.
struct DoneCut {
    std::optional<LotId> lot;
    std::string lotTag; ///< "" without a lot
    Length length;
    Instant at;
    bool allThereWas = false; ///< the lot's end was used up: says nothing about what the frame needs
    bool takenBack = false;   ///< confirmed by mistake and never made: its length is on the lot again
};

/// One try at a piece. A lost length closes it and the next try is a new attempt.
struct Attempt {
    std::optional<AttemptId> id;
    int number = 1;
    std::optional<DoneCut> cut;
    std::optional<LostReason> lost;
};

struct JobPiece {
    std::optional<JobPieceId> id;
    PieceRole role;
    StringArticleId article;
    PieceSource source = PieceSource::ShopLot;
    std::optional<LotId> lot;                       ///< where it is planned to come from
    bool pinned = false;                            ///< somebody chose the lot; planning does not move it
    Length planned;                                 ///< what to cut
    Length expected;                                ///< what it should need
    std::vector<Attempt> attempts;                  ///< by number; the last is open unless the piece is done
    std::optional<Length> setLength = std::nullopt; ///< of a customer's own set, where somebody said it

    [[nodiscard]] const Attempt& current() const { return attempts.back(); } ///< precondition: stored
    [[nodiscard]] bool isCut() const { return !attempts.empty() && attempts.back().cut && !attempts.back().lost; }
};

/// What was really done at the machine: two facts beside what was asked.
struct Strung {
    TensionPair tensions;
    MachineId machine;
    By by;
};

/// One racket, once through the shop.
struct Job {
    std::optional<JobId> id;
    std::int64_t number = 0; ///< what people say and write; given by the ledger when 0
    std::string requestKey;  ///< made by who logs it; the same key never makes a second job
    CustomerId customer;
    RacketId racket;
    Method method = Method::TwoPiece;
    std::string route;           ///< a route's name; "" for two pieces
    Side shortSide = Side::Left; ///< of a one-piece job
    std::optional<Length> shortSideLength;
    TensionPair asked;
    std::vector<JobPiece> pieces; ///< mains then crosses, or the whole
    std::vector<Charge> charges;
    Money total; ///< the sum of the charges; the ledger keeps it
    std::optional<Instant> promised;
    std::optional<Instant> mustBy = std::nullopt; ///< when the customer must have it, whatever was promised
    std::string note;                             ///< words for the bench
    JobState state = JobState::Logged;
    BenchStep benchStep = BenchStep::LookOver;
    Instant logged;
    std::optional<Strung> strung;
    std::optional<Instant> collected;
    std::int64_t version = 0;
};

/// A line of a job's life, as it is kept.
struct JobEvent {
    std::optional<JobEventId> id;
    JobId job;
    JobEventKind kind;
    By by;
    std::optional<MachineId> machine;
    std::optional<AttemptId> attempt;
};

} // namespace rw
