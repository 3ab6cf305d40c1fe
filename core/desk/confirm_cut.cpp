// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/bench.h"
#include "core/desk/lookups.h"
#include "core/desk/replan.h"

#include <algorithm>

namespace rw::desk {

namespace {
constexpr Length kNothing = Length::fromMillimetres(0);

Result<void> checkAttempt(const Job& job, const JobPiece& piece, int attempt) {
    if (attempt != piece.current().number) {
        return refuse(Code::StaleAttempt, {{"job", job.number},
                                           {"piece", std::string(pieceRoleText(piece.role))},
                                           {"attempt", std::int64_t{attempt}}});
    }
    return {};
}

/// The cut that this attempt has already: the same one again changes nothing, another one is refused. A set is as long
/// as it is, whatever was typed.
Result<CutDone> cutBefore(Transaction& ledger, const Job& job, const JobPiece& piece, const ConfirmCut& command) {
    const DoneCut& cut = *piece.current().cut;
    const auto lot = cut.lot ? ledger.lots().get(*cut.lot) : std::nullopt;
    const bool usedUp = lot && lot->kind == LotKind::Packet && cut.allThereWas && cut.length >= command.length;
    if ((command.lot && command.lot != cut.lot) || (cut.lot && cut.length != command.length && !usedUp)) {
        return refuse(Code::AlreadyCut, {{"job", job.number},
                                         {"piece", std::string(pieceRoleText(piece.role))},
                                         {"attempt", std::int64_t{command.attempt}},
                                         {"lengthMm", cut.length.millimetres()},
                                         {"lot", cut.lotTag}});
    }
    return CutDone{job, true, lot, std::nullopt};
}

/// The lot that is really cut from, if it is one that may be.
Result<Lot> lotToCut(Transaction& ledger, const Job& job, const JobPiece& piece, const ConfirmCut& command) {
    const auto article = articleOf(ledger, piece.article);
    if (!article) {
        return tl::unexpected(article.error());
    }
    const std::optional<LotId> id = command.lot ? command.lot : piece.lot;
    if (!id) {
        return refuse(Code::NoLot, {{"string", article->name}});
    }
    auto lot = lotOf(ledger, *id);
    if (!lot) {
        return lot;
    }
    // Who pays for the shop's string keeps their own; who brought string may be helped out with the shop's.
    const bool fitsOwner = !lot->owner || (piece.source != PieceSource::ShopLot && *lot->owner == job.customer);
    if (lot->article != piece.article || !fitsOwner) {
        return refuse(Code::WrongLot, {{"lot", lot->tag}, {"string", article->name}});
    }
    if (!lot->isOpen()) {
        return refuse(Code::LotClosed, {{"lot", lot->tag}});
    }
    return lot;
}

Result<void> checkEnough(const Lot& lot, const ConfirmCut& command) {
    const Length there = command.measuredLeft.value_or(lot.length);
    if (command.length > there) {
        return refuse(
            command.measuredLeft ? Code::NotEnoughString : Code::MeasureFirst,
            {{"lot", lot.tag}, {"lengthMm", there.millimetres()}, {"wantedMm", command.length.millimetres()}});
    }
    return {};
}

void record(Transaction& ledger, const ConfirmCut& command, AttemptId attempt) {
    ledger.jobs().record({std::nullopt, command.job, JobEventKind::Cut, command.by, std::nullopt, attempt});
}

/// A customer's own set is no lot of ours: that it was cut is all there is to keep.
Result<CutDone> cutOwnSet(Transaction& ledger, AttemptId attempt, const ConfirmCut& command) {
    record(ledger, command, attempt);
    return jobOf(ledger, command.job).map([](Job job) {
        return CutDone{std::move(job), false, std::nullopt, std::nullopt};
    });
}

/// The other piece of the job's bed, when both are to be one string from one place.
const JobPiece* otherHalf(const Job& job, const JobPiece& piece) {
    const auto other = std::ranges::find_if(job.pieces, [&](const JobPiece& half) {
        return half.role != piece.role && half.article == piece.article && half.source == piece.source;
    });
    return other == job.pieces.end() ? nullptr : &*other;
}

/// What a cut off a packet means for what is left of it.
struct PacketCut {
    Length cut;
    const JobPiece* rest = nullptr; ///< the other half, which gets what is left
};
PacketCut packetCut(const Job& job, const JobPiece& piece, const Lot& lot, const ConfirmCut& command) {
    const Length there = command.measuredLeft.value_or(lot.length);
    const JobPiece* other = otherHalf(job, piece);
    const bool last =
        piece.role == PieceRole::Whole || (other != nullptr && other->isCut() && other->current().cut->lot == lot.id);
    if (last) {
        return {there};
    }
    const Length left = there - command.length;
    const bool together =
        other != nullptr && !other->isCut() && (other->lot == lot.id || (!other->pinned && other->lot == piece.lot));
    return {command.length, together && left.isPositive() && left >= other->expected ? other : nullptr};
}

Result<CutDone> cutFrom(Transaction& ledger, const Lot& lot, AttemptId attempt, const ConfirmCut& command,
                        const JobPiece* rest) {
    std::optional<Length> corrected;
    if (command.measuredLeft) {
        corrected = *command.measuredLeft - lot.length;
        ledger.lots().move({std::nullopt, *lot.id, MovementReason::Measured, *corrected, std::nullopt, std::nullopt,
                            std::nullopt, command.by});
    }
    ledger.lots().move(
        {std::nullopt, *lot.id, MovementReason::Cut, -command.length, attempt, std::nullopt, std::nullopt, command.by});
    record(ledger, command, attempt);
    if (command.measuredLeft.value_or(lot.length) == command.length) {
        ledger.lots().close(*lot.id, command.by.at);
    }
    if (rest != nullptr) {
        const Length left = command.measuredLeft.value_or(lot.length) - command.length;
        ledger.jobs().plan(*rest->id, *lot.id, left, rest->pinned);
    }
    replanString(ledger, lot.article, command.by.at);
    return jobOf(ledger, command.job).map([&](Job job) {
        return CutDone{std::move(job), false, ledger.lots().get(*lot.id), corrected};
    });
}
} // namespace

Result<CutDone> confirmCut(Transaction& ledger, const ConfirmCut& command) {
    const auto job = jobOf(ledger, command.job);
    if (!job) {
        return tl::unexpected(job.error());
    }
    const auto piece = pieceOf(*job, command.role);
    if (!piece) {
        return tl::unexpected(piece.error());
    }
    if (const auto fresh = checkAttempt(*job, *piece, command.attempt); !fresh) {
        return tl::unexpected(fresh.error());
    }
    if (piece->isCut()) {
        return cutBefore(ledger, *job, *piece, command);
    }
    if (const auto length = checkLength("cut", command.length, Length::fromMillimetres(1)); !length) {
        return tl::unexpected(length.error());
    }
    if (const auto may = mayHappen(*job, JobEventKind::Cut); !may) {
        return tl::unexpected(may.error());
    }
    if (piece->source == PieceSource::CustomersSet && !command.lot) {
        return cutOwnSet(ledger, *piece->current().id, command);
    }
    if (command.measuredLeft) {
        if (const auto measured = checkLength("measured", *command.measuredLeft, kNothing); !measured) {
            return tl::unexpected(measured.error());
        }
    }
    const auto lot = lotToCut(ledger, *job, *piece, command);
    if (!lot) {
        return tl::unexpected(lot.error());
    }
    if (const auto enough = checkEnough(*lot, command); !enough) {
        return tl::unexpected(enough.error());
    }
    if (lot->kind != LotKind::Packet) {
        return cutFrom(ledger, *lot, *piece->current().id, command, nullptr);
    }
    const PacketCut packet = packetCut(*job, *piece, *lot, command);
    ConfirmCut really = command;
    really.length = packet.cut;
    return cutFrom(ledger, *lot, *piece->current().id, really, packet.rest);
}

} // namespace rw::desk
