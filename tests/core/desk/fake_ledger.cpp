// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/desk/fake_ledger.h"

#include "core/base/world_error.h"
#include "core/customers/search_key.h"

#include <algorithm>
#include <sstream>
#include <tuple>

namespace rw::desk::test {

namespace {
template<class Row, class AnyId>
Row* rowOf(std::vector<Row>& rows, AnyId id) {
    const auto found = std::ranges::find(rows, std::optional(id), &Row::id);
    return found == rows.end() ? nullptr : &*found;
}

template<class Row, class AnyId>
std::optional<Row> copyOf(std::vector<Row>& rows, AnyId id) {
    const Row* row = rowOf(rows, id);
    return row == nullptr ? std::nullopt : std::optional(*row);
}

bool holdsEveryWord(const std::string& key, const std::string& words) {
    std::istringstream in(words);
    for (std::string word; in >> word;) {
        if (key.find(word) == std::string::npos) {
            return false;
        }
    }
    return true;
}

class FakeCustomers final : public Customers {
public:
    explicit FakeCustomers(Rows& rows)
        : m_rows(rows) {}
    CustomerId add(const Customer& customer) override {
        m_rows.customers.push_back(customer);
        m_rows.customers.back().id = m_rows.next<CustomerId>();
        return *m_rows.customers.back().id;
    }
    Result<void> update(const Customer& customer) override {
        *rowOf(m_rows.customers, *customer.id) = customer;
        return {};
    }
    std::optional<Customer> get(CustomerId id) override { return copyOf(m_rows.customers, id); }
    std::vector<Customer> find(std::string_view text, int atMost) override {
        const std::string words = searchKey(text);
        const std::string digits = digitsOf(text);
        std::vector<Customer> found;
        for (const Customer& customer : m_rows.customers) {
            const bool byPhone =
                digits.size() >= 2 && std::ranges::any_of(customer.contacts, [&](const Contact& contact) {
                    return contact.kind == Contact::Kind::Phone &&
                           digitsOf(contact.text).find(digits) != std::string::npos;
                });
            if (byPhone || holdsEveryWord(searchKey(customer.name), words)) {
                found.push_back(customer);
            }
        }
        std::ranges::sort(found, {}, [](const Customer& c) { return searchKey(c.name); });
        found.erase(found.begin() + std::min<std::ptrdiff_t>(atMost, std::ssize(found)), found.end());
        return found;
    }
    RacketId addRacket(const Racket& racket) override {
        m_rows.rackets.push_back(racket);
        m_rows.rackets.back().id = m_rows.next<RacketId>();
        return *m_rows.rackets.back().id;
    }
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
        std::erase_if(m_rows.usualCuts, [&](const UsualCut& other) {
            return other.frame == cut.frame && other.role == cut.role && other.material == cut.material &&
                   other.route == cut.route;
        });
        m_rows.usualCuts.push_back(cut);
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
    LotId add(const Lot& lot) override {
        m_rows.lots.push_back(lot);
        m_rows.lots.back().id = m_rows.next<LotId>();
        m_rows.lots.back().length = Length::fromMillimetres(0);
        return *m_rows.lots.back().id;
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
    MovementId move(const Movement& movement) override {
        Lot& lot = *rowOf(m_rows.lots, movement.lot);
        const bool chargedBefore = std::ranges::any_of(m_rows.movements, [&](const Movement& other) {
            return movement.attempt && other.attempt == movement.attempt;
        });
        if ((lot.length + movement.change).isNegative() || chargedBefore || !lot.isOpen()) {
            throw LedgerGuard("movement on " + lot.tag);
        }
        lot.length += movement.change;
        const bool cut = movement.reason == MovementReason::Cut;
        lot.sealed = lot.sealed && !cut;
        lot.measuredSinceLastCut = movement.reason == MovementReason::Measured || (lot.measuredSinceLastCut && !cut);
        m_rows.movements.push_back(movement);
        m_rows.movements.back().id = m_rows.next<MovementId>();
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
    std::vector<PlannedCut> plannedCuts() override;

private:
    Rows& m_rows;
};

/// The state of a job by its events: there is no other.
JobState stateOf(const Rows& rows, JobId job) {
    std::optional<JobState> state;
    for (const JobEvent& event : rows.events) {
        if (event.job == job) {
            state = *stateAfter(state, event.kind);
        }
    }
    return state.value();
}

std::optional<DoneCut> cutOf(Rows& rows, const JobPiece& piece, const Attempt& attempt) {
    const auto moved = std::ranges::find_if(rows.movements, [&](const Movement& m) { return m.attempt == attempt.id; });
    if (moved != rows.movements.end()) {
        Length until = Length::fromMillimetres(0);
        for (auto other = rows.movements.begin(); other != std::next(moved); ++other) {
            until += other->lot == moved->lot ? other->change : Length::fromMillimetres(0);
        }
        return DoneCut{moved->lot, rowOf(rows.lots, moved->lot)->tag, -moved->change, moved->by.at,
                       until == Length::fromMillimetres(0)};
    }
    const auto event = std::ranges::find_if(
        rows.events, [&](const JobEvent& e) { return e.kind == JobEventKind::Cut && e.attempt == attempt.id; });
    if (piece.source == PieceSource::CustomersSet && event != rows.events.end()) {
        return DoneCut{std::nullopt, {}, piece.planned, event->by.at};
    }
    return std::nullopt;
}

class FakeJobs final : public Jobs {
public:
    explicit FakeJobs(Rows& rows)
        : m_rows(rows) {}
    JobId add(const Job& job, const By& by) override {
        if (byRequestKey(job.requestKey)) {
            throw LedgerGuard("request key " + job.requestKey);
        }
        std::int64_t highest = 1000;
        for (const Job& other : m_rows.jobs) {
            highest = std::max(highest, other.number);
        }
        Job& kept = m_rows.jobs.emplace_back(job);
        kept.id = m_rows.next<JobId>();
        kept.number = job.number != 0 ? job.number : highest + 1;
        kept.total = Money::zero(job.total.currency());
        for (const Charge& charge : job.charges) {
            kept.total += charge.amount;
        }
        for (JobPiece& piece : kept.pieces) {
            piece.id = m_rows.next<JobPieceId>();
            piece.attempts = {{m_rows.next<AttemptId>(), 1, std::nullopt, std::nullopt}};
        }
        const JobId id = *kept.id;
        record({std::nullopt, id, JobEventKind::Logged, by, std::nullopt, std::nullopt});
        return id;
    }
    std::optional<Job> get(JobId id) override {
        auto job = copyOf(m_rows.jobs, id);
        if (job) {
            job->state = stateOf(m_rows, id);
            for (JobPiece& piece : job->pieces) {
                for (Attempt& attempt : piece.attempts) {
                    attempt.cut = cutOf(m_rows, piece, attempt);
                }
            }
        }
        return job;
    }
    std::optional<JobId> byNumber(std::int64_t number) override {
        const auto found = std::ranges::find(m_rows.jobs, number, &Job::number);
        return found == m_rows.jobs.end() ? std::nullopt : found->id;
    }
    std::optional<JobId> byRequestKey(std::string_view key) override {
        const auto found = std::ranges::find(m_rows.jobs, key, &Job::requestKey);
        return found == m_rows.jobs.end() ? std::nullopt : found->id;
    }
    std::vector<JobLine> inStates(const std::vector<JobState>& states) override {
        std::vector<JobLine> lines;
        for (const Job& row : m_rows.jobs) {
            const Job job = *get(*row.id);
            if (std::ranges::find(states, job.state) == states.end()) {
                continue;
            }
            const Racket& racket = *rowOf(m_rows.rackets, job.racket);
            const FrameModel& frame = *rowOf(m_rows.frames, racket.frame);
            lines.push_back({*job.id, job.number, job.state, rowOf(m_rows.customers, job.customer)->name, frame.name,
                             racket.mark, frame.sport, job.method, job.asked, codesOf(job), job.promised, job.logged});
        }
        std::ranges::sort(lines, {}, [](const JobLine& line) {
            return std::tuple(line.promised.value_or(Instant::max()), line.number);
        });
        return lines;
    }
    std::vector<JobId> ofRacket(RacketId racket) override {
        return newest([&](const Job& job) { return job.racket == racket; });
    }
    std::vector<JobId> ofCustomer(CustomerId customer) override {
        return newest([&](const Job& job) { return job.customer == customer; });
    }
    std::vector<JobId> ofFrame(FrameModelId frame, int atMost) override {
        auto ids = newest([&](const Job& job) { return rowOf(m_rows.rackets, job.racket)->frame == frame; });
        ids.erase(ids.begin() + std::min<std::ptrdiff_t>(atMost, std::ssize(ids)), ids.end());
        return ids;
    }
    std::optional<JobId> ofAttempt(AttemptId attempt) override {
        for (const Job& job : m_rows.jobs) {
            for (const JobPiece& piece : job.pieces) {
                if (std::ranges::find(piece.attempts, std::optional(attempt), &Attempt::id) != piece.attempts.end()) {
                    return job.id;
                }
            }
        }
        return std::nullopt;
    }
    std::vector<Length> lastTakes(StringArticleId article, int atMost) override {
        std::vector<Length> takes;
        for (const JobId id : newest([](const Job&) { return true; })) {
            const Job job = *get(id);
            Length taken = Length::fromMillimetres(0);
            for (const JobPiece& piece : job.pieces) {
                if (piece.article == article && piece.isCut() && piece.current().cut->lot) {
                    taken += piece.current().cut->length;
                }
            }
            const bool done = job.state == JobState::Strung || job.state == JobState::Collected;
            if (done && taken.isPositive() && std::ssize(takes) < atMost) {
                takes.push_back(taken);
            }
        }
        return takes;
    }
    JobEventId record(const JobEvent& event) override {
        const bool first = event.kind == JobEventKind::Logged;
        if (!first && !stateAfter(stateOf(m_rows, event.job), event.kind)) {
            throw LedgerGuard("event " + std::string(jobEventKindText(event.kind)));
        }
        m_rows.events.push_back(event);
        m_rows.events.back().id = m_rows.next<JobEventId>();
        if (event.kind == JobEventKind::Collected) {
            rowOf(m_rows.jobs, event.job)->collected = event.by.at;
        }
        return *m_rows.events.back().id;
    }
    std::vector<JobEvent> events(JobId job) override {
        std::vector<JobEvent> found;
        std::ranges::copy_if(m_rows.events, std::back_inserter(found),
                             [&](const JobEvent& event) { return event.job == job; });
        return found;
    }
    int loseAttempt(AttemptId id, LostReason reason, Instant) override {
        for (Job& job : m_rows.jobs) {
            for (JobPiece& piece : job.pieces) {
                Attempt& attempt = piece.attempts.back();
                if (attempt.id == id) {
                    attempt.lost = reason;
                    const int next = attempt.number + 1;
                    piece.attempts.push_back({m_rows.next<AttemptId>(), next, std::nullopt, std::nullopt});
                    return next;
                }
            }
        }
        throw LedgerGuard("no open attempt");
    }
    void plan(JobPieceId id, std::optional<LotId> lot, Length planned, bool pinned) override {
        for (Job& job : m_rows.jobs) {
            if (JobPiece* piece = rowOf(job.pieces, id)) {
                piece->lot = lot;
                piece->planned = planned;
                piece->pinned = pinned;
            }
        }
    }
    void setStrung(JobEventId event, JobId job, const TensionPair& tensions, MachineId machine) override {
        rowOf(m_rows.jobs, job)->strung = Strung{tensions, machine, rowOf(m_rows.events, event)->by};
    }
    void addNote(JobId job, std::string_view words) override {
        std::string& note = rowOf(m_rows.jobs, job)->note;
        note += (note.empty() ? "" : "\n") + std::string(words);
    }
    void pay(JobId job, Money amount, std::string_view way, const By&) override {
        m_rows.payments.push_back({job, amount, std::string(way)});
    }
    Money paid(JobId job) override {
        Money sum = Money::zero(Currency::pounds());
        for (const auto& payment : m_rows.payments) {
            sum += payment.job == job ? payment.amount : Money::zero(Currency::pounds());
        }
        return sum;
    }
    void handOver(JobId job, JobEventId, std::string_view takenBy) override { m_rows.takenBy[job] = takenBy; }

private:
    template<class Wanted>
    std::vector<JobId> newest(Wanted wanted) {
        std::vector<const Job*> jobs;
        for (const Job& job : m_rows.jobs) {
            if (wanted(job)) {
                jobs.push_back(&job);
            }
        }
        std::ranges::sort(jobs, std::ranges::greater(),
                          [](const Job* job) { return std::tuple(job->logged, *job->id); });
        std::vector<JobId> ids;
        std::ranges::transform(jobs, std::back_inserter(ids), [](const Job* job) { return *job->id; });
        return ids;
    }
    std::string codesOf(const Job& job) {
        std::string codes;
        std::string last;
        for (const JobPiece& piece : job.pieces) {
            const std::string code = rowOf(m_rows.articles, piece.article)->code;
            if (code != last) {
                codes += (codes.empty() ? "" : " / ") + code;
            }
            last = code;
        }
        return codes;
    }
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

class FakePriceLists final : public PriceLists {
public:
    explicit FakePriceLists(Rows& rows)
        : m_rows(rows) {}
    void add(const PriceList& list) override { m_rows.priceLists.push_back(list); }
    std::optional<PriceList> validOn(CivilDate date) override {
        std::optional<PriceList> valid;
        for (const PriceList& list : m_rows.priceLists) {
            if (list.validFrom <= date && (!valid || list.validFrom > valid->validFrom)) {
                valid = list;
            }
        }
        return valid;
    }

private:
    Rows& m_rows;
};

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
        m_rows.staff.push_back({m_rows.next<StaffId>(), member.name});
        return *m_rows.staff.back().id;
    }
    MachineId add(const Machine& machine) override {
        m_rows.machines.push_back(machine);
        m_rows.machines.back().id = m_rows.next<MachineId>();
        return *m_rows.machines.back().id;
    }
    std::vector<StaffMember> staff() override { return m_rows.staff; }
    std::vector<Machine> machines() override {
        std::vector<Machine> machines = m_rows.machines;
        std::ranges::sort(machines, {}, &Machine::name);
        return machines;
    }
    Currency currency() override { return Currency::pounds(); }

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
    Jobs& jobs() override { return m_jobs; }
    PriceLists& priceLists() override { return m_priceLists; }
    Shop& shop() override { return m_shop; }
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
    FakeJobs m_jobs{m_rows};
    FakePriceLists m_priceLists{m_rows};
    FakeShop m_shop{m_rows};
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
