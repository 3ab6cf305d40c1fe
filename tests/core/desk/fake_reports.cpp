// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/desk/fake_reports.h"

namespace rw::desk::test {

bool FakeReports::isTakenBack(const Attempt& attempt) {
    const auto booked = std::ranges::find(m_rows.movements, attempt.id, &Movement::attempt);
    return booked != m_rows.movements.end() &&
           std::ranges::find(m_rows.movements, booked->id, &Movement::corrects) != m_rows.movements.end();
}

std::optional<Instant> FakeReports::last(JobId job, JobEventKind kind) {
    std::optional<Instant> at;
    for (const JobEvent& event : m_jobs.events(job)) {
        at = event.kind == kind ? event.by.at : at;
    }
    return at;
}

std::vector<OpenMatter> FakeReports::openMatters() {
    std::vector<OpenMatter> matters;
    for (const JobLine& line : m_jobs.inStates({JobState::Strung, JobState::Collected, JobState::Withdrawn})) {
        const Job job = *m_jobs.get(line.id);
        OpenMatter matter{.job = line,
                          .strung = last(line.id, JobEventKind::Strung),
                          .told = std::nullopt,
                          .collected =
                              job.state == JobState::Collected ? last(line.id, JobEventKind::Collected) : std::nullopt,
                          .total = job.state == JobState::Withdrawn ? Money::zero(job.total.currency()) : job.total,
                          .paid = m_jobs.paid(line.id)};
        for (const Rows::Telling& telling : m_rows.tellings) {
            if (telling.job == line.id && matter.strung && telling.at >= *matter.strung) {
                matter.told = telling.at;
            }
        }
        if (line.state == JobState::Strung || matter.owed().minor() != 0) {
            matters.push_back(matter);
        }
    }
    std::ranges::stable_sort(matters, {}, &OpenMatter::strung);
    return matters;
}

Money FakeReports::account(CustomerId customer) {
    Money owed = Money::zero(Currency::pounds());
    for (const OpenMatter& matter : openMatters()) {
        if (matter.job.customerId == customer && matter.job.state != JobState::Strung) {
            owed += matter.owed();
        }
    }
    return owed;
}

std::vector<PaymentLine> FakeReports::payments(Instant from, Instant to) {
    std::vector<PaymentLine> lines;
    for (const auto& [id, payment] : m_rows.payments) {
        if (payment.by.at >= from && payment.by.at < to) {
            const Job job = *m_jobs.get(id);
            lines.push_back({id, job.number, rowOf(m_rows.customers, job.customer)->name, payment.amount, payment.way,
                             payment.by.at});
        }
    }
    return lines;
}

std::vector<StrungJob> FakeReports::strung(Instant from, Instant to) {
    std::vector<StrungJob> jobs;
    for (const Job& row : m_rows.jobs) {
        const auto at = last(*row.id, JobEventKind::Strung);
        const bool reopened = m_jobs.get(*row.id)->state == JobState::OnTheMachine;
        if (!at || reopened || *at < from || *at >= to) {
            continue;
        }
        const Job job = *m_jobs.get(*row.id);
        StrungJob strung{.id = *job.id,
                         .number = job.number,
                         .customer = rowOf(m_rows.customers, job.customer)->name,
                         .frame = rowOf(m_rows.frames, rowOf(m_rows.rackets, job.racket)->frame)->name,
                         .strung = *at,
                         .charges = job.charges,
                         .cuts = {}};
        for (const JobPiece& piece : job.pieces) {
            for (const Attempt& attempt : piece.attempts) {
                if (attempt.cut && attempt.cut->lot && !isTakenBack(attempt)) {
                    const Lot& lot = *rowOf(m_rows.lots, *attempt.cut->lot);
                    strung.cuts.push_back({attempt.cut->length, lot.landedCost(), lot.nominal});
                }
            }
        }
        jobs.push_back(strung);
    }
    std::ranges::stable_sort(jobs, {}, &StrungJob::strung);
    return jobs;
}

std::vector<ScrappedEnd> FakeReports::scrap(Instant from, Instant to) {
    std::vector<const Lot*> closed;
    for (const Lot& lot : m_rows.lots) {
        if (lot.closed && !lot.owner && *lot.closed >= from && *lot.closed < to) {
            closed.push_back(&lot);
        }
    }
    std::ranges::stable_sort(closed, {}, [](const Lot* lot) { return *lot->closed; });
    std::vector<ScrappedEnd> ends;
    for (const Lot* lot : closed) {
        std::vector<const Movement*> life;
        for (const Movement& movement : m_rows.movements) {
            if (movement.lot == lot->id) {
                life.push_back(&movement);
            }
        }
        Length left = Length::fromMillimetres(0);
        for (const Movement* movement : life) {
            const bool stands = !movement->corrects && std::ranges::find(m_rows.movements, movement->id,
                                                                         &Movement::corrects) == m_rows.movements.end();
            const bool endsIt = movement == life.back() && (movement->reason == MovementReason::Measured ||
                                                            movement->reason == MovementReason::Weighed);
            if (stands && (endsIt || movement->reason == MovementReason::ThrownAway)) {
                left = left - movement->change;
            }
        }
        if (left.isPositive()) {
            ends.push_back(
                {lot->tag, rowOf(m_rows.articles, lot->article)->code, left, lot->landedCost(), lot->nominal});
        }
    }
    return ends;
}

} // namespace rw::desk::test
