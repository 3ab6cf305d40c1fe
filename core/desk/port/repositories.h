// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/opening_hours.h"
#include "core/customers/customer.h"
#include "core/frames/frame_model.h"
#include "core/jobs/handover.h"
#include "core/jobs/inspection.h"
#include "core/jobs/job.h"
#include "core/pricing/price_list.h"
#include "core/stock/delivery.h"
#include "core/stock/lot.h"
#include "core/stock/movement.h"
#include "core/stock/shelf.h"
#include "core/stock/waiting_cut.h"
#include "core/strings/string_article.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

// What the use cases need of a ledger, one repository per aggregate. core/sql implements them. All calls belong to
// the open transaction they were taken from; they throw WorldError when the ledger breaks.
namespace rw::desk {

class Customers {
public:
    virtual ~Customers() = default;
    /// The caller has looked for the request key before; a key met twice all the same is a LedgerGuard.
    virtual CustomerId add(const Customer& customer, std::string_view requestKey) = 0;
    [[nodiscard]] virtual std::optional<CustomerId> byRequestKey(std::string_view key) = 0;
    /// Replaces name and contacts when `version` is still the stored one; else ChangedMeanwhile.
    virtual Result<void> update(const Customer& customer) = 0;
    [[nodiscard]] virtual std::optional<Customer> get(CustomerId id) = 0;
    /// Who PeopleIndex::find finds: by words of a name, the digits of a phone number, and with one letter wrong.
    [[nodiscard]] virtual std::vector<Customer> find(std::string_view text, int atMost) = 0;
    virtual RacketId addRacket(const Racket& racket, std::string_view requestKey) = 0; ///< its key as in add()
    [[nodiscard]] virtual std::optional<RacketId> racketByRequestKey(std::string_view key) = 0;
    [[nodiscard]] virtual std::optional<Racket> racket(RacketId id) = 0;
    /// Removes name, contacts and every free word of the customer's jobs, and marks the row as removed.
    virtual void erase(CustomerId id, Instant at) = 0;
    [[nodiscard]] virtual std::vector<Racket> racketsOf(CustomerId customer) = 0; ///< by frame name, mark
};

/// A cut that the shop usually makes for a frame, typed from its old book.
struct UsualCut {
    FrameModelId frame;
    PieceRole role;
    std::optional<Material> material; ///< nothing: any
    std::string route;                ///< "" for two pieces
    Length cut;
    std::optional<Length> shortSide;
};

class Frames {
public:
    virtual ~Frames() = default;
    virtual FrameModelId add(const FrameModel& frame) = 0;
    /// Everything that is said of it, when `version` is still the stored one; else ChangedMeanwhile, NotFound.
    virtual Result<void> update(const FrameModel& frame) = 0;
    [[nodiscard]] virtual std::optional<FrameModel> get(FrameModelId id) = 0;
    [[nodiscard]] virtual std::vector<FrameModel> find(std::string_view text, int atMost) = 0; ///< by name
    virtual void setUsualCut(const UsualCut& cut) = 0; ///< replaces the one of the same frame, role, material, route
    /// Forgets the one of the same frame, role, material and route, if there is one.
    virtual void dropUsualCut(const UsualCut& cut) = 0;
    [[nodiscard]] virtual std::vector<UsualCut> usualCuts(FrameModelId frame) = 0;
};

class Strings {
public:
    virtual ~Strings() = default;
    virtual StringArticleId add(const StringArticle& article) = 0;
    /// All but its code, which stands on its reels, when `version` is still the stored one; else ChangedMeanwhile,
    /// NotFound.
    virtual Result<void> update(const StringArticle& article) = 0;
    [[nodiscard]] virtual std::optional<StringArticle> get(StringArticleId id) = 0;
    [[nodiscard]] virtual std::vector<StringArticle> all() = 0; ///< by code
};

class Lots {
public:
    virtual ~Lots() = default;
    /// Adds the lot empty; its length comes with the movement "received".
    virtual LotId add(const Lot& lot) = 0;
    /// A delivery that somebody asked for once; the same key twice is a LedgerGuard.
    virtual DeliveryId addDelivery(std::string_view requestKey, std::string_view supplier, const Money& shipping,
                                   const By& by) = 0;
    /// The lots of the delivery with that key, as they were added; none: there was no such delivery.
    [[nodiscard]] virtual std::vector<LotId> ofDelivery(std::string_view requestKey) = 0;
    [[nodiscard]] virtual std::optional<Delivery> delivery(DeliveryId id) = 0;
    [[nodiscard]] virtual std::vector<std::string> suppliers() = 0; ///< who delivered before, by name
    [[nodiscard]] virtual std::optional<Lot> get(LotId id) = 0;
    [[nodiscard]] virtual std::optional<Lot> byTag(std::string_view tag) = 0;
    [[nodiscard]] virtual std::vector<Lot> open() = 0; ///< every open lot, by article, received, id
    [[nodiscard]] virtual std::vector<Lot> open(StringArticleId article) = 0;
    [[nodiscard]] virtual std::vector<Lot> closed(StringArticleId article) = 0; ///< the one closed last first
    /// Writes a movement; the ledger adds it to the lot's length. LedgerGuard when it would go below zero or the
    /// attempt was charged before.
    virtual MovementId move(const Movement& movement) = 0;
    [[nodiscard]] virtual std::vector<Movement> movements(LotId lot) = 0; ///< oldest first
    virtual void close(LotId lot, Instant at) = 0;
    virtual void setKind(LotId lot, LotKind kind) = 0; ///< an end that was set aside is a remnant
    virtual void reopen(LotId lot) = 0; ///< closed by mistake; a movement must say so too
    /// Cuts that are planned and have not happened: pieces of jobs not withdrawn whose current attempt is uncut.
    [[nodiscard]] virtual std::vector<PlannedCut> plannedCuts() = 0;
    /// Those of one string, by promise (those without one last), then job, then piece.
    [[nodiscard]] virtual std::vector<WaitingCut> waitingCuts(StringArticleId article) = 0;
    /// What each of the newest jobs took off one lot of a string, oldest first: the sum of the cuts that held. Packets
    /// are left out, which are used up whatever a job needs.
    [[nodiscard]] virtual std::vector<Length> lastTakesOff(StringArticleId article, int atMost) = 0;
    /// The same of all strings of a sport.
    [[nodiscard]] virtual std::vector<Length> lastTakesOff(Sport sport, int atMost) = 0;
    /// The lot that the last cut of a job on the machine came off; nothing when there was none lately.
    [[nodiscard]] virtual std::optional<LotId> lastCutOn(MachineId machine) = 0;
};

/// One line of a list of jobs.
struct JobLine {
    JobId id;
    std::int64_t number;
    JobState state;
    CustomerId customerId;
    std::string customer;
    std::string phone; ///< the first that is kept, to tell namesakes apart; "" without one
    std::string frame;
    std::string mark;
    Sport sport;
    Method method;
    TensionPair asked;
    std::string strings; ///< codes: "L", "K / L"
    std::optional<Instant> promised;
    Instant logged;
    std::optional<Instant> mustBy = std::nullopt;
    std::optional<Tension> highestMarked = std::nullopt; ///< of the frame
    std::optional<Instant> told = std::nullopt;          ///< when the customer was told last, since it was strung
    /// Its highest pull is above the marked maximum and no yes covers it. Looked for by noteNotAgreed(); no repository
    /// sets it.
    bool notAgreed = false;
};

/// A payment and the job that it was made for.
struct JobPayment {
    JobId job;
    Payment payment;
};

class Jobs {
public:
    virtual ~Jobs() = default;
    /// Stores job, pieces (each with attempt 1), charges and the event "logged"; gives back the job as stored.
    /// The caller has looked for the request key before; a key met twice all the same is a LedgerGuard.
    virtual JobId add(const Job& job, const By& by) = 0;
    [[nodiscard]] virtual std::optional<Job> get(JobId id) = 0;
    [[nodiscard]] virtual bool hasAny() = 0; ///< in whatever state
    [[nodiscard]] virtual std::optional<JobId> byNumber(std::int64_t number) = 0;
    [[nodiscard]] virtual std::optional<JobId> byRequestKey(std::string_view key) = 0;
    /// Jobs in any of `states`, by promise (those without one last), then number.
    [[nodiscard]] virtual std::vector<JobLine> inStates(const std::vector<JobState>& states) = 0;
    [[nodiscard]] virtual std::vector<JobId> ofRacket(RacketId racket) = 0;       ///< newest first
    [[nodiscard]] virtual std::vector<JobId> ofCustomer(CustomerId customer) = 0; ///< newest first
    [[nodiscard]] virtual std::vector<JobId> ofFrame(FrameModelId frame, int atMost) = 0;
    /// The job that an attempt belongs to, for a movement's story.
    [[nodiscard]] virtual std::optional<JobId> ofAttempt(AttemptId attempt) = 0;
    /// What each of the newest strung or collected jobs took of a string, newest first: the sum of the cuts that held
    /// (lost lengths left out). Jobs that are not strung with it alone are left out: half a bed is no job's worth. So
    /// is what came from packets, which are used up whatever the job needs.
    [[nodiscard]] virtual std::vector<Length> lastTakes(StringArticleId article, int atMost) = 0;
    /// Writes an event; the ledger derives the state. LedgerGuard when the state does not allow it.
    virtual JobEventId record(const JobEvent& event) = 0;
    [[nodiscard]] virtual std::vector<JobEvent> events(JobId job) = 0; ///< oldest first
    /// Closes an attempt with a reason and opens the next; gives the new one's number.
    virtual int loseAttempt(AttemptId attempt, LostReason reason, Instant at) = 0;
    virtual void plan(JobPieceId piece, std::optional<LotId> lot, Length planned, bool pinned) = 0;
    virtual void setStrung(JobEventId event, JobId job, const TensionPair& tensions, MachineId machine) = 0;
    virtual void addConsent(JobId job, const Consent& consent) = 0;
    [[nodiscard]] virtual std::vector<Consent> consents(JobId job) = 0; ///< oldest first
    /// Sets the agreed tensions to those after the change, and keeps the change.
    virtual void setAsked(JobId job, const AskedChange& change) = 0;
    [[nodiscard]] virtual std::vector<AskedChange> askedChanges(JobId job) = 0; ///< oldest first
    virtual void seeAskedChanges(JobId job, const By& by) = 0;                  ///< all that nobody has seen
    virtual void setBenchStep(JobId job, BenchStep step) = 0;
    virtual void addNote(JobId job, std::string_view words) = 0;
    virtual void tell(JobId job, std::string_view how, const By& by) = 0;
    /// The caller has looked for the payment's request key before; a key met twice all the same is a LedgerGuard.
    virtual void pay(JobId job, const Payment& payment) = 0;
    [[nodiscard]] virtual std::optional<JobPayment> paymentByRequestKey(std::string_view key) = 0;
    [[nodiscard]] virtual std::vector<Payment> payments(JobId job) = 0; ///< oldest first
    [[nodiscard]] virtual Money paid(JobId job) = 0;
    /// What goes with the event "collected".
    virtual void handOver(JobId job, JobEventId event, const Handover& handover) = 0;
    /// How the racket left the last time; nothing when it never did.
    [[nodiscard]] virtual std::optional<Handover> handover(JobId job) = 0;
    /// Keeps how the racket came in: once, when the job is logged. Nothing is kept of an empty one.
    virtual void inspect(JobId job, const Inspection& inspection) = 0;
    [[nodiscard]] virtual Inspection inspection(JobId job) = 0;
};

class PriceLists {
public:
    virtual ~PriceLists() = default;
    /// The caller has looked that no other list begins on its date; one that does all the same is a LedgerGuard.
    virtual void add(const PriceList& list) = 0;
    /// Gives a stored list these lines and this tax rule in place of those that it has.
    virtual void replaceLines(const PriceList& list) = 0;
    virtual void remove(std::int64_t list) = 0;
    [[nodiscard]] virtual std::optional<PriceList> validOn(CivilDate date) = 0;
    [[nodiscard]] virtual std::vector<PriceList> all() = 0; ///< the one that begins last first
};

struct StaffMember {
    std::optional<StaffId> id;
    std::string name;
    bool strings = true;  ///< promises count on them
    bool retired = false; ///< works here no more; stays in the history
    Worker worker{};      ///< hours and days off; hours, where there are any, on one day at least
    std::int64_t version = 1;
    bool operator==(const StaffMember&) const = default;
};

struct Machine {
    std::optional<MachineId> id;
    std::string name;
    TensionUnit unit;
    int stepHundredths = 50; ///< of its unit; 1 to 1000
    Length reach = Length::fromMillimetres(300);
    bool retired = false; ///< offered no more; stays in the history
    std::int64_t version = 1;
    bool operator==(const Machine&) const = default;
};

/// The shop itself: settings, people, machines.
class Shop {
public:
    virtual ~Shop() = default;
    [[nodiscard]] virtual std::optional<std::string> setting(std::string_view name) = 0;
    virtual void set(std::string_view name, std::string_view value) = 0;
    virtual StaffId add(const StaffMember& member) = 0;
    virtual MachineId add(const Machine& machine) = 0;
    /// Replace what is stored under the id when `version` is still the stored one; else ChangedMeanwhile, NotFound.
    virtual Result<void> update(const StaffMember& member) = 0;
    virtual Result<void> update(const Machine& machine) = 0;
    [[nodiscard]] virtual std::vector<StaffMember> staff() = 0; ///< by id, the retired too
    [[nodiscard]] virtual std::vector<Machine> machines() = 0;  ///< by name, the retired too
    [[nodiscard]] virtual Currency currency() = 0;
    /// CurrencyMismatch {left, right} where the ledger holds money already: a price list, a lot, a job.
    virtual Result<void> setCurrency(const Currency& currency) = 0;
};

} // namespace rw::desk
