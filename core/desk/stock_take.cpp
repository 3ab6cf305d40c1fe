// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/stock_take.h"

#include <algorithm>

namespace rw::desk {

namespace {
std::string nameOf(Transaction& ledger, StaffId id) {
    const std::vector<StaffMember> staff = ledger.shop().staff();
    const auto member = std::ranges::find(staff, std::optional(id), &StaffMember::id);
    return member == staff.end() ? std::string() : member->name;
}

/// The last weighing of each lot, in the order of these.
Result<std::vector<WeighIn>> linesOf(Transaction& ledger, StockTakeId take) {
    std::vector<WeighIn> lines;
    const std::vector<KeptWeighing> weighings = ledger.weighings().ofStockTake(take);
    for (auto weighing = weighings.begin(); weighing != weighings.end(); ++weighing) {
        const auto isSameLot = [&](const KeptWeighing& later) { return later.lot == weighing->lot; };
        if (std::any_of(std::next(weighing), weighings.end(), isSameLot)) {
            continue; // it was put on the scale again
        }
        auto line = keptWeighIn(ledger, *weighing);
        if (!line) {
            return tl::unexpected(line.error());
        }
        lines.push_back(*std::move(line));
    }
    return lines;
}

Result<StockTakeSheet> sheetOf(Transaction& ledger, const std::optional<StockTake>& take) {
    StockTakeSheet sheet{.take = take};
    if (take) {
        sheet.startedBy = nameOf(ledger, take->started.staff);
        sheet.endedBy = take->endedBy ? nameOf(ledger, *take->endedBy) : std::string();
        auto lines = linesOf(ledger, take->id);
        if (!lines) {
            return tl::unexpected(lines.error());
        }
        sheet.lines = *std::move(lines);
    }
    for (Lot& lot : ledger.lots().open()) {
        const auto isIt = [&](const WeighIn& line) { return line.weighing.lot == *lot.id; };
        if (lot.isFullPacket()) {
            ++sheet.packets;
        } else if (std::ranges::none_of(sheet.lines, isIt)) {
            sheet.toWeigh.push_back(std::move(lot));
        }
    }
    std::ranges::sort(sheet.toWeigh, {}, &Lot::tag);
    return sheet;
}
} // namespace

int StockTakeSheet::findings() const {
    return static_cast<int>(std::ranges::count_if(lines, [](const WeighIn& line) { return line.finding.isFinding; }));
}

Result<StockTakeSheet> stockTakeSheet(Transaction& ledger) {
    return sheetOf(ledger, ledger.weighings().stockTakeGoingOn());
}

StockTakeId goOnWithStockTake(Transaction& ledger, const By& by) {
    const auto goingOn = ledger.weighings().stockTakeGoingOn();
    return goingOn ? goingOn->id : ledger.weighings().startStockTake(by);
}

Result<StockTakeSheet> endStockTake(Transaction& ledger, StockTakeId stockTake, const By& by) {
    const auto take = ledger.weighings().stockTake(stockTake);
    if (!take) {
        return refuse(Code::NotFound, {{"what", "stock-take"}});
    }
    if (take->isGoingOn()) {
        ledger.weighings().endStockTake(stockTake, by);
    }
    return sheetOf(ledger, ledger.weighings().stockTake(stockTake));
}

} // namespace rw::desk
