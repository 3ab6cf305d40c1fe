// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/movement.h"

#include "core/base/named_texts.h"

namespace rw {

namespace {
constexpr NamedTexts<MovementReason, 7> kReasons({{{MovementReason::Received, "received"},
                                                   {MovementReason::Cut, "cut"},
                                                   {MovementReason::Lost, "lost"},
                                                   {MovementReason::Measured, "measured"},
                                                   {MovementReason::Weighed, "weighed"},
                                                   {MovementReason::Returned, "returned"},
                                                   {MovementReason::ThrownAway, "thrown-away"}}});

constexpr NamedTexts<LostReason, 8> kLostReasons({{{LostReason::CameShort, "came-short"},
                                                   {LostReason::Kinked, "kinked"},
                                                   {LostReason::Nicked, "nicked"},
                                                   {LostReason::Snapped, "snapped"},
                                                   {LostReason::MisWoven, "mis-woven"},
                                                   {LostReason::WrongString, "wrong-string"},
                                                   {LostReason::FaultyReel, "faulty-reel"},
                                                   {LostReason::Other, "other"}}});
} // namespace

std::string_view movementReasonText(MovementReason reason) { return kReasons.text(reason); }
std::optional<MovementReason> movementReasonFromText(std::string_view text) { return kReasons.value(text); }
std::string_view lostReasonText(LostReason reason) { return kLostReasons.text(reason); }
std::optional<LostReason> lostReasonFromText(std::string_view text) { return kLostReasons.value(text); }

} // namespace rw
