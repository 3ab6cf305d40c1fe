// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/file_input.h"
#include "app/cli/reports.h"
#include "core/exchange/cut_json.h"
#include "core/length/cut_plan.h"
#include "ui/text/plan_words.h"

namespace rw::cli {

Result<Answer> runCut(const Given& given) {
    const std::string& path = given.value("--input");
    const auto bytes = readInput(path);
    if (!bytes) {
        return tl::unexpected(bytes.error());
    }
    const auto request = exchange::cutRequestFromJson(*bytes);
    if (!request) {
        return tl::unexpected(request.error());
    }
    const auto plan = length::planCut(*request);
    if (!plan) {
        return tl::unexpected(plan.error());
    }
    if (!given.has("--json")) {
        return Answer{planReport(*plan)};
    }
    std::vector<std::string> sentences;
    for (const length::Why& why : plan->why) {
        sentences.push_back(ui::whyText(why, QLocale::c()).toStdString());
    }
    return Answer{exchange::cutPlanToJson(*plan, *request, sentences)};
}

} // namespace rw::cli
