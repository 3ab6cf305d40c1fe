// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/forecast_json.h"

#include "core/calendar/civil_date_text.h"
#include "core/exchange/json_object_reader.h"
#include "core/exchange/strict_json.h"

#include <array>
#include <map>
#include <numeric>

namespace rw::exchange {

namespace {
using std::string_view;
using Day = std::chrono::sys_days;

constexpr std::array<string_view, 8> kTopKeys{"history",         "today",      "leadTimes", "priorLeadDays",
                                              "priorRatePerDay", "dailyRatio", "service",   "jobsLeft"};
constexpr std::array<string_view, 2> kDayKeys{"date", "jobs"};

constexpr std::size_t kMostEntries = 30'000;
constexpr double kMostJobsPerDay = 10'000;
constexpr double kLeastRate = 1e-6; // a job in 2700 years
constexpr double kMostLeadDays = 1'000;
constexpr double kMostRatio = 100;
constexpr double kMostJobsLeft = 100'000;

/// Jobs of each day on which there were any, before today.
std::map<Day, double> readHistory(JsonObjectReader& in, CivilDate today) {
    std::map<Day, double> jobsOn;
    in.objects("history", kDayKeys, kMostEntries, [&](JsonObjectReader& entry) {
        std::optional<CivilDate> date;
        double jobs = 0;
        entry.need("date");
        entry.need("jobs");
        entry.date("date", date);
        entry.numberWithin("jobs", 0, kMostJobsPerDay, jobs);
        if (!entry.result()) {
            return;
        }
        if (!date || Day(*date) > Day(today)) {
            entry.refuseValue("date", date ? civilDateText(*date) : "null", "a day up to today");
        } else if (Day(*date) < Day(today)) {
            jobsOn[*date] += jobs;
        }
    });
    return jobsOn;
}

double meanOf(const std::map<Day, double>& jobsOn, Day today) {
    const double jobs = std::accumulate(jobsOn.begin(), jobsOn.end(), 0.0,
                                        [](double sum, const auto& day) { return sum + day.second; });
    return jobs / static_cast<double>((today - jobsOn.begin()->first).count());
}

std::optional<stock::Demand> demandFrom(const std::map<Day, double>& jobsOn, Day today, double priorRate) {
    if (priorRate <= 0) {
        return std::nullopt;
    }
    stock::Demand demand = stock::Demand::likeOthers(priorRate);
    if (jobsOn.empty()) {
        return demand;
    }
    auto next = jobsOn.begin();
    for (Day day = next->first; day < today; day += std::chrono::days(1)) {
        const bool hadJobs = next != jobsOn.end() && next->first == day;
        demand.addDay(hadJobs ? (next++)->second : 0);
    }
    return demand;
}

std::optional<CivilDate> readToday(JsonObjectReader& in) {
    std::optional<CivilDate> today;
    in.need("today");
    in.date("today", today);
    if (in.result() && !today) {
        in.refuseValue("today", "null", "a date such as 2026-03-12");
    }
    return today;
}
} // namespace

Result<ForecastRequest> forecastRequestFromJson(std::string_view utf8) {
    const auto object = parseStrictObject(utf8);
    if (!object) {
        return tl::unexpected(object.error());
    }
    JsonObjectReader in(*object, "", kTopKeys);
    in.need("history");
    const CivilDate today = readToday(in).value_or(CivilDate{});
    const std::map<Day, double> jobsOn = readHistory(in, today);

    std::vector<double> seen;
    std::vector<double> prior(std::begin(stock::LeadTimes::kPrior), std::end(stock::LeadTimes::kPrior));
    in.numbersWithin("leadTimes", kMostEntries, 0, kMostLeadDays, seen);
    in.numbersWithin("priorLeadDays", kMostEntries, 0, kMostLeadDays, prior);
    if (in.result() && seen.empty() && prior.empty()) {
        in.refuseValue("priorLeadDays", "nothing", "at least one, here or among leadTimes");
    }

    double rate = 0;
    const bool hasRate = in.has("priorRatePerDay");
    if (hasRate) {
        in.numberWithin("priorRatePerDay", kLeastRate, kMostJobsPerDay, rate);
    } else if (in.result() && jobsOn.empty()) {
        in.refuseValue("history", "nothing", "at least one day before today, when priorRatePerDay is not given");
    }

    stock::Service service;
    in.numberWithin("dailyRatio", 1, kMostRatio, service.dailyRatio);
    in.numberWithin("service", 0.5, 0.9999, service.chance);
    int jobsLeft = 0;
    in.whole("jobsLeft", jobsLeft);
    if (in.result() && (jobsLeft < 0 || jobsLeft > kMostJobsLeft)) {
        in.refuseValue("jobsLeft", std::to_string(jobsLeft), "0 to 100000");
    }
    if (!in.result()) {
        return tl::unexpected(in.result().error());
    }
    return ForecastRequest{.today = today,
                           .demand = demandFrom(jobsOn, today, hasRate ? rate : meanOf(jobsOn, today)),
                           .leadTimes = stock::LeadTimes(seen, prior),
                           .service = service,
                           .jobsLeft = in.has("jobsLeft") ? std::optional(jobsLeft) : std::nullopt};
}

} // namespace rw::exchange
