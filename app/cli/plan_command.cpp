// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/file_input.h"
#include "app/cli/plan_of_ledger.h"
#include "app/cli/reports.h"
#include "app/cli/text_table.h"
#include "core/exchange/plan_json.h"
#include "ui/text/format.h"
#include "ui/text/queue_words.h"

namespace rw::cli {

namespace {
QString nameOf(const std::vector<exchange::Label>& names, const std::optional<std::size_t>& at) {
    return at ? printable(ui::fromUtf8(names[*at].text)) : QString();
}

QStringList sentencesOf(const std::vector<stock::QueueReason>& reasons, const exchange::PlanRequest& request,
                        const QLocale& locale) {
    const auto wanted = request.rules.sameReel ? ui::Wanted::Jobs : ui::Wanted::Pieces;
    QStringList sentences;
    for (const stock::QueueReason& reason : reasons) {
        sentences << ui::queueReasonText(reason, nameOf(request.lotNames, reason.lot),
                                         nameOf(request.pieceNames, reason.piece), wanted, locale);
    }
    return sentences;
}

QStringList assignmentLines(const stock::QueuePlan& plan, const exchange::PlanRequest& request, const QLocale& locale) {
    TextTable table({TextTable::Align::Left, TextTable::Align::Right, TextTable::Align::Left});
    for (std::size_t piece = 0; piece < plan.placing.size(); ++piece) {
        const auto lot = plan.placing[piece];
        table.add({nameOf(request.pieceNames, piece), ui::lengthText(request.pieces[piece].length, locale),
                   lot ? QStringLiteral("off %1").arg(nameOf(request.lotNames, lot)) : QStringLiteral("no lot")});
    }
    return table.lines();
}
} // namespace

Result<Answer> runPlan(const Given& given) {
    if (given.has("--ledger") && given.has("--input")) {
        return refuse(Code::ImpossibleValue,
                      {{"key", "--input"}, {"text", "given with --ledger"}, {"expected", "one of the two"}});
    }
    if (given.has("--ledger")) {
        return planOfLedger(given);
    }
    if (!given.has("--input")) {
        return refuse(Code::Missing, {{"what", "option --ledger or --input"}});
    }
    const auto bytes = readInput(given.value("--input"));
    if (!bytes) {
        return tl::unexpected(bytes.error());
    }
    const auto request = exchange::planRequestFromJson(*bytes);
    if (!request) {
        return tl::unexpected(request.error());
    }
    const stock::RemnantValue value(request->mix, request->shortestUseful, request->waitingCost);
    const stock::QueuePlan plan = stock::planQueue(request->lots, request->pieces, value, request->rules);
    const auto reasons = stock::reasonsFor(plan, request->lots, request->pieces, request->uncertaintiesMm, value);
    if (!given.has("--json")) {
        const QLocale locale = QLocale::system();
        return Answer{
            joined(assignmentLines(plan, *request, locale) << QString() << sentencesOf(reasons, *request, locale))};
    }
    std::vector<std::string> sentences;
    for (const QString& sentence : sentencesOf(reasons, *request, QLocale::c())) {
        sentences.push_back(sentence.toStdString());
    }
    return Answer{exchange::planToJson(plan, *request, reasons, sentences)};
}

} // namespace rw::cli
