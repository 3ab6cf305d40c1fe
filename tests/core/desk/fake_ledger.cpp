// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/desk/fake_ledger.h"

#include "core/base/world_error.h"
#include "core/customers/people_index.h"
#include "core/customers/search_key.h"
#include "tests/core/desk/fake_own_cuts.h"
#include "tests/core/desk/fake_price_lists.h"
#include "tests/core/desk/fake_reports.h"
#include "tests/core/desk/fake_supply.h"
#include "tests/core/desk/fake_weighings.h"

#include <algorithm>
#include <functional>
#include <set>
#include <sstream>
#include <tuple>

namespace rw::desk::test {

namespace {
bool holdsEveryWord(const std::string& key, const std::string& words) {
    std::istringstream in(words);
    for (std::string word; in >> word;) {
        if (key.find(word) == std::string::npos) {
            return false;
        }
    }
    return true;
}

/// Of two stations that change one row the second is told.
template<class Value>
Result<void> replaceRow(std::vector<Value>& values, const Value& value) {
    const auto stored = std::ranges::find(values, value.id, &Value::id);
    if (stored == values.end()) {
        return refuse(Code::NotFound);
    }
    if (stored->version != value.version) {
        return refuse(Code::ChangedMeanwhile);
    }
    *stored = value;
    ++stored->version;
    return {};
}

class FakeCustomers final : public Customers {
public:
    explicit FakeCustomers(Rows& rows)
        : m_rows(rows) {}
    CustomerId add(const Customer& customer, std::string_view requestKey) override {
        const auto id = m_rows.next<CustomerId>();
        keep(m_rows.customersByKey, requestKey, id);
        m_rows.customers.push_back(customer);
        m_rows.customers.back().id = id;
        return id;
    }
    std::optional<CustomerId> byRequestKey(std::string_view key) override { return idOf(m_rows.customersByKey, key); }
    Result<void> update(const Customer& customer) override {
        *rowOf(m_rows.customers, *customer.id) = customer;
        return {};
    }
    std::optional<Customer> get(CustomerId id) override { return copyOf(m_rows.customers, id); }
    std::vector<Customer> find(std::string_view text, int atMost) override {
        PeopleIndex index;
        for (const Customer& customer : m_rows.customers) {
            std::vector<std::string> digits;
            for (const Contact& contact : customer.contacts) {
                if (contact.kind == Contact::Kind::Phone) {
                    digits.push_back(digitsOf(contact.text));
                }
            }
            if (!customer.removed) {
                index.add(*customer.id, searchKey(customer.name), digits);
            }
        }
        std::vector<Customer> found;
        for (const CustomerId id : index.find(text, atMost)) {
            found.push_back(*get(id));
        }
        return found;
    }
    void erase(CustomerId id, Instant at) override {
        Customer& customer = *rowOf(m_rows.customers, id);
        customer.name = "-";
        customer.contacts.clear();
        customer.removed = at;
        for (Job& job : m_rows.jobs) {
            if (job.customer == id) {
                job.note.clear();
                m_rows.inspections.erase(*job.id);
                for (auto& [of, handover] : m_rows.handovers) {
                    if (of == job.id) {
                        handover.takenBy.clear();
                    }
                }
                for (auto& [of, consent] : m_rows.consents) {
                    if (of == job.id) {
                        consent.agreedBy.clear();
                        consent.words.clear();
                    }
                }
            }
        }
    }
    RacketId addRacket(const Racket& racket, std::string_view requestKey) override {
        const auto id = m_rows.next<RacketId>();
        keep(m_rows.racketsByKey, requestKey, id);
        m_rows.rackets.push_back(racket);
        m_rows.rackets.back().id = id;
        return id;
    }
    std::optional<RacketId> racketByRequestKey(std::string_view key) override { return idOf(m_rows.racketsByKey, key); }
    std::optional<Racket> racket(RacketId id) override { return copyOf(m_rows.rackets, id); }
    std::vector<Racket> racketsOf(CustomerId customer) override {
        std::vector<Racket> found;
        std::ranges::copy_if(m_rows.rackets, std::back_inserter(found),
                             [&](const Racket& racket) { return racket.customer == customer; });
        std::ranges::sort(found, {},
                          [&](const Racket& r) { return std::tuple(rowOf(m_rows.frames, r.frame)->name, r.mark); });
        return found;
    }

private:
    template<class Ids, class AnyId>
    static void keep(Ids& ids, std::string_view key, AnyId id) {
        if (!ids.emplace(key, id).second) {
            throw LedgerGuard("request key " + std::string(key));
        }
    }

