// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/file_input.h"
#include "app/cli/reports.h"
#include "core/exchange/forecast_json.h"
#include "ui/text/forecast_words.h"

namespace rw::cli {

Result<Answer> runForecast(const Given& given) {
    const auto bytes = readInput(given.value("--input"));
    if (!bytes) {
        return tl::unexpected(bytes.error());
    }
    const auto request = exchange::forecastRequestFromJson(*bytes);
    if (!request) {
        return tl::unexpected(request.error());
    }
    const exchange::Forecast forecast = exchange::forecastOf(*request);
    if (given.has("--json")) {
        return Answer{exchange::forecastToJson(forecast)};
    }
    const QLocale locale = QLocale::system();
    QStringList lines{ui::demandText(forecast.jobsPerDay, locale),
                      ui::orderAtText(forecast.s, request->service.chance, locale)};
    if (forecast.runOut) {
        lines << ui::runOutText(forecast.runOut->p50, forecast.runOut->p10, locale);
    }
    return Answer{joined(lines)};
}

} // namespace rw::cli
