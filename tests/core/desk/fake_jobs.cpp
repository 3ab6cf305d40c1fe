// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/desk/fake_jobs.h"

#include "core/base/world_error.h"

namespace rw::desk::test {

namespace {
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

std::string phoneOf(const Customer& customer) {
    const auto phone = std::ranges::find(customer.contacts, Contact::Kind::Phone, &Contact::kind);
    return phone == customer.contacts.end() ? std::string() : phone->text;
}

std::optional<DoneCut> cutOf(Rows& rows, const JobPiece& piece, const Attempt& attempt) {
    const auto moved = std::ranges::find_if(rows.movements, [&](const Movement& m) { return m.attempt == attempt.id; });
    if (moved != rows.movements.end()) {
        Length until = Length::fromMillimetres(0);
        for (auto other = rows.movements.begin(); other != std::next(moved); ++other) {
            until += other->lot == moved->lot ? other->change : Length::fromMillimetres(0);
        }
        const bool takenBack =
            std::ranges::find(rows.movements, moved->id, &Movement::corrects) != rows.movements.end();
        return DoneCut{moved->lot,   rowOf(rows.lots, moved->lot)->tag,   -moved->change,
                       moved->by.at, until == Length::fromMillimetres(0), takenBack};
    }
    const auto event = std::ranges::find_if(
        rows.events, [&](const JobEvent& e) { return e.kind == JobEventKind::Cut && e.attempt == attempt.id; });
    if (piece.source == PieceSource::CustomersSet && event != rows.events.end()) {
        return DoneCut{std::nullopt, {}, piece.planned, event->by.at};
    }
    return std::nullopt;
}
} // namespace

JobId FakeJobs::add(const Job& job, const By& by) {
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

std::optional<Job> FakeJobs::get(JobId id) {
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

std::optional<JobId> FakeJobs::byNumber(std::int64_t number) {
    const auto found = std::ranges::find(m_rows.jobs, number, &Job::number);
    return found == m_rows.jobs.end() ? std::nullopt : found->id;
}

std::optional<JobId> FakeJobs::byRequestKey(std::string_view key) {
    const auto found = std::ranges::find(m_rows.jobs, key, &Job::requestKey);
    return found == m_rows.jobs.end() ? std::nullopt : found->id;
}

std::vector<JobLine> FakeJobs::inStates(const std::vector<JobState>& states) {
    std::vector<JobLine> lines;
    for (const Job& row : m_rows.jobs) {
        const Job job = *get(*row.id);
        if (std::ranges::find(states, job.state) == states.end()) {
            continue;
        }
        const Racket& racket = *rowOf(m_rows.rackets, job.racket);
        const FrameModel& frame = *rowOf(m_rows.frames, racket.frame);
        const Customer& customer = *rowOf(m_rows.customers, job.customer);
        lines.push_back({*job.id, job.number, job.state, job.customer, customer.name, phoneOf(customer), frame.name,
                         racket.mark, frame.sport, job.method, job.asked, codesOf(job), job.promised, job.logged,
                         job.mustBy, frame.marked.highest, toldSinceStrung(*job.id)});
    }
    std::ranges::sort(
        lines, {}, [](const JobLine& line) { return std::tuple(line.promised.value_or(Instant::max()), line.number); });
    return lines;
}

std::vector<JobId> FakeJobs::ofRacket(RacketId racket) {
    return newest([&](const Job& job) { return job.racket == racket; });
}

std::vector<JobId> FakeJobs::ofCustomer(CustomerId customer) {
    return newest([&](const Job& job) { return job.customer == customer; });
}

std::vector<JobId> FakeJobs::ofFrame(FrameModelId frame, int atMost) {
    auto ids = newest([&](const Job& job) { return rowOf(m_rows.rackets, job.racket)->frame == frame; });
    ids.erase(ids.begin() + std::min<std::ptrdiff_t>(atMost, std::ssize(ids)), ids.end());
    return ids;
}

std::optional<JobId> FakeJobs::ofAttempt(AttemptId attempt) {
    for (const Job& job : m_rows.jobs) {
        for (const JobPiece& piece : job.pieces) {
            if (std::ranges::find(piece.attempts, std::optional(attempt), &Attempt::id) != piece.attempts.end()) {
                return job.id;
            }
        }
    }
    return std::nullopt;
}

std::vector<Length> FakeJobs::lastTakes(StringArticleId article, int atMost) {
    std::vector<Length> takes;
    for (const JobId id : newest([](const Job&) { return true; })) {
        const Job job = *get(id);
        Length taken = Length::fromMillimetres(0);
        for (const JobPiece& piece : job.pieces) {
            if (piece.article == article && piece.isCut() && piece.current().cut->lot &&
                rowOf(m_rows.lots, *piece.current().cut->lot)->kind != LotKind::Packet) {
                taken += piece.current().cut->length;
            }
        }
        const bool done = job.state == JobState::Strung || job.state == JobState::Collected;
        const bool alone = std::ranges::all_of(job.pieces, [&](const JobPiece& piece) {
            return piece.article == article && piece.source != PieceSource::CustomersSet;
        });
        if (done && alone && taken.isPositive() && std::ssize(takes) < atMost) {
            takes.push_back(taken);
        }
    }
    return takes;
}

JobEventId FakeJobs::record(const JobEvent& event) {
    const bool first = event.kind == JobEventKind::Logged;
    if (!first && !stateAfter(stateOf(m_rows, event.job), event.kind)) {
        throw LedgerGuard("event " + std::string(jobEventKindText(event.kind)));
    }
    m_rows.events.push_back(event);
    m_rows.events.back().id = m_rows.next<JobEventId>();
    if (event.kind == JobEventKind::Collected || event.kind == JobEventKind::BroughtBack) {
        const bool gone = event.kind == JobEventKind::Collected;
        rowOf(m_rows.jobs, event.job)->collected = gone ? std::optional(event.by.at) : std::nullopt;
    }
    return *m_rows.events.back().id;
}

std::vector<JobEvent> FakeJobs::events(JobId job) {
    std::vector<JobEvent> found;
    std::ranges::copy_if(m_rows.events, std::back_inserter(found),
                         [&](const JobEvent& event) { return event.job == job; });
    return found;
}

int FakeJobs::loseAttempt(AttemptId id, LostReason reason, Instant) {
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

void FakeJobs::plan(JobPieceId id, std::optional<LotId> lot, Length planned, bool pinned) {
    for (Job& job : m_rows.jobs) {
        if (JobPiece* piece = rowOf(job.pieces, id)) {
            piece->lot = lot;
            piece->planned = planned;
            piece->pinned = pinned;
        }
    }
}

void FakeJobs::setStrung(JobEventId event, JobId job, const TensionPair& tensions, MachineId machine) {
    rowOf(m_rows.jobs, job)->strung = Strung{tensions, machine, rowOf(m_rows.events, event)->by};
}

void FakeJobs::setBenchStep(JobId job, BenchStep step) { rowOf(m_rows.jobs, job)->benchStep = step; }

void FakeJobs::addNote(JobId job, std::string_view words) {
    std::string& note = rowOf(m_rows.jobs, job)->note;
    note += (note.empty() ? "" : "\n") + std::string(words);
}

void FakeJobs::tell(JobId job, std::string_view how, const By& by) {
    m_rows.tellings.push_back({job, std::string(how), by.at});
}

namespace {
template<class Fact>
std::vector<Fact> ofJob(const std::vector<std::pair<JobId, Fact>>& facts, JobId job) {
    std::vector<Fact> found;
    for (const auto& [of, fact] : facts) {
        if (of == job) {
            found.push_back(fact);
        }
    }
    return found;
}
} // namespace

void FakeJobs::pay(JobId job, const Payment& payment) {
    m_rows.payments.emplace_back(job, payment);
    m_rows.payments.back().second.id = m_rows.next<PaymentId>();
}

std::optional<JobPayment> FakeJobs::paymentByRequestKey(std::string_view key) {
    for (const auto& [job, payment] : m_rows.payments) {
        if (payment.requestKey == key) {
            return JobPayment{job, payment};
        }
    }
    return std::nullopt;
}

std::vector<Payment> FakeJobs::payments(JobId job) { return ofJob(m_rows.payments, job); }

Money FakeJobs::paid(JobId job) {
    Money sum = Money::zero(Currency::pounds());
    for (const Payment& payment : payments(job)) {
        sum += payment.amount;
    }
    return sum;
}

void FakeJobs::addConsent(JobId job, const Consent& consent) { m_rows.consents.emplace_back(job, consent); }

std::vector<Consent> FakeJobs::consents(JobId job) { return ofJob(m_rows.consents, job); }

void FakeJobs::setAsked(JobId job, const AskedChange& change) {
    rowOf(m_rows.jobs, job)->asked = change.after;
    m_rows.askedChanges.emplace_back(job, change);
}

std::vector<AskedChange> FakeJobs::askedChanges(JobId job) { return ofJob(m_rows.askedChanges, job); }

void FakeJobs::seeAskedChanges(JobId job, const By& by) {
    for (auto& [of, change] : m_rows.askedChanges) {
        if (of == job && !change.seen) {
            change.seen = by.at;
        }
    }
}

void FakeJobs::handOver(JobId job, JobEventId, const Handover& handover) {
    m_rows.handovers.emplace_back(job, handover);
}

std::optional<Handover> FakeJobs::handover(JobId job) {
    const auto all = ofJob(m_rows.handovers, job);
    return all.empty() ? std::nullopt : std::optional(all.back());
}

void FakeJobs::inspect(JobId job, const Inspection& inspection) { m_rows.inspections.emplace(job, inspection); }

Inspection FakeJobs::inspection(JobId job) {
    const auto found = m_rows.inspections.find(job);
    return found == m_rows.inspections.end() ? Inspection() : found->second;
}

std::optional<Instant> FakeJobs::toldSinceStrung(JobId job) {
    std::optional<Instant> strung;
    for (const JobEvent& event : events(job)) {
        strung = event.kind == JobEventKind::Strung     ? std::optional(event.by.at)
                 : event.kind == JobEventKind::Reopened ? std::nullopt
                                                        : strung;
    }
    std::optional<Instant> told;
    for (const Rows::Telling& telling : m_rows.tellings) {
        if (telling.job == job && strung && telling.at >= *strung) {
            told = std::max(told.value_or(telling.at), telling.at);
        }
    }
    return told;
}

std::string FakeJobs::codesOf(const Job& job) {
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

} // namespace rw::desk::test
