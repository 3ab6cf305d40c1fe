// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/intake.h"
#include "core/desk/port/ledger.h"

#include <optional>
#include <string>
#include <vector>

// The job at the machine: what is next, the card, cutting, losing a length, finishing.
namespace rw::desk {

/// Logged jobs and those on a machine, by promise.
[[nodiscard]] Result<std::vector<JobLine>> benchQueue(Transaction& ledger);

/// One tension as the machine is set: the steps either side of what was asked, in the machine's unit.
struct DialSetting {
    Tension asked;
    double exact;  ///< in the machine's unit, not rounded
    Tension below; ///< the dial step at or below
    Tension above; ///< the dial step at or above
    /// The step nearer to what was asked; the lower one when both are as near.
    [[nodiscard]] Tension nearest() const {
        const double unit = exact * 100;
        return static_cast<double>(above.hundredths()) - unit < unit - static_cast<double>(below.hundredths()) ? above
                                                                                                               : below;
    }
};
[[nodiscard]] DialSetting dialSetting(const Tension& asked, TensionUnit unit, int stepHundredths);

struct CardPiece {
    JobPiece piece;
    StringArticle article;
    std::optional<Lot> lot; ///< the one it was cut from, else the planned one
    Fit fit = Fit::Fits;    ///< of a planned cut
    Length leavesOnLot;     ///< after a planned cut, by the book
    CutReason why = {};     ///< the planned cut comes off that lot; says nothing of a packet
};

/// A pull above the frame's marked maximum, and the customer's informed yes to it.
struct CardAbove {
    AboveMarked above;
    std::optional<Consent> consent; ///< the newest that covers the pull; nothing: not agreed
    std::string toldBy;             ///< who told the customer, "" without a consent
};
/// What was asked changed after the bench began, and nobody at the bench has nodded to it.
struct CardChange {
    TensionPair before; ///< what the bench believed; the job's own are what is asked now
    std::string by;
    Instant at;
};
/// In whose hands the racket is, or was when it was put down.
struct CardHands {
    std::string name;
    std::string machine;
    Instant since; ///< when it was taken, or put down
    bool lies;     ///< it is on that machine now
};

/// Everything a stringer needs to see, from one job.
struct JobCard {
    Job job;
    Customer customer;
    Racket racket;
    FrameModel frame;
    std::vector<CardPiece> pieces;
    length::CutPlan plan; ///< what the drawing is made of
    std::optional<ShortSideProposal> shortSide;
    std::optional<Machine> machine;   ///< the one asked for, else where it was strung or is lying
    std::optional<DialSetting> mains; ///< with a machine
    std::optional<DialSetting> crosses;
    std::string stringer; ///< who strung it, "" if nobody yet
    std::optional<CardAbove> above = std::nullopt;
    std::optional<CardChange> change = std::nullopt;
    std::optional<CardHands> hands = std::nullopt;
    Inspection inspection = {}; ///< what came with the racket, and what was seen at the counter
};
[[nodiscard]] Result<JobCard> jobCard(Transaction& ledger, JobId job, const std::optional<MachineId>& machine);

struct TakeJob {
    JobId job;
    MachineId machine;
    By by;
};
/// WrongState; taken twice at the same machine is taken once.
[[nodiscard]] Result<Job> takeJob(Transaction& ledger, const TakeJob& command);
struct PutDown {
    JobId job;
    By by;
};
/// WrongState unless on the machine; a job that is on none is put down already.
[[nodiscard]] Result<Job> putDownJob(Transaction& ledger, const PutDown& command);

struct MoveStep {
    JobId job;
    BenchStep seen; ///< what the station showed
    BenchStep wanted;
    By by;
};
/// Where the job is at the bench; kept in the ledger, and with the job when it is put down. ChangedMeanwhile {what,
/// mine, theirs} when another station moved it elsewhere since; WrongState unless on the machine.
[[nodiscard]] Result<Job> moveStep(Transaction& ledger, const MoveStep& command);

struct ConfirmCut {
    JobId job;
    PieceRole role;
    int attempt;                        ///< the number the card showed; an older one is StaleAttempt
    std::optional<LotId> lot;           ///< nothing: the planned one; a customer's own set needs none
    Length length;                      ///< > 0; a customer's own set is taken as it is
    std::optional<Length> measuredLeft; ///< what the tape says is on the lot before the cut: corrects the book first
    By by;
};

struct CutDone {
    Job job;
    bool already = false; ///< this attempt was cut before; nothing was changed
    std::optional<Lot> lot;
    std::optional<Length> corrected; ///< by how much the tape corrected the book
};
/// Charges the cut to its lot, once per attempt. Refusals: WrongState, StaleAttempt, NoLot, WrongLot, LotClosed,
/// MeasureFirst (longer than the book says), NotEnoughString (longer than was measured), OutOfRange (a length that is
/// none), AlreadyCut (this attempt, with another length or lot). A lot left empty is closed. The
/// last piece that a job cuts off a packet takes all that is left of it, and the first leaves the rest to the other.
/// Planned cuts of other jobs that the lot cannot hold any more are planned elsewhere unless somebody pinned them.
[[nodiscard]] Result<CutDone> confirmCut(Transaction& ledger, const ConfirmCut& command);

struct LoseLength {
    JobId job;
    PieceRole role;
    int attempt; ///< the number the card showed
    LostReason reason;
    By by;
};
/// Closes the attempt, cut as it was, and opens the next. NotCut when nothing was cut in it. The new attempt's planned
/// cut is longer by a tape step when it came short. Said twice it is said once.
[[nodiscard]] Result<Job> loseLength(Transaction& ledger, const LoseLength& command);

struct FinishJob {
    JobId job;
    TensionPair strung;
    MachineId machine;
    std::string note; ///< words to remember, may be empty
    By by;
    std::vector<TailsOf> tails = {}; ///< what came off the ends, where anybody looked
};
/// WrongState unless on the machine; NotCut while a piece is uncut; OutOfRange {tails} above half of what was cut;
/// NotFound for tails of a piece that the job has not; ChangedMeanwhile {what, mine, theirs, nod} while
/// the bench has not nodded to a change of what is asked (nod: the job's number). Done twice with the same tensions at
/// the same machine it is done once.
[[nodiscard]] Result<Job> finishJob(Transaction& ledger, const FinishJob& command);

} // namespace rw::desk
