// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

// Finding people, their rackets and what was done before; handing over.
namespace rw::desk {

struct RacketSummary {
    Racket racket;
    FrameModel frame;
    std::optional<Job> lastJob;    ///< the newest strung or collected one, else the newest of any state
    std::optional<Instant> newest; ///< when it came in last; nothing: it never did
    std::optional<JobLine> here = std::nullopt; ///< its job while it is in the shop, the newest of several
};

struct PersonFound {
    Customer customer;
    std::vector<RacketSummary> rackets; ///< the one that was here last first; those that are here now after the others
    std::vector<Lot> lots;              ///< string of theirs that is kept here: open lots
    bool isWhole = true;                ///< else rackets by name without what was done to them, and no lots
};

/// Who is found by `text`, as a list shows them while somebody types. The first, who is meant more often than all others,
/// is whole; of the others person() has the rest.
[[nodiscard]] Result<std::vector<PersonFound>> listPeople(Transaction& ledger, std::string_view text, int atMost = 20);
[[nodiscard]] Result<std::vector<PersonFound>> findPeople(Transaction& ledger, std::string_view text, int atMost = 20);
[[nodiscard]] Result<PersonFound> person(Transaction& ledger, CustomerId id);

struct AddCustomer {
    std::string requestKey; ///< made once per form; pressing again after an answer that was lost adds nobody twice
    Customer customer;
};
/// Missing {name}, TooLong {name}. Name 1 to 200 characters, contacts likewise. Gives back whom the same request key
/// added before; ChangedMeanwhile {what, added} when that was somebody else.
[[nodiscard]] Result<CustomerId> addCustomer(Transaction& ledger, const AddCustomer& command);

struct AddRacket {
    std::string requestKey; ///< as of AddCustomer
    CustomerId customer;
    std::variant<FrameModelId, FrameModel> frame; ///< known, or to be added with it
    std::string mark;
};
/// Missing or ImpossibleValue {mark} beside a twin, TooLong, NotFound (of a removed customer too), and what addFrame()
/// refuses. Gives back what the
/// same request key added before; ChangedMeanwhile {what, added} when that was another racket.
[[nodiscard]] Result<RacketId> addRacket(Transaction& ledger, const AddRacket& command);
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
    bool onAccount = false; ///< what stays owed is paid later, on purpose; without it nothing was said of that
};
/// What came of it: of a racket that was handed over before, what was true then.
struct HandedOver {
    Job job;
    bool already = false;         ///< it was handed over before, at job.collected; nothing was changed or booked
    std::optional<Money> paidNow; ///< booked by this hand-over
    Money paid;                   ///< for the job in all

    [[nodiscard]] Money owed() const { return job.total - paid; } ///< negative: in the customer's favour
};
/// WrongState unless strung. Done twice it is done once, and says so.
[[nodiscard]] Result<HandedOver> handOver(Transaction& ledger, const HandOver& command);

/// A racket that went home with something still owed for it.
struct UnpaidJob {
    JobLine job;
    Instant collected;
    Money owed; ///< more than nothing
    Handover handover;
};
/// The longest owed first.
[[nodiscard]] Result<std::vector<UnpaidJob>> collectedUnpaid(Transaction& ledger);

} // namespace rw::desk
