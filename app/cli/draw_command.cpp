// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/cut_input.h"
#include "app/cli/reports.h"
#include "app/cli/text_table.h"
#include "core/exchange/json_text.h"
#include "ui/documents/head_svg.h"
#include "ui/text/format.h"
#include "ui/text/plan_words.h"

#include <filesystem>

namespace rw::cli {

Result<Answer> runDraw(const Given& given) {
    const std::string& input = given.value("--input");
    const std::string& out = given.value("--out");
    std::error_code ignored;
    if (std::filesystem::equivalent(out, input, ignored)) {
        return refuse(Code::FileUnwritable,
                      {{"file", out}, {"reason", "it is the request, which the picture must not replace"}});
    }
    const auto planned = planInput(input);
    if (!planned) {
        return tl::unexpected(planned.error());
    }
    const QString path = ui::fromUtf8(out);
    if (const auto written = ui::writeHeadSvg(path, planned->plan); !written) {
        return tl::unexpected(written.error());
    }
    if (given.has("--json")) {
        exchange::JsonText json;
        json.beginObject().key("file").text(out).key("route").text(planned->plan.route).endObject();
        return Answer{json.result()};
    }
    return Answer{
        joined({QStringLiteral("The head, %1, is in %2.").arg(ui::routeName(planned->plan), printable(path))})};
}

} // namespace rw::cli
