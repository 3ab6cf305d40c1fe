// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/length/cut_plan.h"
#include "core/length/cut_request.h"

#include <span>
#include <string>
#include <string_view>

// A cut request and a cut plan as JSON (RFC 8259, UTF-8), for a frame that is in no ledger.
namespace rw::exchange {

/// Reads a cut request. Keys:
///   sport, hoop {lengthMm, widthMm, headAreaCm2, outermostMainMm, lastCrossMm, openThroat, widestFromThroat,
///   headExponent, throatExponent, wallMm}, pattern {mains, crosses, mainsSpanMm, mainsThroatSpanMm, crossesSpanMm,
///   crossesCentreMm, spread, mainsStart: throat|head|unknown}, points (cut_parts_json.h), method:
///   two-piece|one-piece, route or ownRoute (cut_parts_json.h), shortSide: left|right, mains and crosses each
///   {material, diameterMm, tension: "55 lb"}, ends {reachMm, startingKnotMm, knotUseMm, crossesStart:
///   knot|clamp}, stretch, crimp, setMm, setMeasured, evidence (cut_parts_json.h), ceiling, tapeStepMm, costPerMetre,
///   spoiledJobCost.
/// What is left out takes the sport's default; of a one-piece job the half whose string is left out takes the other's,
/// as one piece is one string. A tension has its unit with it.
/// Refusals: FileUnreadable {file: "the input", reason} for what is no JSON; WrongType {key, expected}, UnknownKey
/// {key, known}, ImpossibleValue {key, text, expected} with the key's whole path ("hoop.lengthMm"); RouteUnknown.
/// Whether the numbers go together and the route fits is told by planCut.
[[nodiscard]] Result<length::CutRequest> cutRequestFromJson(std::string_view utf8);

/// Writes a plan: hoop, pieces, chanceShortJob, set where there is one, why; always the same keys in the same order,
/// one line feed at the end. Millimetres have three decimals, cuts are whole. Each reason has a stable kind, its text
/// and its two numbers, and a sentence for people where `sentences` (in the order of plan.why, or empty) has one.
[[nodiscard]] std::string cutPlanToJson(const length::CutPlan& plan, const length::CutRequest& request,
                                        std::span<const std::string> sentences = {});

} // namespace rw::exchange
