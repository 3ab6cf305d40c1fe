// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/set_end_aside.h"

#include "core/desk/lookups.h"
#include "core/desk/replan.h"
#include "core/desk/stockroom.h"

namespace rw::desk {

namespace {
Result<void> checkPiece(const Job& job, const JobPiece& piece, const SetEndAside& command) {
    const std::vector<Argument> which = {{"job", job.number},
                                         {"piece", std::string(pieceRoleText(piece.role))},
                                         {"attempt", std::int64_t{command.attempt}}};
    if (command.attempt != piece.current().number) {
        return refuse(Code::StaleAttempt, which);
    }
    if (piece.isCut()) {
        return refuse(Code::AlreadyCut, which);
    }
    return mayHappen(job, JobEventKind::Cut);
}

Result<void> checkEnd(Transaction& ledger, const Job& job, const JobPiece& piece, const Lot& lot,
                      const SetEndAside& command) {
    const bool strangers = lot.owner && *lot.owner != job.customer;
    if (lot.article != piece.article || piece.source == PieceSource::CustomersSet || strangers) {
        const auto article = articleOf(ledger, piece.article);
        return article ? refuse(Code::WrongLot, {{"lot", lot.tag}, {"string", article->name}})
                       : tl::unexpected(article.error());
    }
    if (!lot.isOpen()) {
        return refuse(Code::LotClosed, {{"lot", lot.tag}});
    }
    if (command.measured >= command.wanted) {
        return refuse(Code::ImpossibleValue,
                      {{"key", "measured"}, {"text", command.measured.text()}, {"expected", "less than is to be cut"}});
    }
    return {};
}

EndSetAside asItIsNow(Transaction& ledger, const SetEndAside& command) {
    Job job = ledger.jobs().get(command.job).value();
    const auto lot = pieceOf(job, command.role)->lot;
    return {std::move(job), ledger.lots().get(command.lot).value(), lot ? ledger.lots().get(*lot) : std::nullopt};
}
} // namespace

Result<EndSetAside> setEndAside(Transaction& ledger, const SetEndAside& command) {
    const auto job = jobOf(ledger, command.job);
    if (!job) {
        return tl::unexpected(job.error());
    }
    const auto piece = pieceOf(*job, command.role);
    const auto lot = lotOf(ledger, command.lot);
    if (!piece || !lot) {
        return tl::unexpected(piece ? lot.error() : piece.error());
    }
    if (const auto sound = checkPiece(*job, *piece, command); !sound) {
        return tl::unexpected(sound.error());
    }
    if (lot->kind == LotKind::Remnant && lot->length == command.measured && piece->lot != command.lot) {
        return asItIsNow(ledger, command);
    }
    if (const auto sound = checkEnd(ledger, *job, *piece, *lot, command); !sound) {
        return tl::unexpected(sound.error());
    }
    ledger.lots().setKind(command.lot, LotKind::Remnant);
    if (const auto corrected = correctLot(ledger, {command.lot, command.measured, command.by}); !corrected) {
        return tl::unexpected(corrected.error());
    }
    // Even one that somebody pinned cannot stay on an end that does not hold it.
    ledger.jobs().plan(*piece->id,
                       bestLot(ledger, *piece->id, piece->article, ownerFor(*job, *piece), command.wanted, command.by.at),
                       command.wanted, false);
    replanString(ledger, piece->article, command.by.at);
    return asItIsNow(ledger, command);
}

} // namespace rw::desk
