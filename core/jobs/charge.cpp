// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/jobs/charge.h"

#include "core/base/named_texts.h"

namespace rw {

namespace {
constexpr NamedTexts<ChargeKind, 9> kKinds({{{ChargeKind::Labour, "labour"},
                                             {ChargeKind::OwnStringLabour, "own-string-labour"},
                                             {ChargeKind::FullBed, "full-bed"},
                                             {ChargeKind::HalfBed, "half-bed"},
                                             {ChargeKind::Packet, "packet"},
                                             {ChargeKind::Extra, "extra"},
                                             {ChargeKind::Rush, "rush"},
                                             {ChargeKind::Discount, "discount"},
                                             {ChargeKind::Tax, "tax"}}});
} // namespace

std::string_view chargeKindText(ChargeKind kind) { return kKinds.text(kind); }
std::optional<ChargeKind> chargeKindFromText(std::string_view text) { return kKinds.value(text); }

} // namespace rw
