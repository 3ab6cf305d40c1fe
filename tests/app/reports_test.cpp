// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/reports.h"

#include "tests/ui/sample_cards.h"

#include <gtest/gtest.h>

namespace rw::cli {
namespace {

TEST(HistoryLines, DoNotCallACutLostThatWasTakenBack) {
    const desk::JobCard card = ui::samples::petra();
    desk::HistoryEntry entry{card.job, card.customer.name, card.frame.name, card.racket.mark, {}, {}};
    DoneCut cut{LotId::of(7), "L-3", Length::fromMillimetres(10'800), Instant{}};
    auto& attempts = entry.job.pieces[0].attempts;
    attempts[0].cut = cut;
    attempts[0].lost = LostReason::CameShort;
    cut.takenBack = true;
    attempts.push_back({.id = AttemptId::of(2), .number = 2, .cut = cut, .lost = LostReason::Other});
    const QString said = historyLines(card.customer, {entry}, {QLocale::c()}).join(QLatin1Char('\n'));
    EXPECT_TRUE(said.contains(QStringLiteral("10.8 m off L-3 (lost, came short), 10.8 m off L-3 (taken back)")))
        << said.toStdString();
}

} // namespace
} // namespace rw::cli
