// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/reports.h"
#include "app/cli/text_table.h"
#include "app/files/ledger_guard.h"
#include "core/exchange/json_text.h"
#include "ui/documents/slip.h"
#include "ui/text/format.h"

#include <charconv>

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

Result<ui::Slip> slipCalled(const std::optional<std::string>& text) {
    if (!text) {
        return ui::Slip::JobCard;
    }
    for (const ui::Slip slip : ui::kSlips) {
        if (ui::slipCode(slip).toStdString() == *text) {
            return slip;
        }
    }
    return refuse(Code::ImpossibleValue,
                  {{"key", "--slip"}, {"text", *text}, {"expected", "card, tag, ticket, label or ready"}});
}

Result<ui::PaperSize> paperCalled(const std::optional<std::string>& text, ui::Slip slip) {
    if (!text) {
        return ui::usualPaper(slip);
    }
    if (*text == "A4") {
        return ui::PaperSize::A4;
    }
    if (*text == "A6") {
        return ui::PaperSize::A6;
    }
    if (*text == "A7") {
        return ui::PaperSize::A7Landscape;
    }
    if (*text == "A5") {
        return ui::PaperSize::A5Landscape;
    }
    if (*text == "62x90") {
        return ui::PaperSize::RollLong;
    }
    if (*text == "62x25") {
        return ui::PaperSize::RollShort;
    }
    return refuse(Code::ImpossibleValue,
                  {{"key", "--paper"}, {"text", *text}, {"expected", "A4, A5, A6, A7, 62x90 or 62x25"}});
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

Result<desk::JobPaper> paperOf(desk::Transaction& ledger, std::int64_t number,
                               const std::optional<std::string>& machineName) {
    const auto job = ledger.jobs().byNumber(number);
    if (!job) {
        return refuse(Code::NotFound, {{"what", "job"}, {"text", std::to_string(number)}});
    }
    const auto machine = machineCalled(ledger, machineName);
    if (!machine) {
        return tl::unexpected(machine.error());
    }
    return desk::jobPaper(ledger, *job, *machine);
}
} // namespace

Result<Answer> runCard(const Given& given) {
    const auto number = jobNumber(given.value("--job"));
    if (!number) {
        return tl::unexpected(number.error());
    }
    if (const auto guarded = app::mustNotReplaceLedger(given.value("--out"), given.value("--ledger")); !guarded) {
        return tl::unexpected(guarded.error());
    }
    const auto slip = slipCalled(given.maybe("--slip"));
    if (!slip) {
        return tl::unexpected(slip.error());
    }
    const auto size = paperCalled(given.maybe("--paper"), *slip);
    if (!size) {
        return tl::unexpected(size.error());
    }
    auto shop = ShopLedger::open(given.value("--ledger"), sql::IfMissing::Refuse);
    if (!shop) {
        return tl::unexpected(shop.error());
    }
    const auto paper =
        shop->read([&](desk::Transaction& ledger) { return paperOf(ledger, *number, given.maybe("--machine")); });
    if (!paper) {
        return tl::unexpected(paper.error());
    }
    const Reader reader = readerOf(*shop);
    ui::JobCardStyle style;
    style.locale = reader.locale;
    style.zone = reader.zone;
    const std::string& path = given.value("--out");
    if (const auto written = ui::writeSlipPdf(ui::fromUtf8(path), *slip, *paper, *size, style); !written) {
        return tl::unexpected(written.error());
    }
    if (given.has("--json")) {
        exchange::JsonText json;
        json.beginObject().key("job").whole(*number).key("file").text(path).endObject();
        return Answer{json.result()};
    }
    return Answer{joined({QStringLiteral("The %1 of job %2 is in %3.")
                              .arg(ui::slipWord(*slip), QString::number(*number), printable(ui::fromUtf8(path)))})};
}

} // namespace rw::cli
