// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/reports.h"
#include "core/exchange/json_text.h"
#include "ui/text/sentences.h"

#include <QDateTime>

namespace rw::cli {

namespace {
struct Told {
    Customer customer;
    std::vector<desk::HistoryEntry> entries;
};

Result<std::vector<Told>> find(desk::Transaction& ledger, const std::string& text) {
    const auto people = desk::findPeople(ledger, text);
    if (!people) {
        return tl::unexpected(people.error());
    }
    std::vector<Told> told;
    for (const desk::PersonFound& person : *people) {
        auto entries = desk::historyOfCustomer(ledger, *person.customer.id);
        if (!entries) {
            return tl::unexpected(entries.error());
        }
        told.push_back({person.customer, *std::move(entries)});
    }
    return told;
}

std::string isoTime(Instant at) {
    return QDateTime::fromMSecsSinceEpoch(at.time_since_epoch().count(), Qt::UTC).toString(Qt::ISODate).toStdString();
}

void writePair(exchange::JsonText& json, std::string_view key, const TensionPair& pair) {
    json.key(key)
        .beginObject(exchange::JsonText::Shape::Line)
        .key("mains")
        .text(pair.mains.text())
        .key("crosses")
        .text(pair.crosses.text())
        .endObject();
}

void writeCuts(exchange::JsonText& json, const Job& job) {
    json.key("cuts").beginList();
    for (const JobPiece& piece : job.pieces) {
        for (const Attempt& attempt : piece.attempts) {
            if (!attempt.cut) {
                continue;
            }
            json.beginObject(exchange::JsonText::Shape::Line)
                .key("piece")
                .text(pieceRoleText(piece.role))
                .key("lengthMm")
                .whole(attempt.cut->length.millimetres())
                .key("lot")
                .text(attempt.cut->lotTag);
            if (attempt.lost) {
                json.key("lost").text(lostReasonText(*attempt.lost));
            }
            json.endObject();
        }
    }
    json.endList();
}

void writeJob(exchange::JsonText& json, const desk::HistoryEntry& entry) {
    const Job& job = entry.job;
    json.beginObject()
        .key("number")
        .whole(job.number)
        .key("frame")
        .text(entry.frame)
        .key("mark")
        .text(entry.mark)
        .key("state")
        .text(jobStateText(job.state))
        .key("logged")
        .text(isoTime(job.logged))
        .key("method")
        .text(methodText(job.method))
        .key("route")
        .text(job.route);
    json.key("strings").beginList(exchange::JsonText::Shape::Line);
    for (const StringArticle& article : entry.strings) {
        json.text(article.name);
    }
    json.endList();
    writePair(json, "asked", job.asked);
    if (job.strung) {
        writePair(json, "strung", job.strung->tensions);
        json.key("strungAt").text(isoTime(job.strung->by.at)).key("machine").text(entry.machine);
    }
    writeCuts(json, job);
    json.key("total").text(job.total.text()).key("currency").text(job.total.currency().code());
    json.key("note").text(job.note).endObject();
}

std::string asJson(const std::vector<Told>& people) {
    exchange::JsonText json;
    json.beginObject().key("customers").beginList();
    for (const Told& told : people) {
        json.beginObject().key("name").text(told.customer.name).key("jobs").beginList();
        for (const desk::HistoryEntry& entry : told.entries) {
            writeJob(json, entry);
        }
        json.endList().endObject();
    }
    json.endList().endObject();
    return json.result();
}
} // namespace

Result<Answer> runHistory(const Given& given) {
    const std::string& text = given.value("--customer");
    auto shop = ShopLedger::open(given.value("--ledger"), sql::IfMissing::Refuse);
    if (!shop) {
        return tl::unexpected(shop.error());
    }
    const auto people = shop->read([&](desk::Transaction& ledger) { return find(ledger, text); });
    if (!people) {
        return tl::unexpected(people.error());
    }
    if (people->empty()) {
        const Refusal nobody(Code::NotFound, {{"what", "customer"}, {"text", text}});
        return Answer{given.has("--json") ? asJson(*people) : std::string(),
                      ui::sentenceFor(nobody).toStdString() + "\n", kAnswerIsNo};
    }
    if (given.has("--json")) {
        return Answer{asJson(*people)};
    }
    const Reader reader = readerOf(*shop);
    QStringList lines;
    for (const Told& told : *people) {
        if (!lines.isEmpty()) {
            lines << QString();
        }
        lines << historyLines(told.customer, told.entries, reader);
    }
    return Answer{joined(lines)};
}

} // namespace rw::cli
