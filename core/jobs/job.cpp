// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/jobs/job.h"

#include "core/base/named_texts.h"

namespace rw {

namespace {
constexpr NamedTexts<PieceSource, 3> kSources({{{PieceSource::ShopLot, "shop-lot"},
                                                {PieceSource::CustomersLot, "customers-lot"},
                                                {PieceSource::CustomersSet, "customers-set"}}});
} // namespace

std::string_view pieceSourceText(PieceSource source) { return kSources.text(source); }
std::optional<PieceSource> pieceSourceFromText(std::string_view text) { return kSources.value(text); }

} // namespace rw
