// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/forecast_json.h"

#include "core/exchange/json_text.h"
#include "core/exchange/string_ahead_json.h"

namespace rw::exchange {

Forecast forecastOf(const ForecastRequest& request) {
    Forecast forecast;
    if (request.jobsLeft) {
        forecast.runOut = stock::RunOut{};
    }
    if (!request.demand) {
        return forecast;
    }
    const stock::Demand& demand = *request.demand;
    forecast.jobsPerDay = demand.jobsPerDay();
    forecast.s = stock::jobsUntilDelivery(demand, request.leadTimes, request.service);
    if (request.jobsLeft) {
        forecast.runOut = stock::runOutDates(demand, *request.jobsLeft, request.today);
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
        writeDate(out, "p10", forecast.runOut->p10);
        writeDate(out, "p50", forecast.runOut->p50);
        writeDate(out, "p90", forecast.runOut->p90);
        out.endObject();
    } else {
        out.nothing();
    }
    out.key("rate").number(forecast.jobsPerDay);
    out.endObject();
    return out.result();
}

} // namespace rw::exchange
