// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/forecast_json.h"

#include "core/calendar/civil_date_text.h"
#include "core/exchange/json_text.h"

#include <cmath>

namespace rw::exchange {

namespace {
using std::chrono::sys_days;

std::optional<CivilDate> dateAfter(CivilDate today, double days) {
    using namespace std::chrono_literals;
    const sys_days last = 9999y / 12 / 31;
    if (days > static_cast<double>((last - sys_days(today)).count())) {
        return std::nullopt;
    }
    return CivilDate(sys_days(today) + std::chrono::days(static_cast<int>(std::floor(days))));
}

void writeDate(JsonText& out, const std::optional<CivilDate>& date) {
    if (date) {
        out.text(civilDateText(*date));
    } else {
        out.nothing();
    }
}
} // namespace

Forecast forecastOf(const ForecastRequest& request) {
    Forecast forecast;
    if (request.jobsLeft) {
        forecast.runOut = RunOut{};
    }
    if (!request.demand) {
        return forecast;
    }
    const stock::Demand& demand = *request.demand;
    forecast.jobsPerDay = demand.jobsPerDay();
    forecast.s = stock::jobsUntilDelivery(demand, request.leadTimes, request.service);
    if (request.jobsLeft) {
        const auto date = [&](double p) {
            return dateAfter(request.today, stock::runOutDay(demand, *request.jobsLeft, p));
        };
        forecast.runOut = RunOut{.p10 = date(0.1), .p50 = date(0.5), .p90 = date(0.9)};
    }
    return forecast;
}

std::string forecastToJson(const Forecast& forecast) {
    JsonText out;
    out.beginObject();
    out.key("s").whole(forecast.s);
    out.key("orderPoint").number(stock::orderPoint(forecast.s));
    out.key("runOut");
    if (forecast.runOut) {
        out.beginObject(JsonText::Shape::Line);
        writeDate(out.key("p10"), forecast.runOut->p10);
        writeDate(out.key("p50"), forecast.runOut->p50);
        writeDate(out.key("p90"), forecast.runOut->p90);
        out.endObject();
    } else {
        out.nothing();
    }
    out.key("rate").number(forecast.jobsPerDay);
    out.endObject();
    return out.result();
}

} // namespace rw::exchange
