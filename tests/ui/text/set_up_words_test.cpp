// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/set_up_words.h"

#include "core/desk/setting_rules.h"
#include "core/desk/settings.h"
#include "tests/ui/text/said.h"
#include "ui/text/sentences.h"
#include "ui/text/setting_words.h"

#include <QLocale>

#include <gtest/gtest.h>

namespace rw::ui {
namespace {
using namespace std::chrono_literals;

const QLocale kEnglish(QLocale::English, QLocale::UnitedKingdom);

Money pounds(std::int64_t pence) { return Money::fromMinor(pence, Currency::pounds()); }

PriceLine lineOf(ChargeKind kind, std::int64_t pence) {
    return {.kind = kind,
            .sport = std::nullopt,
            .method = std::nullopt,
            .article = std::nullopt,
            .label = {},
            .amount = pounds(pence)};
}

TEST(SetUpWords, AWeekIsSaidInStretches) {
    const DayHours tenToSix{10h, 18h};
    WeekHours week;
    EXPECT_EQ(said(weekText(week, kEnglish)), "never");
    week[0] = week[1] = week[2] = week[3] = tenToSix;
    week[5] = DayHours{10h, 14h};
    EXPECT_EQ(said(weekText(week, kEnglish)), "Mon to Thu 10:00-18:00, Sat 10:00-14:00");
    week[6] = week[5];
    week[4] = tenToSix;
    EXPECT_EQ(said(weekText(week, kEnglish)), "Mon to Fri 10:00-18:00, Sat, Sun 10:00-14:00");
}

TEST(SetUpWords, DaysOffAreSaidFromTodayOn) {
    const std::vector<CivilDate> days{2026y / 3 / 2,  2026y / 3 / 16, 2026y / 3 / 17,  2026y / 3 / 18, 2026y / 4 / 3,
                                      2026y / 4 / 30, 2026y / 5 / 1,  2026y / 12 / 31, 2027y / 1 / 1};
    EXPECT_EQ(said(daysOffText(days, 2026y / 3 / 12, 9, kEnglish)),
              "16 to 18 March 2026, 3 April 2026, 30 April to 1 May 2026, 31 December 2026 to 1 January 2027");
    EXPECT_EQ(said(daysOffText(days, 2026y / 3 / 12, 2, kEnglish)), "16 to 18 March 2026, 3 April 2026, …");
    EXPECT_EQ(said(daysOffText(days, 2027y / 2 / 1, 3, kEnglish)), "");
    desk::StaffMember ines{.id = std::nullopt, .name = "Ines Varholt"};
    EXPECT_EQ(said(personText(ines, 2026y / 3 / 12, kEnglish)), "whenever the shop is open");
    ines.worker.daysOff = {2026y / 3 / 16};
    EXPECT_EQ(said(personText(ines, 2026y / 3 / 12, kEnglish)), "whenever the shop is open; away 16 March 2026");
}

TEST(SetUpWords, MachinesAndFrames) {
    const desk::Machine machine{
        .id = std::nullopt, .name = "Bench A", .unit = TensionUnit::Kilogram, .stepHundredths = 25};
    EXPECT_EQ(said(machineDialText(machine, kEnglish)), "dial in kg, steps of 0.25, reach 0.3 m");
    FrameModel frame;
    EXPECT_EQ(said(frameText(frame, kEnglish)), "tennis, 16 × 19");
    EXPECT_EQ(said(headText(frame, kEnglish)), "nothing is measured; lengths take the usual head of the sport");
    frame.marked.highest = *Tension::tryParse("60 lb", TensionUnit::Pound);
    frame.hoop.lengthMm = 329;
    frame.hoop.widthMm = 245.5;
    frame.hoop.headAreaCm2 = 632.3;
    frame.hoop.openThroat = true;
    EXPECT_EQ(said(frameText(frame, kEnglish)), "tennis, 16 × 19, up to 60 lb");
    EXPECT_EQ(said(headText(frame, kEnglish)), "329 × 245.5 mm, 632.3 cm², open throat");
    const desk::UsualCut cut{FrameModelId::of(1),
                             PieceRole::Whole,
                             Material::Polyester,
                             "plain-2",
                             Length::fromMillimetres(11'200),
                             Length::fromMillimetres(3'000)};
    EXPECT_EQ(said(usualCutTitle(cut)), "one piece, plain-2, polyester");
    EXPECT_EQ(said(usualCutText(cut, kEnglish)), "11.2 m, short side 3 m");
}

TEST(SetUpWords, PriceLists) {
    PriceList list{
        .id = 1, .validFrom = 2026y / 3 / 13, .currency = Currency::pounds(), .taxRule = TaxRule::Added, .lines = {}};
    list.lines = {lineOf(ChargeKind::Labour, 1400), lineOf(ChargeKind::FullBed, 1300), lineOf(ChargeKind::Extra, 200)};
    list.lines[0].taxHundredthsPercent = 2000;
    list.lines[1].article = StringArticleId::of(1);
    list.lines[2].label = "stencil";
    EXPECT_EQ(said(priceListTitle(list, kEnglish)), "From 13 March 2026");
    EXPECT_EQ(said(priceListText(list, kEnglish)), "labour £14.00, 1 string, 1 extra, tax added");
    EXPECT_EQ(said(holdsText({list, desk::Holds::Now}, kEnglish)), "● holds now");
    EXPECT_EQ(said(holdsText({list, desk::Holds::Later}, kEnglish)), "○ from 13 March 2026");
    PriceLine squash = list.lines[0];
    squash.sport = Sport::Squash;
    EXPECT_EQ(said(priceLineTitle(squash)), "Labour, squash");
    EXPECT_EQ(said(priceLineTitle(list.lines[2])), "stencil");
    EXPECT_EQ(said(taxText(770, kEnglish)), "tax 7.7 %");
    EXPECT_EQ(said(taxText(0, kEnglish)), "no tax");
    EXPECT_EQ(said(stringPricesText({pounds(1300), pounds(650), std::nullopt, 0}, kEnglish)),
              "full bed £13.00, half a bed £6.50");
    EXPECT_EQ(said(stringPricesText({}, kEnglish)), "no price: it cannot be sold");
}

TEST(SettingWords, EverySettingHasItsWords) {
    for (const std::string_view name : desk::settingNames()) {
        EXPECT_FALSE(settingWord(name).isEmpty()) << name;
    }
    for (const std::string_view name : settingsShown()) {
        EXPECT_FALSE(settingTitle(name).isEmpty()) << name;
        expectWholeSentence(settingHelp(name));
        EXPECT_FALSE(settingText(name, desk::usualSetting(name), Currency::pounds(), kEnglish).isEmpty()) << name;
    }
    EXPECT_EQ(said(settingWord("colour-of-the-door")), "");
}

TEST(SettingWords, ValuesAreSaidWithTheirUnit) {
    const auto text = [](std::string_view name, std::string_view value) {
        return said(settingText(name, value, Currency::pounds(), kEnglish));
    };
    EXPECT_EQ(text("minutes.per-job", "40"), "40 minutes");
    EXPECT_EQ(text("ceiling-percent", "0.5"), "0.5 %");
    EXPECT_EQ(text("hours.mon", ""), "closed");
    EXPECT_EQ(text("hours.mon", "10:00-18:00"), "10:00-18:00");
    EXPECT_EQ(text("short-side", "right"), "right");
    EXPECT_EQ(text("spoiled-job.cost", "12.50"), "£12.50");
    EXPECT_EQ(text("closed-days", "2026-12-25 2026-12-26"), "25 to 26 December 2026");
}

TEST(SettingWords, ARefusedSettingIsNamedAsPeopleKnowIt) {
    const auto sentence = [](std::string_view name, std::string_view typed) {
        return said(sentenceFor(desk::settingAsKept(name, typed, Currency::pounds()).error(), kEnglish));
    };
    EXPECT_EQ(sentence("minutes.per-job", "soon"), "“soon” cannot be read as a number of minutes for a job.");
    EXPECT_EQ(sentence("minutes.per-job", "900"),
              "“900” is no possible value for a number of minutes for a job: it must be between 1 and 480.");
    EXPECT_EQ(sentence("hours.tue", "18-10"),
              "“18-10” cannot be read as a day's hours; write them as 10-18 or 9:30-17:00.");
    EXPECT_EQ(sentence("closed-days", "christmas"),
              "“christmas” cannot be read as a list of days; write days as 2026-12-25, or 2026-08-03 to 2026-08-14.");
    EXPECT_EQ(sentence("spoiled-job.cost", "-1"), "cost of a spoiled job cannot be “-1”: it must be nothing or more.");
    EXPECT_EQ(
        said(sentenceFor(Refusal(Code::ImpossibleValue,
                                 {{"key", "retired"}, {"text", "Bench A"}, {"expected", "no other machine is in use"}}),
                         kEnglish)),
        "“Bench A” cannot be retired: no other machine is in use.");
    EXPECT_EQ(
        said(sentenceFor(Refusal(Code::Missing, {{"what", "price"}, {"kind", "rush"}, {"sport", "squash"}}), kEnglish)),
        "The list has no price for rush, squash.");
}

} // namespace
} // namespace rw::ui
