// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/reports.h"
#include "app/cli/text_table.h"
#include "core/exchange/json_text.h"
#include "ui/documents/job_card.h"
#include "ui/text/format.h"

#include <charconv>
#include <filesystem>

namespace rw::cli {

namespace {
Result<std::int64_t> jobNumber(const std::string& text) {
    std::int64_t number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || end != text.data() + text.size() || number < 1) {
        return refuse(Code::Unreadable, {{"what", "job number"}, {"text", text}});
    }
    return number;
}

Result<ui::CardPaper> paperCalled(const std::optional<std::string>& text) {
    if (!text || *text == "A4") {
        return ui::CardPaper::A4;
    }
    if (*text == "A5") {
        return ui::CardPaper::A5Landscape;
    }
    return refuse(Code::ImpossibleValue, {{"key", "--paper"}, {"text", *text}, {"expected", "A4 or A5"}});
}

Result<std::optional<MachineId>> machineCalled(desk::Transaction& ledger, const std::optional<std::string>& name) {
    if (!name) {
        return std::optional<MachineId>();
    }
    for (const desk::Machine& machine : ledger.shop().machines()) {
        if (machine.name == *name) {
            return machine.id;
        }
    }
    return refuse(Code::NotFound, {{"what", "machine"}, {"text", *name}});
}

Result<desk::JobCard> cardOf(desk::Transaction& ledger, std::int64_t number,
                             const std::optional<std::string>& machineName) {
    const auto job = ledger.jobs().byNumber(number);
    if (!job) {
        return refuse(Code::NotFound, {{"what", "job"}, {"text", std::to_string(number)}});
    }
    const auto machine = machineCalled(ledger, machineName);
    if (!machine) {
        return tl::unexpected(machine.error());
    }
    return desk::jobCard(ledger, *job, *machine);
}

/// A card written over the ledger, or over what SQLite keeps beside it, would be the end of the shop's books.
bool isTheLedger(const std::string& out, const std::string& ledger) {
    std::error_code ignored;
    for (const char* beside : {"", "-wal", "-shm"}) {
        if (std::filesystem::equivalent(out, ledger + beside, ignored)) {
            return true;
        }
    }
    return false;
}
} // namespace

Result<Answer> runCard(const Given& given) {
    const auto number = jobNumber(given.value("--job"));
    if (!number) {
        return tl::unexpected(number.error());
    }
    if (isTheLedger(given.value("--out"), given.value("--ledger"))) {
        return refuse(Code::FileUnwritable,
                      {{"file", given.value("--out")}, {"reason", "it is the ledger, which a card must not replace"}});
    }
    const auto paper = paperCalled(given.maybe("--paper"));
    if (!paper) {
        return tl::unexpected(paper.error());
    }
    auto shop = ShopLedger::open(given.value("--ledger"), sql::IfMissing::Refuse);
    if (!shop) {
        return tl::unexpected(shop.error());
    }
    const auto card =
        shop->read([&](desk::Transaction& ledger) { return cardOf(ledger, *number, given.maybe("--machine")); });
    if (!card) {
        return tl::unexpected(card.error());
    }
    const Reader reader = readerOf(*shop);
    ui::JobCardStyle style;
    style.locale = reader.locale;
    style.zone = reader.zone;
    const std::string& path = given.value("--out");
    if (const auto written = ui::writeJobCardPdf(ui::fromUtf8(path), *card, style, *paper); !written) {
        return tl::unexpected(written.error());
    }
    if (given.has("--json")) {
        exchange::JsonText json;
        json.beginObject().key("job").whole(*number).key("file").text(path).endObject();
        return Answer{json.result()};
    }
    return Answer{
        joined({QStringLiteral("The card of job %1 is in %2.").arg(*number).arg(printable(ui::fromUtf8(path)))})};
}

} // namespace rw::cli
