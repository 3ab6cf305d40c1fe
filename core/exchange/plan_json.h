// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/exchange/json_object_reader.h"
#include "core/stock/cut_queue.h"
#include "core/stock/queue_reasons.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

// A queue of pieces and the lots for it as JSON (RFC 8259, UTF-8), for a shop that is in no ledger.
namespace rw::exchange {

/// What a file asks. Its own names for lots and pieces stand beside them.
struct PlanRequest {
    std::vector<stock::QueueLot> lots;
    std::vector<Label> lotNames;
    std::vector<double> uncertaintiesMm; ///< one standard deviation of each lot's book
    std::vector<stock::QueuePiece> pieces;
    std::vector<Label> pieceNames;
    stock::PieceMix mix;
    Length shortestUseful;
    Length waitingCost;
    stock::QueueRules rules;
};

/// Reads a request. Keys:
///   lots [{id, lengthMm, uncertaintyMm (0), gapMm (0), owner ("shop"), pinnedTo, sealed (false), received}],
///   pieces [{id, lengthMm, job, owner ("shop")}], pieceMix [{lengthMm, share}], shortestUsefulMm, waitingCostMm (50),
///   sameReel (false), limitMs (500).
/// In brackets what is taken when the key is left out; a piece without a job is a job of its own. Ids, owners and jobs
/// are text or whole numbers.
/// Refusals: those of parseStrictObject and JsonObjectReader; ImpossibleValue for an id given twice and for a mix
/// without shares.
[[nodiscard]] Result<PlanRequest> planRequestFromJson(std::string_view utf8);

/// "leaves-useful": a reason's kind as files know it, which stays as it is when sentences change.
[[nodiscard]] std::string_view queueReasonKindText(stock::QueueReason::Kind kind);

/// Writes a plan: assignments [{piece, lot}] in the order of the pieces with null for no lot, deltaMm, proven, why; one
/// line feed at the end. `sentences` are those of the reasons.
[[nodiscard]] std::string planToJson(const stock::QueuePlan& plan, const PlanRequest& request,
                                     std::span<const stock::QueueReason> reasons,
                                     std::span<const std::string> sentences);

} // namespace rw::exchange
