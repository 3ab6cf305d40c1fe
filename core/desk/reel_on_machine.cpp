// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/reel_on_machine.h"

#include "core/desk/reel_choice.h"
#include "core/desk/string_queue.h"

#include <algorithm>
#include <map>
#include <optional>
#include <vector>

namespace rw::desk {

namespace {
constexpr Length kNothing = Length::fromMillimetres(0);

/// The job's cuts of the string that may still go to another reel of that owner; none when one of them may not.
std::vector<WaitingCut> movable(const StringQueue& queue, JobId job, const Lot& there) {
    std::vector<WaitingCut> cuts;
    for (const WaitingCut& cut : queue.cuts()) {
        if (cut.job == job) {
            const auto planned = std::ranges::find(queue.lots(), cut.lot, &Lot::id);
            const bool onPacket = planned != queue.lots().end() && planned->kind == LotKind::Packet;
            if (cut.pinned || cut.begun || onPacket || cut.owner != there.owner) {
                return {};
            }
            cuts.push_back(cut);
        }
    }
    return cuts;
}

/// What a job's cuts lose where they are planned, in millimetres; nothing when a lot does not hold them.
std::optional<double> lostBy(const std::vector<WaitingCut>& cuts, StringQueue& queue, Instant now) {
    std::map<std::optional<LotId>, Length> planned;
    for (const WaitingCut& cut : cuts) {
        planned.try_emplace(cut.lot, kNothing).first->second += cut.length;
    }
    double lostMm = 0;
    for (const auto& [id, length] : planned) {
        const auto lot = std::ranges::find(queue.lots(), id, &Lot::id);
        if (!id || lot == queue.lots().end()) {
            return std::nullopt;
        }
        const stock::CutSource source = cutSource(*lot, queue.plannedOn(*id, cuts.front().job), now);
        if (!source.fits(length)) {
            return std::nullopt;
        }
        lostMm += queue.value().lostByCutting(source.usable(), length);
    }
    return lostMm;
}
} // namespace

bool preferReelOnMachine(Transaction& ledger, const Job& job, MachineId machine, Instant now) {
    const auto id = ledger.lots().lastCutOn(machine);
    const auto there = id ? ledger.lots().get(*id) : std::nullopt;
    if (!there || !there->isOpen() || there->kind == LotKind::Packet) {
        return false;
    }
    StringQueue queue(ledger, there->article, now);
    const std::vector<WaitingCut> cuts = movable(queue, *job.id, *there);
    const bool allThere = std::ranges::all_of(cuts, [&](const WaitingCut& cut) { return cut.lot == there->id; });
    if (cuts.empty() || allThere) {
        return false;
    }
    std::vector<WaitingCut> moved = cuts;
    std::ranges::for_each(moved, [&](WaitingCut& cut) { cut.lot = there->id; });
    const auto then = lostBy(moved, queue, now);
    const auto asPlanned = lostBy(cuts, queue, now);
    if (!then || (asPlanned && *then > *asPlanned + stock::kWorthChangingReelMm)) {
        return false;
    }
    for (const WaitingCut& cut : moved) {
        ledger.jobs().plan(cut.piece, cut.lot, cut.length, false);
    }
    return true;
}

} // namespace rw::desk
