// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/frames/pattern.h"
#include "core/frames/sport.h"
#include "core/jobs/charge.h"
#include "core/jobs/job.h"
#include "core/jobs/job_state.h"
#include "core/length/piece_role.h"
#include "core/stock/lot.h"
#include "core/stock/movement.h"
#include "core/strings/material.h"
#include "core/strings/string_article.h"

#include <QString>

#include <string>

// The trade's words for what core keeps as codes.
namespace rw::ui {

[[nodiscard]] QString sportWord(Sport sport);
[[nodiscard]] QString sideWord(Side side);
[[nodiscard]] QString hoopEndWord(HoopEnd end);
[[nodiscard]] QString materialWord(Material material);
[[nodiscard]] QString pieceWord(PieceRole role);       ///< "mains", "crosses", "one piece"
[[nodiscard]] QString methodWord(Method method);       ///< "two pieces", "one piece"
[[nodiscard]] QString jobStateWord(JobState state);    ///< "on the machine"
[[nodiscard]] QString jobEventWord(JobEventKind kind); ///< "put down"
[[nodiscard]] QString lotKindWord(LotKind kind);
[[nodiscard]] QString sourceWord(PieceSource source); ///< "off the shop's reel", "customer's own set"
[[nodiscard]] QString movementWord(MovementReason reason);
[[nodiscard]] QString lostReasonWord(LostReason reason); ///< "came short"
[[nodiscard]] QString chargeWord(
    const Charge& charge); ///< the line as it stands on a bill: "labour", "grommet tube × 3"
/// "Aldermoor 98 A": the frame, and the mark that tells it from its twin when it has one.
[[nodiscard]] QString racketName(const std::string& frame, const std::string& mark);
/// "Larkspun 130, natural": a string's name, with its colour when it has one.
[[nodiscard]] QString stringName(const StringArticle& article);
/// "16 × 19, mains start at the head".
[[nodiscard]] QString patternText(const Pattern& pattern);

} // namespace rw::ui
