// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/string_ahead_json.h"

#include "core/calendar/civil_date_text.h"
#include "core/stock/order_point.h"

namespace rw::exchange {

void writeDate(JsonText& json, std::string_view key, const std::optional<CivilDate>& date) {
    json.key(key);
    if (date) {
        json.text(civilDateText(*date));
    } else {
        json.nothing();
    }
}

void writeAhead(JsonText& json, const desk::StringAhead& ahead) {
    json.key("runningShort").yesNo(ahead.runningShort);
    json.key("onRequest").yesNo(ahead.onRequest);
    if (!ahead.isKnown()) {
        for (const std::string_view key : {"s", "orderPoint", "rate", "chanceOfNone", "runOut"}) {
            json.key(key).nothing();
        }
        return;
    }
    json.key("s").whole(ahead.s);
    json.key("orderPoint").number(stock::orderPoint(ahead.s));
    json.key("rate").number(ahead.jobsPerDay);
    json.key("chanceOfNone").number(ahead.chanceOfNone);
    json.key("runOut").beginObject(JsonText::Shape::Line);
    writeDate(json, "p10", ahead.runOut.p10);
    writeDate(json, "p50", ahead.runOut.p50);
    writeDate(json, "p90", ahead.runOut.p90);
    json.endObject();
}

} // namespace rw::exchange
