// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/core/desk/fake_rows.h"

#include <algorithm>
#include <functional>
#include <iterator>
#include <tuple>
#include <vector>

namespace rw::desk::test {

/// The jobs of a fake ledger: their states come from their events, their cuts from the movements.
class FakeJobs final : public Jobs {
public:
    explicit FakeJobs(Rows& rows)
        : m_rows(rows) {}
    JobId add(const Job& job, const By& by) override;
    std::optional<Job> get(JobId id) override;
    bool hasAny() override { return !m_rows.jobs.empty(); }
    std::optional<JobId> byNumber(std::int64_t number) override;
    std::optional<JobId> byRequestKey(std::string_view key) override;
    std::vector<JobLine> inStates(const std::vector<JobState>& states) override;
    std::vector<JobId> ofRacket(RacketId racket) override;
    std::vector<JobId> ofCustomer(CustomerId customer) override;
    std::vector<JobId> ofFrame(FrameModelId frame, int atMost) override;
    std::optional<JobId> ofAttempt(AttemptId attempt) override;
    std::vector<Length> lastTakes(StringArticleId article, int atMost) override;
    JobEventId record(const JobEvent& event) override;
    std::vector<JobEvent> events(JobId job) override;
    int loseAttempt(AttemptId id, LostReason reason, Instant) override;
    void plan(JobPieceId id, std::optional<LotId> lot, Length planned, bool pinned) override;
    void setStrung(JobEventId event, JobId job, const TensionPair& tensions, MachineId machine) override;
    void addConsent(JobId job, const Consent& consent) override;
    std::vector<Consent> consents(JobId job) override;
    void setAsked(JobId job, const AskedChange& change) override;
    std::vector<AskedChange> askedChanges(JobId job) override;
    void seeAskedChanges(JobId job, const By& by) override;
    void setBenchStep(JobId job, BenchStep step) override;
    void addNote(JobId job, std::string_view words) override;
    void tell(JobId job, std::string_view how, const By& by) override;
    void pay(JobId job, const Payment& payment) override;
    std::optional<JobPayment> paymentByRequestKey(std::string_view key) override;
    std::vector<Payment> payments(JobId job) override;
    Money paid(JobId job) override;
    void handOver(JobId job, JobEventId, const Handover& handover) override;
    std::optional<Handover> handover(JobId job) override;
    void inspect(JobId job, const Inspection& inspection) override;
    Inspection inspection(JobId job) override;

private:
    std::string codesOf(const Job& job);
    std::optional<Instant> toldSinceStrung(JobId job);
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

    Rows& m_rows;
};

} // namespace rw::desk::test
