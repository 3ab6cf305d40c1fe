// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/json_object_reader.h"
#include "core/length/cut_request.h"

// The longer parts of a cut request: its finished pieces, its written route, its places.
namespace rw::exchange {

/// "evidence": a list of {piece, cutMm, tailsMm | tailsBetweenMm | outcome, shortByMm, reelEnd, measuredWith}.
void readEvidence(JsonObjectReader& in, std::vector<length::FinishedPiece>& into);

/// "ownRoute": {short, long}, each a list of strings as "1L", "X2".
void readOwnRoute(JsonObjectReader& in, const Pattern& pattern, std::optional<length::OwnRoute>& into);

/// "points": a string's name and its ends, {head, throat, wallMm} of a main or {left, right, wallMm} of a cross.
void readPoints(JsonObjectReader& in, const Pattern& pattern, std::vector<length::StringPlace>& into);

} // namespace rw::exchange
