// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/stock_take.h"

#include <cmath>
#include <string>

namespace rw::ui::samples {

/// A reel of 200 m that the book says holds 60 m and the scale `weighedMm`, sure to 0.4 m.
inline desk::WeighIn weighIn(double weighedMm, std::string tag = "K-7") {
    const Currency pounds = Currency::pounds();
    const stock::Estimate weighed{weighedMm, 400};
    const stock::Estimate book{60'000, 700};
    const ScaleReading gross{Mass::fromMilligrams(150'000 + std::llround(weighedMm * 1.7)),
                             Mass::fromMilligrams(1'000)};
    desk::WeighIn in{.weighing = {.id = WeighingId::of(1),
                                  .lot = LotId::of(7),
                                  .stockTake = StockTakeId::of(1),
                                  .gross = gross,
                                  .empty = ScaleReading{Mass::fromMilligrams(150'000), Mass::fromMilligrams(1'000)},
                                  .fresh = ScaleReading{Mass::fromMilligrams(490'000), Mass::fromMilligrams(1'000)},
                                  .gramsPerMetre = {1.7, 0.034},
                                  .basis = stock::WeighBasis::AgainstNew,
                                  .weighedMm = weighed,
                                  .bookMm = book,
                                  .whenNewMm = std::nullopt,
                                  .by = {StaffId::of(1), "stockroom", Instant()}},
                     .lot = {.id = LotId::of(7),
                             .tag = std::move(tag),
                             .article = StringArticleId::of(1),
                             .owner = std::nullopt,
                             .nominal = Length::fromMillimetres(200'000),
                             .length = Length::fromMillimetres(60'000),
                             .price = Money::zero(pounds),
                             .shipping = Money::zero(pounds),
                             .batch = {},
                             .received = Instant(),
                             .closed = std::nullopt},
                     .article = {},
                     .finding = stock::compareWithBook(weighed, book, Length::fromMillimetres(11'200))};
    in.article.code = "K";
    in.article.name = "Kestrelline 125";
    if (in.finding.isFinding) {
        in.causes = {in.finding.unbookedJobs ? desk::WeighCause::UnbookedJobs : desk::WeighCause::UnbookedCut,
                     desk::WeighCause::WrongSpool, desk::WeighCause::WrongReel};
    }
    return in;
}

/// `lines` reels, every third of which is a job short.
inline desk::StockTakeSheet stockTake(int lines) {
    desk::StockTakeSheet sheet{.take = StockTake{StockTakeId::of(1), {StaffId::of(1), "stockroom", Instant()}, {}, {}},
                               .startedBy = "Bastian Quill"};
    for (int i = 0; i < lines; ++i) {
        sheet.lines.push_back(weighIn(i % 3 == 0 ? 48'800 : 60'100, "K-" + std::to_string(i + 1)));
    }
    return sheet;
}

} // namespace rw::ui::samples
