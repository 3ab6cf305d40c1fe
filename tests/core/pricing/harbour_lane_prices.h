// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/pricing/quote.h"

// The price list of the invented shop Harbour Lane Strings, in pounds, tax included at 20 %.
namespace rw::prices {

inline const StringArticleId kKestrelline = StringArticleId::of(1);
inline const StringArticleId kLarkspun = StringArticleId::of(2);
inline const StringArticleId kTarnweave = StringArticleId::of(3);

inline Money pounds(std::int64_t pence) { return Money::fromMinor(pence, Currency::pounds()); }

inline PriceLine line(ChargeKind kind, std::int64_t pence, std::optional<StringArticleId> article = std::nullopt,
                      std::string label = {}, int taxHundredthsPercent = 2000) {
    return {.kind = kind,
            .sport = std::nullopt,
            .method = std::nullopt,
            .article = article,
            .label = std::move(label),
            .amount = pounds(pence),
            .taxHundredthsPercent = taxHundredthsPercent};
}

inline PriceList harbourLane() {
    using namespace std::chrono;
    return {.id = 1,
            .validFrom = 2026y / January / 1,
            .currency = Currency::pounds(),
            .taxRule = TaxRule::Included,
            .lines = {line(ChargeKind::Labour, 1400), line(ChargeKind::OwnStringLabour, 1600),
                      line(ChargeKind::FullBed, 1300, kKestrelline), line(ChargeKind::HalfBed, 650, kKestrelline),
                      line(ChargeKind::FullBed, 1600, kLarkspun), line(ChargeKind::HalfBed, 800, kLarkspun),
                      line(ChargeKind::FullBed, 1200, kTarnweave), line(ChargeKind::Rush, 500),
                      line(ChargeKind::Extra, 50, std::nullopt, "grommet tube")}};
}

inline QuoteRequest onePiece(StringArticleId article) {
    return {.sport = Sport::Tennis,
            .method = Method::OnePiece,
            .pieces = {{.role = PieceRole::Whole, .article = article}},
            .extras = {},
            .discount = std::nullopt};
}

inline QuoteRequest twoPieces(StringArticleId mains, StringArticleId crosses) {
    return {.sport = Sport::Tennis,
            .method = Method::TwoPiece,
            .pieces = {{.role = PieceRole::Mains, .article = mains}, {.role = PieceRole::Crosses, .article = crosses}},
            .extras = {},
            .discount = std::nullopt};
}

} // namespace rw::prices