    Rows& m_rows;
};

class FakeFrames final : public Frames {
public:
    explicit FakeFrames(Rows& rows)
        : m_rows(rows) {}
    FrameModelId add(const FrameModel& frame) override {
        m_rows.frames.push_back(frame);
        m_rows.frames.back().id = m_rows.next<FrameModelId>();
        return *m_rows.frames.back().id;
    }
    Result<void> update(const FrameModel& frame) override { return replaceRow(m_rows.frames, frame); }
    std::optional<FrameModel> get(FrameModelId id) override { return copyOf(m_rows.frames, id); }
    std::vector<FrameModel> find(std::string_view text, int atMost) override {
        std::vector<FrameModel> found;
        std::ranges::copy_if(m_rows.frames, std::back_inserter(found), [&](const FrameModel& frame) {
            return holdsEveryWord(searchKey(frame.name), searchKey(text));
        });
        std::ranges::sort(found, {}, &FrameModel::name);
        found.erase(found.begin() + std::min<std::ptrdiff_t>(atMost, std::ssize(found)), found.end());
        return found;
    }
    void setUsualCut(const UsualCut& cut) override {
        dropUsualCut(cut);
        m_rows.usualCuts.push_back(cut);
    }
    void dropUsualCut(const UsualCut& cut) override {
        std::erase_if(m_rows.usualCuts, [&](const UsualCut& other) {
            return other.frame == cut.frame && other.role == cut.role && other.material == cut.material &&
                   other.route == cut.route;
        });
    }
    std::vector<UsualCut> usualCuts(FrameModelId frame) override {
        std::vector<UsualCut> found;
        std::ranges::copy_if(m_rows.usualCuts, std::back_inserter(found),
                             [&](const UsualCut& cut) { return cut.frame == frame; });
        return found;
    }

private:
    Rows& m_rows;
};

class FakeStrings final : public Strings {
public:
    explicit FakeStrings(Rows& rows)
        : m_rows(rows) {}
    StringArticleId add(const StringArticle& article) override {
        m_rows.articles.push_back(article);
        m_rows.articles.back().id = m_rows.next<StringArticleId>();
        return *m_rows.articles.back().id;
    }
    Result<void> update(const StringArticle& article) override { return replaceRow(m_rows.articles, article); }
    std::optional<StringArticle> get(StringArticleId id) override { return copyOf(m_rows.articles, id); }
    std::vector<StringArticle> all() override {
        std::vector<StringArticle> all = m_rows.articles;
        std::ranges::sort(all, {}, &StringArticle::code);
        return all;
    }

private:
    Rows& m_rows;
};

class FakeLots final : public Lots {
public:
    explicit FakeLots(Rows& rows)
        : m_rows(rows) {}
    /// What the movements that stand say of a lot: those that were taken back, and what took them back, say nothing.
    void readBook(Lot& lot) {
        lot.sealed = true;
        lot.measuredSinceLastCut = false;
        for (const Movement& movement : movements(*lot.id)) {
            const bool stands =
                !movement.corrects && std::ranges::none_of(m_rows.movements, [&](const Movement& other) {
                    return other.corrects == movement.id;
                });
            const bool cut = movement.reason == MovementReason::Cut || movement.reason == MovementReason::Lost;
            lot.sealed = lot.sealed && !(stands && cut);
            if (stands && (cut || movement.reason == MovementReason::Received)) {
                lot.measuredSinceLastCut = false;
            } else if (stands && movement.reason == MovementReason::Measured) {
                lot.measuredSinceLastCut = true;
            }
        }
    }
    LotId add(const Lot& lot) override {
        m_rows.lots.push_back(lot);
        m_rows.lots.back().id = m_rows.next<LotId>();
        m_rows.lots.back().length = Length::fromMillimetres(0);
        return *m_rows.lots.back().id;
    }
    DeliveryId addDelivery(std::string_view requestKey, std::string_view supplier, const Money& shipping,
                           const By& by) override {
        const auto id = m_rows.next<DeliveryId>();
        m_rows.deliveriesByKey.emplace(requestKey, id);
        m_rows.deliveries.push_back({id, std::string(supplier), shipping, by});
        return id;
    }
    std::vector<LotId> ofDelivery(std::string_view requestKey) override {
        const auto delivery = idOf(m_rows.deliveriesByKey, requestKey);
        std::vector<LotId> lots;
        for (const Lot& lot : m_rows.lots) {
            if (delivery && lot.delivery == delivery) {
                lots.push_back(*lot.id);
            }
        }
        return lots;
    }
    std::optional<Delivery> delivery(DeliveryId id) override {
        const auto found = std::ranges::find(m_rows.deliveries, id, &Delivery::id);
        return found == m_rows.deliveries.end() ? std::nullopt : std::optional(*found);
    }
    std::vector<std::string> suppliers() override {
        std::set<std::string> names;
        for (const Delivery& delivery : m_rows.deliveries) {
            names.insert(delivery.supplier);
        }
        names.erase("");
        return {names.begin(), names.end()};
    }
    std::optional<Lot> get(LotId id) override { return copyOf(m_rows.lots, id); }
    std::optional<Lot> byTag(std::string_view tag) override {
        const auto found = std::ranges::find(m_rows.lots, tag, &Lot::tag);
        return found == m_rows.lots.end() ? std::nullopt : std::optional(*found);
    }
    std::vector<Lot> open() override {
        std::vector<Lot> found;
        std::ranges::copy_if(m_rows.lots, std::back_inserter(found), &Lot::isOpen);
        std::ranges::sort(found, {}, [](const Lot& lot) { return std::tuple(lot.article, lot.received, *lot.id); });
        return found;
    }
    std::vector<Lot> open(StringArticleId article) override {
        std::vector<Lot> found = open();
        std::erase_if(found, [&](const Lot& lot) { return lot.article != article; });
        return found;
    }
    std::vector<Lot> closed(StringArticleId article) override {
        std::vector<Lot> found;
        std::ranges::copy_if(m_rows.lots, std::back_inserter(found),
                             [&](const Lot& lot) { return !lot.isOpen() && lot.article == article; });
        std::ranges::sort(found, std::greater<>(), [](const Lot& lot) { return std::tuple(*lot.closed, *lot.id); });
        return found;
    }
    MovementId move(const Movement& movement) override {
        Lot& lot = *rowOf(m_rows.lots, movement.lot);
        const bool chargedBefore = std::ranges::any_of(m_rows.movements, [&](const Movement& other) {
            return movement.attempt && other.attempt == movement.attempt;
        });
        if ((lot.length + movement.change).isNegative() || chargedBefore || !lot.isOpen()) {
            throw LedgerGuard("movement on " + lot.tag);
        }
        lot.length += movement.change;
        m_rows.movements.push_back(movement);
        m_rows.movements.back().id = m_rows.next<MovementId>();
        readBook(lot);
        return *m_rows.movements.back().id;
    }
    std::vector<Movement> movements(LotId lot) override {
        std::vector<Movement> found;
        std::ranges::copy_if(m_rows.movements, std::back_inserter(found),
                             [&](const Movement& movement) { return movement.lot == lot; });
        return found;
    }
    void close(LotId id, Instant at) override {
        Lot& lot = *rowOf(m_rows.lots, id);
        if (lot.length != Length::fromMillimetres(0)) {
            throw LedgerGuard("closed with string on it: " + lot.tag);
        }
        lot.closed = at;
    }
    void setKind(LotId lot, LotKind kind) override { rowOf(m_rows.lots, lot)->kind = kind; }
    void reopen(LotId id) override { rowOf(m_rows.lots, id)->closed.reset(); }
    std::vector<PlannedCut> plannedCuts() override;
    std::vector<WaitingCut> waitingCuts(StringArticleId article) override;
    std::vector<Length> lastTakesOff(StringArticleId article, int atMost) override {
        return takes([&](const Lot& lot) { return lot.article == article; }, atMost);
    }
    std::vector<Length> lastTakesOff(Sport sport, int atMost) override {
        return takes([&](const Lot& lot) { return rowOf(m_rows.articles, lot.article)->sport == sport; }, atMost);
    }
    std::optional<LotId> lastCutOn(MachineId machine) override;

private:
    /// The newest cuts that held, and what their jobs took off each lot.
    std::vector<Length> takes(const std::function<bool(const Lot&)>& wanted, int atMost);

