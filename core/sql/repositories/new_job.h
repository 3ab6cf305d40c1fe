// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/jobs/job.h"
#include "core/sql/connection.h"

#include <cstdint>

// The rows that make a new job.
namespace rw::sql {

/// The job's own row. Without a number it gets the next one, the first 1001. Two stations cannot get the same: who
/// writes has the ledger to itself until its end (Work::writing), and the column is unique.
[[nodiscard]] JobId addJobRow(Connection& connection, const Job& job, const By& by);
/// A piece with its first attempt.
void addJobPiece(Connection& connection, JobId job, const JobPiece& piece, Instant at);
void addAttempt(Connection& connection, std::int64_t piece, int number, Instant at);
void addCharge(Connection& connection, JobId job, std::int64_t line, const Charge& charge, const By& by);

} // namespace rw::sql
