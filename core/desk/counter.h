// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

// Finding people, their rackets and what was done before; handing over.
namespace rw::desk {

struct RacketSummary {
    Racket racket;
    FrameModel frame;
    std::optional<Job> lastJob; ///< the newest strung or collected one, else the newest of any state
};

struct PersonFound {
    Customer customer;
    std::vector<RacketSummary> rackets;
};

[[nodiscard]] Result<std::vector<PersonFound>> findPeople(Transaction& ledger, std::string_view text, int atMost = 20);
[[nodiscard]] Result<PersonFound> person(Transaction& ledger, CustomerId id);

/// Missing {name}, TooLong {name}. Name 1 to 200 characters, contacts likewise.
[[nodiscard]] Result<CustomerId> addCustomer(Transaction& ledger, const Customer& customer);
[[nodiscard]] Result<RacketId> addRacket(Transaction& ledger, const Racket& racket);
/// From a name, a sport and a pattern; everything else may be missing. Missing, TooLong, ImpossibleValue.
[[nodiscard]] Result<FrameModelId> addFrame(Transaction& ledger, const FrameModel& frame);
[[nodiscard]] Result<std::vector<FrameModel>> findFrames(Transaction& ledger, std::string_view text, int atMost = 20);

/// One job as history shows it.
struct HistoryEntry {
    Job job;
    std::string customer;
    std::string frame;
    std::string mark;
    std::vector<StringArticle> strings; ///< of the pieces, in their order
    std::string machine;                ///< where it was strung, "" if it was not
};
[[nodiscard]] Result<std::vector<HistoryEntry>> historyOfCustomer(Transaction& ledger, CustomerId customer);
[[nodiscard]] Result<std::vector<HistoryEntry>> historyOfRacket(Transaction& ledger, RacketId racket);
[[nodiscard]] Result<std::vector<HistoryEntry>> historyOfFrame(Transaction& ledger, FrameModelId frame,
                                                               int atMost = 50);

/// Jobs that hang on the rack, ready to be handed over, by promise.
[[nodiscard]] Result<std::vector<JobLine>> onTheRack(Transaction& ledger);

struct HandOver {
    JobId job;
    std::string takenBy;          ///< "" for the customer
    std::optional<Money> payment; ///< what was paid now; nothing: not paid yet
    std::string way;              ///< "cash", "card"; "" without payment
    By by;
};
/// WrongState unless strung. Done twice it is done once.
[[nodiscard]] Result<Job> handOver(Transaction& ledger, const HandOver& command);

} // namespace rw::desk
