// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/cut_input.h"
#include "app/cli/reports.h"
#include "core/exchange/cut_json.h"
#include "ui/text/plan_words.h"

namespace rw::cli {

Result<Answer> runCut(const Given& given) {
    const auto planned = planInput(given.value("--input"));
    if (!planned) {
        return tl::unexpected(planned.error());
    }
    if (!given.has("--json")) {
        return Answer{planReport(planned->plan)};
    }
    std::vector<std::string> sentences;
    for (const length::Why& why : planned->plan.why) {
        sentences.push_back(ui::whyText(why, QLocale::c()).toStdString());
    }
    return Answer{exchange::cutPlanToJson(planned->plan, planned->request, sentences)};
}

} // namespace rw::cli
