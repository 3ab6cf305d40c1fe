// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/lot_care.h"

#include "core/desk/lookups.h"
#include "core/desk/replan.h"

#include <algorithm>

namespace rw::desk {

namespace {
constexpr Length kNothing = Length::fromMillimetres(0);

MovementReason reasonOf(LotLeaves how) {
    return how == LotLeaves::ThrownAway ? MovementReason::ThrownAway : MovementReason::Returned;
}

Movement moved(const Lot& lot, MovementReason reason, Length change, const By& by, std::string words) {
    return {.id = std::nullopt,
            .lot = *lot.id,
            .reason = reason,
            .change = change,
            .attempt = std::nullopt,
            .lostReason = std::nullopt,
            .corrects = std::nullopt,
            .by = by,
            .words = std::move(words)};
}

bool mayBeTakenBack(const Movement& movement) {
    switch (movement.reason) {
    case MovementReason::Received:
    case MovementReason::Measured:
    case MovementReason::Weighed:
    case MovementReason::Returned:
    case MovementReason::ThrownAway:
        return !movement.corrects;
    case MovementReason::Cut:
    case MovementReason::Lost:
        return false;
    }
    return false;
}

/// The movement as it stands in its lot's life; nothing when it was taken back before.
Result<std::optional<Movement>> toTakeBack(Transaction& ledger, const Lot& lot, MovementId id) {
    const std::vector<Movement> movements = ledger.lots().movements(*lot.id);
    const auto meant = std::ranges::find(movements, std::optional(id), &Movement::id);
    if (meant == movements.end()) {
        return refuse(Code::NotFound, {{"what", "movement"}});
    }
    if (std::ranges::find(movements, std::optional(id), &Movement::corrects) != movements.end()) {
        return std::optional<Movement>();
    }
    if (!mayBeTakenBack(*meant)) {
        return refuse(Code::ImpossibleValue, {{"key", "movement"},
                                              {"text", std::string(movementReasonText(meant->reason))},
                                              {"expected", "a step of the stockroom"}});
    }
    if (movements.back().id != id) {
        return refuse(Code::ChangedMeanwhile, {{"what", "lot"}, {"lot", lot.tag}});
    }
    return std::optional(*meant);
}

Result<Lot> takeBackOne(Transaction& ledger, const TakeBack::Booked& booked, const By& by) {
    auto lot = lotOf(ledger, booked.lot);
    if (!lot) {
        return lot;
    }
    const auto movement = toTakeBack(ledger, *lot, booked.movement);
    if (!movement) {
        return tl::unexpected(movement.error());
    }
    if (!*movement) {
        return lot;
    }
    if (!lot->isOpen()) {
        ledger.lots().reopen(booked.lot);
    }
    Movement back = moved(*lot, MovementReason::Measured, -(*movement)->change, by, {});
    back.corrects = booked.movement;
    ledger.lots().move(back);
    if (lot->length - (*movement)->change == kNothing) {
        ledger.lots().close(booked.lot, by.at);
    }
    replanString(ledger, lot->article, by.at);
    return lotOf(ledger, booked.lot);
}
} // namespace

Result<Lot> correctLot(Transaction& ledger, const CorrectLot& command) {
    auto lot = lotOf(ledger, command.lot);
    if (!lot) {
        return lot;
    }
    if (!lot->isOpen()) {
        return refuse(Code::LotClosed, {{"lot", lot->tag}});
    }
    if (const auto length = checkLength("measured", command.measured, kNothing); !length) {
        return tl::unexpected(length.error());
    }
    auto why = maybeWordsOf("reason", command.why, kLongestNote);
    if (!why) {
        return tl::unexpected(why.error());
    }
    ledger.lots().move(
        moved(*lot, MovementReason::Measured, command.measured - lot->length, command.by, *std::move(why)));
    if (command.measured == kNothing) {
        ledger.lots().close(command.lot, command.by.at);
    }
    replanString(ledger, lot->article, command.by.at);
    return lotOf(ledger, command.lot);
}

Result<Lot> takeOffShelf(Transaction& ledger, const TakeOffShelf& command) {
    auto lot = lotOf(ledger, command.lot);
    if (!lot) {
        return lot;
    }
    auto why = wordsOf("reason", command.why, kLongestNote);
    if (!why) {
        return tl::unexpected(why.error());
    }
    if (!lot->isOpen()) {
        const std::vector<Movement> movements = ledger.lots().movements(command.lot);
        const bool same = !movements.empty() && movements.back().reason == reasonOf(command.how);
        return same ? lot : refuse(Code::LotClosed, {{"lot", lot->tag}});
    }
    if (lot->length.isPositive()) {
        ledger.lots().move(moved(*lot, reasonOf(command.how), -lot->length, command.by, *std::move(why)));
    }
    ledger.lots().close(command.lot, command.by.at);
    replanString(ledger, lot->article, command.by.at);
    return lotOf(ledger, command.lot);
}

Result<std::vector<Lot>> takeBack(Transaction& ledger, const TakeBack& command) {
    std::vector<Lot> lots;
    for (const TakeBack::Booked& booked : command.booked) {
        auto lot = takeBackOne(ledger, booked, command.by);
        if (!lot) {
            return tl::unexpected(lot.error());
        }
        lots.push_back(*std::move(lot));
    }
    return lots;
}

} // namespace rw::desk
