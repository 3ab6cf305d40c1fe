// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/plan_of_ledger.h"

#include "app/cli/now.h"
#include "app/cli/reports.h"
#include "app/cli/text_table.h"
#include "core/desk/queue_plans.h"
#include "core/exchange/json_text.h"
#include "core/exchange/plan_json.h"
#include "ui/text/format.h"
#include "ui/text/queue_words.h"
#include "ui/text/words.h"

#include <algorithm>

namespace rw::cli {

namespace {
using Plan = desk::QueuePlanOfString;
using Reason = stock::QueueReason;

constexpr std::chrono::milliseconds kLimit{500};

QString pieceName(const WaitingCut& cut) {
    return QStringLiteral("%1 %2").arg(QString::number(cut.jobNumber), ui::pieceWord(cut.role));
}

QString lotName(const Plan& plan, const std::optional<LotId>& lot, desk::Transaction& ledger) {
    const auto known = std::ranges::find(plan.lots, lot, &Lot::id);
    const auto found = known != plan.lots.end() ? std::optional(*known) : lot ? ledger.lots().get(*lot) : std::nullopt;
    return found ? printable(ui::fromUtf8(found->tag)) : QString();
}

/// A plan with the names of its lots, which outlive the transaction.
struct Named {
    Plan plan;
    QStringList lotOfCut; ///< "" for none
};

QString sentenceOf(const Reason& reason, const Plan& plan, const QLocale& locale) {
    const QString lot = reason.lot ? printable(ui::fromUtf8(plan.lots[*reason.lot].tag)) : QString();
    const QString piece = reason.piece ? pieceName(plan.cuts[*reason.piece]) : QString();
    return ui::queueReasonText(reason, lot, piece, ui::Wanted::Jobs, locale);
}

QString sentenceOf(const Plan::Overfull& lot, const QLocale& locale) {
    return QStringLiteral("%1: %2 more is planned there than it holds")
        .arg(printable(ui::fromUtf8(lot.tag)), ui::lengthText(lot.by, locale));
}

QString whyFixed(const WaitingCut& cut) {
    return cut.pinned ? QStringLiteral("chosen by hand") : cut.begun ? QStringLiteral("begun") : QString();
}

QStringList linesOf(const Named& named, const QLocale& locale) {
    const Plan& plan = named.plan;
    QStringList lines{
        printable(QStringLiteral("%1 %2").arg(ui::fromUtf8(plan.article.code), ui::fromUtf8(plan.article.name)))};
    TextTable table({TextTable::Align::Left, TextTable::Align::Right, TextTable::Align::Left, TextTable::Align::Left});
    for (std::size_t i = 0; i < plan.cuts.size(); ++i) {
        const WaitingCut& cut = plan.cuts[i];
        const QString lot = named.lotOfCut[static_cast<qsizetype>(i)];
        table.add({pieceName(cut), ui::lengthText(cut.length, locale),
                   lot.isEmpty() ? QStringLiteral("no lot") : QStringLiteral("off %1").arg(lot), whyFixed(cut)});
    }
    for (const QString& line : table.lines()) {
        lines << QStringLiteral("  ") + line;
    }
    for (const Reason& reason : plan.reasons) {
        lines << QStringLiteral("  ") + sentenceOf(reason, plan, locale);
    }
    for (const Plan::Overfull& lot : plan.overfull) {
        lines << QStringLiteral("  ") + sentenceOf(lot, locale);
    }
    return lines;
}

void writeCut(exchange::JsonText& json, const WaitingCut& cut, const QString& lot) {
    json.beginObject(exchange::JsonText::Shape::Line);
    json.key("job").whole(cut.jobNumber).key("piece").text(pieceRoleText(cut.role));
    json.key("lengthMm").whole(cut.length.millimetres()).key("lot");
    if (lot.isEmpty()) {
        json.nothing();
    } else {
        json.text(lot.toStdString());
    }
    json.key("pinned").yesNo(cut.pinned).key("begun").yesNo(cut.begun).endObject();
}

void writeReason(exchange::JsonText& json, const Reason& reason, const Plan& plan) {
    json.beginObject(exchange::JsonText::Shape::Line);
    json.key("kind").text(exchange::queueReasonKindText(reason.kind));
    if (reason.piece) {
        json.key("job").whole(plan.cuts[*reason.piece].jobNumber);
    }
    if (reason.lot) {
        json.key("lot").text(plan.lots[*reason.lot].tag);
        json.key("leavesMm").whole(reason.leaves.millimetres()).key("likelyLostMm").thousandths(reason.lostMm);
    }
    json.key("sentence").text(sentenceOf(reason, plan, QLocale::c()).toStdString()).endObject();
}

std::string asJson(const std::vector<Named>& strings) {
    exchange::JsonText json;
    json.beginObject().key("strings").beginList();
    for (const auto& [plan, lotOfCut] : strings) {
        json.beginObject().key("code").text(plan.article.code).key("cuts").beginList();
        for (std::size_t i = 0; i < plan.cuts.size(); ++i) {
            writeCut(json, plan.cuts[i], lotOfCut[static_cast<qsizetype>(i)]);
        }
        json.endList().key("proven").yesNo(plan.proven).key("why").beginList();
        for (const Reason& reason : plan.reasons) {
            writeReason(json, reason, plan);
        }
        json.endList().key("overfull").beginList();
        for (const Plan::Overfull& lot : plan.overfull) {
            json.beginObject(exchange::JsonText::Shape::Line).key("lot").text(lot.tag);
            json.key("byMm").whole(lot.by.millimetres()).endObject();
        }
        json.endList().endObject();
    }
    json.endList().endObject();
    return json.result();
}
} // namespace

Result<Answer> planOfLedger(const Given& given) {
    auto shop = ShopLedger::open(given.value("--ledger"), sql::IfMissing::Refuse);
    if (!shop) {
        return tl::unexpected(shop.error());
    }
    const auto strings = shop->read([&](desk::Transaction& ledger) -> Result<std::vector<Named>> {
        const auto now = nowIn(ledger, given.maybe("--now"));
        if (!now) {
            return tl::unexpected(now.error());
        }
        return desk::queuePlans(ledger, *now, kLimit).map([&](std::vector<Plan> plans) {
            std::vector<Named> named;
            for (Plan& plan : plans) {
                QStringList lots;
                for (const WaitingCut& cut : plan.cuts) {
                    lots << lotName(plan, cut.lot, ledger);
                }
                named.push_back({std::move(plan), std::move(lots)});
            }
            return named;
        });
    });
    if (!strings) {
        return tl::unexpected(strings.error());
    }
    if (given.has("--json")) {
        return Answer{asJson(*strings)};
    }
    QStringList lines;
    for (const Named& string : *strings) {
        lines << linesOf(string, QLocale::system());
    }
    return Answer{joined(lines.isEmpty() ? QStringList{QStringLiteral("No job waits for string.")} : lines)};
}

} // namespace rw::cli
