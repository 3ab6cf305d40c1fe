// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/format.h"

#include "tests/ui/text/said.h"

#include <QLocale>

#include <gtest/gtest.h>

#include <chrono>

namespace rw::ui {
namespace {

using namespace std::chrono_literals;

const QLocale kEnglish(QLocale::English, QLocale::UnitedKingdom);
const QLocale kGerman(QLocale::German, QLocale::Germany);

Tension tension(const char* text) { return Tension::tryParse(text, TensionUnit::Pound).value(); }

TEST(Format, LengthsKeepEveryMillimetreAndNoNoughts) {
    const struct {
        std::int64_t mm;
        const char* english;
        const char* german;
    } cases[] = {{11200, "11.2 m", "11,2 m"},      {5000, "5 m", "5 m"},       {201168, "201.168 m", "201,168 m"},
                 {50, "0.05 m", "0,05 m"},         {-300, "-0.3 m", "-0,3 m"}, {0, "0 m", "0 m"},
                 {1234500, "1234.5 m", "1234,5 m"}};
    for (const auto& c : cases) {
        EXPECT_EQ(said(lengthText(Length::fromMillimetres(c.mm), kEnglish)), c.english);
        EXPECT_EQ(said(lengthText(Length::fromMillimetres(c.mm), kGerman)), c.german);
    }
    EXPECT_EQ(said(aboutLengthText(10553.2, kEnglish)), "10.55 m");
}

TEST(Format, WhatAReelHoldsIsToldToTheCentimetreBelow) {
    const auto held = [](std::int64_t mm) { return said(heldText(Length::fromMillimetres(mm), kEnglish)); };
    EXPECT_EQ(held(201'168), "201.16 m"); // 220 yards (NIST SP 811: 1 yd = 0.9144 m)
    EXPECT_EQ(held(6'350), "6.35 m");
    EXPECT_EQ(held(9), "0 m");
    EXPECT_EQ(held(-1), "-0.01 m");
}

TEST(Format, TensionsAreAPairInTheUnitAsked) {
    EXPECT_EQ(said(tensionText(tension("52"), kEnglish)), "52 lb");
    EXPECT_EQ(said(tensionText(tension("23.5 kg"), kGerman)), "23,5 kg");
    EXPECT_EQ(said(tensionPairText({tension("52"), tension("50")}, kEnglish)), "52/50 lb");
    EXPECT_EQ(said(tensionPairText({tension("23.5 kg"), tension("22.5 kg")}, kEnglish)), "23.5/22.5 kg");
    EXPECT_EQ(said(tensionPairText({tension("52 lb"), tension("22.5 kg")}, kEnglish)), "52 lb / 22.5 kg");
    EXPECT_EQ(said(derivedTensionText(23.5868, TensionUnit::Kilogram, 2, kEnglish)), "23.59 kg");
}

TEST(Format, MoneyShowsAllItsDecimals) {
    EXPECT_EQ(said(moneyText(Money::fromMinor(3000, Currency::pounds()), kEnglish)), "£30.00");
    EXPECT_EQ(said(moneyText(Money::fromMinor(-150, Currency::pounds()), kEnglish)), "-£1.50");
    EXPECT_EQ(said(moneyText(Money::fromMinor(3000, Currency::pounds()), QLocale::c())), "£30.00");
    EXPECT_EQ(said(moneyText(Money::fromMinor(3000, Currency::fromCode("USD").value()), kEnglish)), "30.00 USD");
    EXPECT_EQ(said(moneyText(Money::fromMinor(1500, Currency::fromCode("JPY").value()), kGerman)), "1.500 JPY");
    EXPECT_EQ(said(moneyText(Money::fromMinor(12345, Currency::fromCode("KWD").value()), kEnglish)), "12.345 KWD");
}

TEST(Format, GaugeIsMillimetresFirst) {
    StringArticle article;
    article.diameterMicrometres = 1250;
    EXPECT_EQ(said(gaugeText(article, kEnglish)), "1.25 mm");
    article.gaugeName = "17";
    EXPECT_EQ(said(gaugeText(article, kEnglish)), "1.25 mm (17)");
    article.diameterMicrometres = 685;
    EXPECT_EQ(said(gaugeText(article, kEnglish)), "0.685 mm (17)");
}

TEST(Format, HeadLengthsGoByHalves) {
    EXPECT_EQ(said(headLengthsText(8.4)), "8½ head lengths");
    EXPECT_EQ(said(headLengthsText(8.2)), "8 head lengths");
    EXPECT_EQ(said(headLengthsText(1.0)), "1 head length");
    EXPECT_EQ(said(headLengthsText(0.5)), "½ head length");
    EXPECT_EQ(said(headLengthsText(1.5)), "1½ head lengths");
}

TEST(Format, ChancesAreSaidAsOneInSoMany) {
    EXPECT_EQ(said(chanceText(0.005, kEnglish)), "about 1 in 200");
    EXPECT_EQ(said(chanceText(0.0092, kEnglish)), "about 1 in 110");
    EXPECT_EQ(said(chanceText(0.3, kEnglish)), "about 1 in 3");
    EXPECT_EQ(said(chanceText(0.6, kEnglish)), "more likely than not");
    EXPECT_EQ(said(chanceText(0, kEnglish)), "less than 1 in 10000");
}

TEST(Format, TimesAreTheShopsOwn) {
    const QTimeZone zone = timeZoneOf("Europe/London");
    const Instant now = std::chrono::sys_days{2026y / 7 / 20} + 13h; // 14:00 on the shop's wall in summer
    EXPECT_EQ(said(promiseText(now + 150min, now, zone, kEnglish)), "today 16:30");
    EXPECT_EQ(said(promiseText(now + 20h + 30min, now, zone, kEnglish)), "tomorrow 10:30");
    EXPECT_EQ(said(promiseText(now + 48h, now, zone, kEnglish)), "Wed 22 Jul 14:00");
    EXPECT_EQ(said(dateText(now, zone, kEnglish)), "20 July 2026");
    EXPECT_EQ(said(shortDateText(now + 10h, now, zone, kEnglish)), "Tue 21 Jul");
    EXPECT_EQ(said(shortDateText(now - 24h * 365, now, zone, kEnglish)), "Sun 20 Jul 2025");
    EXPECT_EQ(said(promiseText(now + 24h * 365, now, zone, kEnglish)), "Tue 20 Jul 2027 14:00");
    EXPECT_FALSE(timeZoneOf("Nowhere/Such").isValid() && timeZoneOf("Nowhere/Such") != QTimeZone::utc());
}

} // namespace
} // namespace rw::ui
