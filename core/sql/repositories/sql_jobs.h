// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/repositories.h"
#include "core/sql/connection.h"

namespace rw::sql {

/// desk::Jobs over the open transaction of a connection, which must outlive it.
class SqlJobs final : public desk::Jobs {
public:
    explicit SqlJobs(Connection& connection)
        : m_connection(connection) {}

    JobId add(const Job& job, const By& by) override;
    [[nodiscard]] std::optional<Job> get(JobId id) override;
    [[nodiscard]] bool hasAny() override;
    [[nodiscard]] std::optional<JobId> byNumber(std::int64_t number) override;
    [[nodiscard]] std::optional<JobId> byRequestKey(std::string_view key) override;
    [[nodiscard]] std::vector<desk::JobLine> inStates(const std::vector<JobState>& states) override;
    [[nodiscard]] std::vector<JobId> ofRacket(RacketId racket) override;
    [[nodiscard]] std::vector<JobId> ofCustomer(CustomerId customer) override;
    [[nodiscard]] std::vector<JobId> ofFrame(FrameModelId frame, int atMost) override;
    [[nodiscard]] std::optional<JobId> ofAttempt(AttemptId attempt) override;
    [[nodiscard]] std::vector<Length> lastTakes(StringArticleId article, int atMost) override;
    JobEventId record(const JobEvent& event) override;
    [[nodiscard]] std::vector<JobEvent> events(JobId job) override;
    int loseAttempt(AttemptId attempt, LostReason reason, Instant at) override;
    void plan(JobPieceId piece, std::optional<LotId> lot, Length planned, bool pinned) override;
    void setStrung(JobEventId event, JobId job, const TensionPair& tensions, MachineId machine) override;
    void addConsent(JobId job, const Consent& consent) override;
    [[nodiscard]] std::vector<Consent> consents(JobId job) override;
    void setAsked(JobId job, const AskedChange& change) override;
    [[nodiscard]] std::vector<AskedChange> askedChanges(JobId job) override;
    void seeAskedChanges(JobId job, const By& by) override;
    void setBenchStep(JobId job, BenchStep step) override;
    void addNote(JobId job, std::string_view words) override;
    void tell(JobId job, std::string_view how, const By& by) override;
    void pay(JobId job, const Payment& payment) override;
    [[nodiscard]] std::optional<desk::JobPayment> paymentByRequestKey(std::string_view key) override;
    [[nodiscard]] std::vector<Payment> payments(JobId job) override;
    [[nodiscard]] Money paid(JobId job) override;
    void handOver(JobId job, JobEventId event, const Handover& handover) override;
    [[nodiscard]] std::optional<Handover> handover(JobId job) override;
    void inspect(JobId job, const Inspection& inspection) override;
    [[nodiscard]] Inspection inspection(JobId job) override;

private:
    Connection& m_connection;
};

} // namespace rw::sql