    Rows& m_rows;
};

std::vector<PlannedCut> FakeLots::plannedCuts() {
    std::vector<PlannedCut> planned;
    FakeJobs jobs(m_rows);
    for (const Job& row : m_rows.jobs) {
        const Job job = *jobs.get(*row.id);
        if (job.state != JobState::Logged && job.state != JobState::OnTheMachine && job.state != JobState::Waiting) {
            continue;
        }
        for (const JobPiece& piece : job.pieces) {
            if (!piece.current().cut && piece.source != PieceSource::CustomersSet) {
                const bool shops = piece.source == PieceSource::ShopLot;
                planned.push_back({*piece.id, piece.article, piece.lot,
                                   shops ? std::nullopt : std::optional(job.customer), piece.planned});
            }
        }
    }
    return planned;
}

std::vector<WaitingCut> FakeLots::waitingCuts(StringArticleId article) {
    std::vector<WaitingCut> waiting;
    FakeJobs jobs(m_rows);
    for (const JobLine& line : jobs.inStates({JobState::Logged, JobState::OnTheMachine, JobState::Waiting})) {
        const Job job = *jobs.get(line.id);
        const bool cutBefore = std::ranges::any_of(job.pieces, [&](const JobPiece& piece) {
            return piece.article == article && piece.isCut() && piece.current().cut->lot;
        });
        for (const JobPiece& piece : job.pieces) {
            if (piece.article == article && !piece.current().cut && piece.source != PieceSource::CustomersSet) {
                const bool shops = piece.source == PieceSource::ShopLot;
                waiting.push_back({*piece.id, line.id, job.number, piece.role, piece.lot,
                                   shops ? std::nullopt : std::optional(job.customer), piece.planned, piece.pinned,
                                   cutBefore || job.state == JobState::OnTheMachine});
            }
        }
    }
    return waiting;
}

std::vector<Length> FakeLots::takes(const std::function<bool(const Lot&)>& wanted, int atMost) {
    FakeJobs jobs(m_rows);
    std::vector<std::pair<std::pair<JobId, LotId>, Length>> newest;
    for (auto movement = m_rows.movements.rbegin(); movement != m_rows.movements.rend(); ++movement) {
        const Lot& lot = *rowOf(m_rows.lots, movement->lot);
        if (movement->reason != MovementReason::Cut || lot.kind == LotKind::Packet || !wanted(lot)) {
            continue;
        }
        const JobId id = *jobs.ofAttempt(*movement->attempt);
        const Job job = *jobs.get(id);
        const bool held = std::ranges::any_of(job.pieces, [&](const JobPiece& piece) {
            return piece.current().id == movement->attempt;
        });
        const auto there = std::ranges::find(newest, std::pair(id, movement->lot), [](const auto& take) {
            return take.first;
        });
        if (held && there != newest.end()) {
            there->second -= movement->change;
        } else if (held && std::ssize(newest) < atMost) {
            newest.push_back({{id, movement->lot}, -movement->change});
        }
    }
    std::vector<Length> oldestFirst;
    std::transform(newest.rbegin(), newest.rend(), std::back_inserter(oldestFirst),
                   [](const auto& take) { return take.second; });
    return oldestFirst;
}

std::optional<LotId> FakeLots::lastCutOn(MachineId machine) {
    FakeJobs jobs(m_rows);
    for (auto movement = m_rows.movements.rbegin(); movement != m_rows.movements.rend(); ++movement) {
        if (movement->reason != MovementReason::Cut) {
            continue;
        }
        std::optional<MachineId> on;
        for (const JobEvent& event : jobs.events(*jobs.ofAttempt(*movement->attempt))) {
            on = event.machine && event.by.at <= movement->by.at ? event.machine : on;
        }
        if (on == machine) {
            return movement->lot;
        }
    }
    return std::nullopt;
}

class FakeShop final : public Shop {
public:
    explicit FakeShop(Rows& rows)
        : m_rows(rows) {}
    std::optional<std::string> setting(std::string_view name) override {
        const auto found = m_rows.settings.find(name);
        return found == m_rows.settings.end() ? std::nullopt : std::optional(found->second);
    }
    void set(std::string_view name, std::string_view value) override { m_rows.settings[std::string(name)] = value; }
    StaffId add(const StaffMember& member) override {
        m_rows.staff.push_back(member);
        m_rows.staff.back().id = m_rows.next<StaffId>();
        return *m_rows.staff.back().id;
    }
    MachineId add(const Machine& machine) override {
        m_rows.machines.push_back(machine);
        m_rows.machines.back().id = m_rows.next<MachineId>();
        return *m_rows.machines.back().id;
    }
    Result<void> update(const StaffMember& member) override { return replaceRow(m_rows.staff, member); }
    Result<void> update(const Machine& machine) override { return replaceRow(m_rows.machines, machine); }
    std::vector<StaffMember> staff() override { return m_rows.staff; }
    std::vector<Machine> machines() override {
        std::vector<Machine> machines = m_rows.machines;
        std::ranges::sort(machines, {}, &Machine::name);
        return machines;
    }
    Currency currency() override { return m_rows.currency; }
    Result<void> setCurrency(const Currency& currency) override {
        if (!m_rows.priceLists.empty() || !m_rows.lots.empty() || !m_rows.jobs.empty()) {
            return refuse(Code::CurrencyMismatch, {{"left", currency.code()}, {"right", m_rows.currency.code()}});
        }
        m_rows.currency = currency;
        return {};
    }

private:
    Rows& m_rows;
};

class FakeTransaction final : public Transaction {
public:
    explicit FakeTransaction(FakeLedger& ledger)
        : m_ledger(ledger)
        , m_rows(ledger.rows) {}
    Customers& customers() override { return m_customers; }
    Frames& frames() override { return m_frames; }
    Strings& strings() override { return m_strings; }
    Lots& lots() override { return m_lots; }
    Weighings& weighings() override { return m_weighings; }
    Jobs& jobs() override { return m_jobs; }
    PriceLists& priceLists() override { return m_priceLists; }
    Shop& shop() override { return m_shop; }
    Reports& reports() override { return m_reports; }
    Supply& supply() override { return m_supply; }
    OwnCuts& ownCuts() override { return m_ownCuts; }
    void commit() override {
        if (m_ledger.busyTimes > 0) {
            --m_ledger.busyTimes;
            throw LedgerBusy("another station was first");
        }
        m_ledger.rows = m_rows;
        ++m_ledger.commits;
    }

private:
    FakeLedger& m_ledger;
    Rows m_rows;
    FakeCustomers m_customers{m_rows};
    FakeFrames m_frames{m_rows};
    FakeStrings m_strings{m_rows};
    FakeLots m_lots{m_rows};
    FakeWeighings m_weighings{m_rows};
    FakeJobs m_jobs{m_rows};
    FakePriceLists m_priceLists{m_rows};
    FakeShop m_shop{m_rows};
    FakeReports m_reports{m_rows, m_jobs};
    FakeSupply m_supply{m_rows, m_jobs};
    FakeOwnCuts m_ownCuts{m_rows, m_jobs};
};
} // namespace

std::unique_ptr<Transaction> FakeLedger::begin(Access) { return std::make_unique<FakeTransaction>(*this); }

std::vector<Finding> FakeLedger::check() {
    std::vector<Finding> findings;
    for (const Lot& lot : rows.lots) {
        Length sum = Length::fromMillimetres(0);
        for (const Movement& movement : rows.movements) {
            sum += movement.lot == lot.id ? movement.change : Length::fromMillimetres(0);
        }
        if (sum != lot.length) {
            findings.push_back({"lot length equals its movements", lot.tag});
        }
    }
    return findings;
}

} // namespace rw::desk::test
