// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/shop_ledger.h"
#include "core/desk/bench.h"
#include "core/desk/counter.h"
#include "core/desk/intake.h"
#include "core/desk/stockroom.h"
#include "core/length/cut_plan.h"

#include <QStringList>

#include <string>
#include <vector>

// What the stations show, as lines for a terminal.
namespace rw::cli {

/// Every string with its lots: left, promised, free, whole jobs, and what runs short.
[[nodiscard]] QStringList stockLines(const std::vector<desk::ShelfString>& strings, const Reader& reader);
/// The same for one string.
[[nodiscard]] QStringList stockLines(const desk::ShelfString& string, const Reader& reader);

/// A person, and per racket every job, newest first: one racket's history is never mixed with its twin's.
[[nodiscard]] QStringList historyLines(const Customer& customer, const std::vector<desk::HistoryEntry>& entries,
                                       const Reader& reader);

/// What the counter sees before a job is logged.
[[nodiscard]] QStringList intakeLines(const desk::IntakePreview& preview, const TensionPair& asked, Instant now,
                                      const Reader& reader);

/// What waits at the bench or hangs on the rack.
[[nodiscard]] QStringList jobLines(const std::vector<desk::JobLine>& jobs, const Reader& reader);

/// The job card without its picture.
[[nodiscard]] QStringList cardLines(const desk::JobCard& card, const Reader& reader);

/// The last movements of a lot, oldest first.
[[nodiscard]] QStringList lotLines(const desk::LotLife& life, std::size_t atMost, const Reader& reader);

/// A cut plan with its reasons, as text that ends with a line feed.
[[nodiscard]] std::string planReport(const length::CutPlan& plan);

/// The lines with a line feed each.
[[nodiscard]] std::string joined(const QStringList& lines);

} // namespace rw::cli
