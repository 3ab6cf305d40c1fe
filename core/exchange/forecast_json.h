// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/result.h"
#include "core/stock/order_point.h"
#include "core/stock/run_out.h"

#include <optional>
#include <string>
#include <string_view>

// What a string sold and what is left of it as JSON (RFC 8259, UTF-8), for a shop that is in no ledger.
namespace rw::exchange {

struct ForecastRequest {
    CivilDate today;
    std::optional<stock::Demand> demand; ///< nothing when no job ever wanted the string
    stock::LeadTimes leadTimes;
    stock::Service service;
    std::optional<int> jobsLeft;
};

struct Forecast {
    double jobsPerDay = 0;
    int s = 0; ///< see stock::jobsUntilDelivery
    std::optional<stock::RunOut> runOut;
};

/// Reads a request. Keys:
///   history [{date, jobs}], today, leadTimes [days], priorLeadDays ([3, 5, 7, 10]), priorRatePerDay (the history's own
///   mean), dailyRatio (1), service (0.98), jobsLeft.
/// In brackets what is taken when the key is left out. The history runs from its first date to yesterday; missing days
/// had no jobs, entries of one day add up, today is not counted.
/// Refusals: those of parseStrictObject and JsonObjectReader; ImpossibleValue for a date after today, for no lead time
/// at all and for no history and no prior.
[[nodiscard]] Result<ForecastRequest> forecastRequestFromJson(std::string_view utf8);

[[nodiscard]] Forecast forecastOf(const ForecastRequest& request);

/// Writes s, orderPoint, runOut {p10, p50, p90} with null where there is no date, rate; one line feed at the end.
[[nodiscard]] std::string forecastToJson(const Forecast& forecast);

} // namespace rw::exchange
