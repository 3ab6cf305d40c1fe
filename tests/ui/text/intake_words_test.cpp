// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/text/said.h"
#include "ui/text/format.h"
#include "ui/text/intake_words.h"

namespace rw::ui::test {
namespace {

using namespace std::chrono_literals;

const QLocale kEnglish(QLocale::English, QLocale::UnitedKingdom);
constexpr Instant kNow = std::chrono::sys_days{2026y / 3 / 12} + 11h; // winter: UTC is the shop's clock
const QTimeZone kZone = timeZoneOf("Europe/London");

Money pounds(std::int64_t pence) { return Money::fromMinor(pence, Currency::pounds()); }

Job jobOf(std::int64_t total) {
    return {.id = JobId::of(1),
            .number = 2119,
            .requestKey = {},
            .customer = CustomerId::of(1),
            .racket = RacketId::of(1),
            .route = {},
            .shortSideLength = std::nullopt,
            .asked = {*Tension::tryParse("52", TensionUnit::Pound), *Tension::tryParse("50", TensionUnit::Pound)},
            .pieces = {},
            .charges = {},
            .total = pounds(total),
            .promised = kNow + 4h,
            .note = {},
            .logged = kNow,
            .strung = std::nullopt,
            .collected = std::nullopt};
}

QString handedOver(const desk::HandedOver& done) { return handedOverText(done, kNow, kZone, kEnglish); }

TEST(IntakeWords, AHandOverSaysWhatWasPaidAndWhatIsOwed) {
    const Job job = jobOf(3000);
    EXPECT_EQ(said(handedOver({job, false, pounds(3000), pounds(3000)})), "Handed over 2119. Paid £30.00.");
    EXPECT_EQ(said(handedOver({job, false, std::nullopt, pounds(0)})), "Handed over 2119. £30.00 is still owed.");
    EXPECT_EQ(said(handedOver({job, false, pounds(1000), pounds(2500)})),
              "Handed over 2119. Paid £10.00. £5.00 is still owed.");
    EXPECT_EQ(said(handedOver({job, false, pounds(3150), pounds(3150)})),
              "Handed over 2119. Paid £31.50. £1.50 is in the customer's favour.");
}

TEST(IntakeWords, ASecondHandOverSaysWhenTheFirstWasAndThatNothingWasBooked) {
    Job job = jobOf(3000);
    job.collected = kNow - 20min;
    EXPECT_EQ(said(handedOver({job, true, std::nullopt, pounds(3000)})),
              "2119 was handed over already, today 10:40; nothing was booked now. £30.00 was paid for it.");
    job.collected = kNow - 24h * 100;
    EXPECT_EQ(said(handedOver({job, true, std::nullopt, pounds(0)})),
              "2119 was handed over already, Tue 2 Dec 2025 11:00; nothing was booked now. £0.00 was paid for it. "
              "£30.00 is still owed.");
}

TEST(IntakeWords, APaymentIsHeldAgainstWhatIsOwed) {
    EXPECT_EQ(said(paymentText(pounds(3000), pounds(3000), kEnglish)), "");
    EXPECT_EQ(said(paymentText(pounds(3000), pounds(2800), kEnglish)), "£2.00 stays owed");
    EXPECT_EQ(said(paymentText(pounds(3000), pounds(3150), kEnglish)),
              "£1.50 too much: it becomes the customer's credit; Enter again takes it");
}

TEST(IntakeWords, NothingIsPromisedWithoutString) {
    Job job = jobOf(3000);
    job.pieces.push_back({.id = std::nullopt,
                          .role = PieceRole::Whole,
                          .article = StringArticleId::of(1),
                          .lot = LotId::of(1),
                          .planned = Length::fromMillimetres(10'800),
                          .expected = Length::fromMillimetres(10'500),
                          .attempts = {}});
    const auto logged = [&] {
        return said(loggedText(job, QStringLiteral("Petra"), QStringLiteral("A"), kNow, kZone, kEnglish));
    };
    EXPECT_EQ(logged(), "Logged 2119: Petra, A. Write 2119 on the tag. £30.00, promised today 15:00.");
    job.pieces.front().lot.reset();
    EXPECT_EQ(logged(),
              "Logged 2119: Petra, A. Write 2119 on the tag. £30.00, ready today 15:00 if there is string for "
              "it by then: none is free now.");
    job.pieces.front().source = PieceSource::CustomersSet;
    EXPECT_EQ(logged(), "Logged 2119: Petra, A. Write 2119 on the tag. £30.00, promised today 15:00.");
}

} // namespace
} // namespace rw::ui::test
