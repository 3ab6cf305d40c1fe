// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/commands.h"
#include "app/cli/reports.h"
#include "app/cli/shelf_ahead.h"
#include "core/exchange/json_text.h"
#include "core/exchange/string_ahead_json.h"

#include <algorithm>

namespace rw::cli {

namespace {
void writeLot(exchange::JsonText& json, const desk::ShelfLot& shelf) {
    const Lot& lot = shelf.lot;
    json.beginObject()
        .key("tag")
        .text(lot.tag)
        .key("kind")
        .text(lot.kind == LotKind::Reel     ? "reel"
              : lot.kind == LotKind::Packet ? "packet"
                                            : "remnant")
        .key("count")
        .whole(std::max(1, shelf.packets))
        .key("nominalMm")
        .whole(lot.nominal.millimetres())
        .key("leftMm")
        .whole(lot.length.millimetres())
        .key("promisedMm")
        .whole(shelf.promised.millimetres())
        .key("wholeJobsFree")
        .whole(shelf.whole.jobs)
        .key("nextShortByMm")
        .whole(shelf.whole.nextShortBy.millimetres())
        .key("sealed")
        .yesNo(lot.sealed)
        .key("measuredSinceLastCut")
        .yesNo(lot.measuredSinceLastCut)
        .endObject();
}

std::string asJson(const std::vector<desk::ShelfString>& strings) {
    exchange::JsonText json;
    json.beginObject().key("strings").beginList();
    for (const desk::ShelfString& string : strings) {
        json.beginObject()
            .key("code")
            .text(string.article.code)
            .key("name")
            .text(string.article.name)
            .key("leftMm")
            .whole(string.holding.left.millimetres())
            .key("promisedMm")
            .whole(string.holding.promised.millimetres())
            .key("freeMm")
            .whole(string.holding.free().millimetres())
            .key("usableMm")
            .whole(string.usable.millimetres())
            .key("perJobMm")
            .whole(string.perJob.millimetres())
            .key("wholeJobsFree")
            .whole(string.wholeJobsFree);
        exchange::writeAhead(json, *string.ahead);
        json.key("lots").beginList();
        for (const desk::ShelfLot& lot : string.lots) {
            writeLot(json, lot);
        }
        json.endList().endObject();
    }
    json.endList().endObject();
    return json.result();
}
} // namespace

Result<Answer> runStock(const Given& given) {
    auto shop = ShopLedger::open(given.value("--ledger"), sql::IfMissing::Refuse);
    if (!shop) {
        return tl::unexpected(shop.error());
    }
    const auto strings = shelfAheadOf(*shop, given);
    if (!strings) {
        return tl::unexpected(strings.error());
    }
    return Answer{given.has("--json") ? asJson(*strings) : joined(stockLines(*strings, readerOf(*shop)))};
}

} // namespace rw::cli
