// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/reports.h"
#include "app/cli/text_table.h"
#include "core/exchange/json_text.h"
#include "ui/text/format.h"

namespace rw::cli {

namespace {
std::string asJson(const std::string& ledger, const std::vector<desk::Finding>& findings) {
    exchange::JsonText json;
    json.beginObject().key("ledger").text(ledger).key("whole").yesNo(findings.empty()).key("findings").beginList();
    for (const desk::Finding& finding : findings) {
        json.beginObject().key("rule").text(finding.rule).key("what").text(finding.what).endObject();
    }
    json.endList().endObject();
    return json.result();
}
} // namespace

Result<Answer> runCheck(const Given& given) {
    auto shop = ShopLedger::open(given.value("--ledger"), sql::IfMissing::Refuse);
    if (!shop) {
        return tl::unexpected(shop.error());
    }
    const std::vector<desk::Finding> findings = shop->ledger().check();
    const int code = findings.empty() ? kDone : kAnswerIsNo;
    if (given.has("--json")) {
        return Answer{asJson(shop->address(), findings), {}, code};
    }
    QStringList lines;
    for (const desk::Finding& finding : findings) {
        lines << QStringLiteral("▲ %1: %2")
                     .arg(printable(ui::fromUtf8(finding.rule)), printable(ui::fromUtf8(finding.what)));
    }
    const QString ledger = printable(ui::fromUtf8(shop->address()));
    lines << (findings.empty()       ? QStringLiteral("%1 is whole.").arg(ledger)
              : findings.size() == 1 ? QStringLiteral("%1: 1 thing is wrong.").arg(ledger)
                                     : QStringLiteral("%1: %2 things are wrong.").arg(ledger).arg(findings.size()));
    return Answer{joined(lines), {}, code};
}

} // namespace rw::cli
