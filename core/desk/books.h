// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"
#include "core/pricing/earnings.h"

#include <chrono>
#include <optional>
#include <string>
#include <utility>
#include <vector>

// The owner's view: what is still open, what came in, what jobs earned.
namespace rw::desk {

/// Civil days of the shop's own calendar, both included; first <= last.
struct Period {
    CivilDate first;
    CivilDate last;
};
[[nodiscard]] Period dayOf(CivilDate date);
[[nodiscard]] Period monthOf(CivilDate date);
/// The same day so many months on or back, or the last of a shorter month.
[[nodiscard]] CivilDate monthsOn(CivilDate date, int months);

/// Strung and not told, not paid, not collected, oldest first.
[[nodiscard]] Result<std::vector<OpenMatter>> openMatters(Transaction& ledger);

/// What came in, by way of payment in the order of their names. Taken back payments count against their way.
struct Takings {
    std::vector<std::pair<std::string, Money>> byWay;
    Money total;
};
[[nodiscard]] Result<Takings> takings(Transaction& ledger, const Period& period);

struct EarnedLine {
    std::int64_t number;
    std::string customer;
    std::string frame;
    Instant strung;
    Earnings earnings;
};
/// What was left of a reel when it was closed. It is shown for itself, not as a cost of any job.
struct ScrapLine {
    std::string tag;
    std::string string; ///< its code
    Length length;
    Money cost; ///< its share of the lot's landed cost
};
struct Earned {
    std::vector<EarnedLine> jobs; ///< oldest first
    Earnings sum;
    std::chrono::minutes work{0}; ///< as many as the settings say that these jobs take
    std::optional<Money> labour;  ///< those minutes at the shop's rate, where it has one; not subtracted from anything
    std::vector<ScrapLine> scrap; ///< of the lots that were closed in the period
    Money scrapCost;
};
/// What the jobs that were strung in a period earned.
[[nodiscard]] Result<Earned> earned(Transaction& ledger, const Period& period);

struct TellCustomer {
    JobId job;
    std::string how; ///< "phone", "message": 1 to 40 characters
    By by;
};
/// Notes that the customer was told; a job leaves the list of those to tell by this alone. WrongState unless it is on
/// the rack; Missing, TooLong {how}. Told twice stays told twice.
[[nodiscard]] Result<Job> tellCustomer(Transaction& ledger, const TellCustomer& command);

} // namespace rw::desk
