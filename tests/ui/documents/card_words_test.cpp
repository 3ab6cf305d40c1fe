// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/card_words.h"

#include "tests/ui/sample_cards.h"

#include <gtest/gtest.h>

#include <chrono>

namespace rw::ui {
namespace {

JobCardStyle english() {
    JobCardStyle style;
    style.locale = QLocale(QLocale::English, QLocale::UnitedKingdom);
    return style;
}

Length mm(std::int64_t value) { return Length::fromMillimetres(value); }

/// The card as one text, so that a reader sees what a stringer sees.
std::string told(const CardWords& words) {
    QStringList lines;
    lines << words.number + QStringLiteral(" | ") + words.state + QStringLiteral(" | ") + words.customer +
                 QStringLiteral(" | ") + words.racket + QStringLiteral(" | ") + words.promise;
    for (const auto& notice : words.notices) {
        lines << QString::fromUtf8(notice.warns ? "! " : "") + notice.words;
    }
    QStringList steps;
    for (const auto& step : words.steps) {
        steps << step.shape + QLatin1Char(' ') + step.word;
    }
    if (!steps.isEmpty() || !words.hands.isEmpty()) {
        lines << steps.join(QStringLiteral(", ")) + QStringLiteral(" | ") + words.hands;
    }
    for (const auto& pull : words.pulls) {
        lines << pull.name + QStringLiteral(" | ") + pull.number + QLatin1Char(' ') + pull.unit +
                     QStringLiteral(" | ") + pull.dial + QStringLiteral(" | ") + pull.detail;
    }
    lines << words.machine + QStringLiteral(" | ") + words.marked;
    for (const auto& cut : words.cuts) {
        lines << QString::fromUtf8(cut.done ? "[x] " : "[ ] ") + cut.length + QStringLiteral(" | ") + cut.piece +
                     QStringLiteral(" | ") + cut.string + QStringLiteral(" | ") +
                     QString::fromUtf8(cut.careful ? "! " : "") + cut.source + QStringLiteral(" | ") + cut.lost;
    }
    lines << words.shortSide + QStringLiteral(" | ") + words.shortSideMark + QStringLiteral(" | ") +
                 words.shortSideLength + QStringLiteral(" | ") + QString::fromUtf8(words.shortSideWarns ? "! " : "") +
                 words.shortSideFrom;
    lines << words.routeName << words.route << words.note << words.strung;
    return lines.join(QLatin1Char('\n')).toStdString();
}

TEST(CardWords, OnePieceAtAMachineInTheOtherUnit) {
    // 52 lb = 23.587 kg and 50 lb = 22.680 kg: 1 lb = 0.45359237 kg (NIST SP 811, Appendix B.8).
    EXPECT_EQ(told(cardWords(samples::petra(), english())),
              "2121 | logged | Petra Lindobi | Aldermoor 98 · A | Thu 22 Jan 16:30\n"
              "mains | 52 lb | 23.5 or 24 kg | 52 lb is 23.59 kg; 23.5 is 51.8 lb, 24 is 52.9 lb\n"
              "crosses | 50 lb | 22.5 or 23 kg | 50 lb is 22.68 kg; 22.5 is 49.6 lb, 23 is 50.7 lb\n"
              "Bench B | marked 50 to 60 lb\n"
              "[ ] 10.8 m | one piece | Larkspun 130, natural, 1.30 mm (16) | off L-3: leaves 37.9 m | \n"
              "left | butt-cap logo up | 3 m = 9 head lengths, one top cross | as last time\n"
              "one piece, one top cross on the short side\n"
              "Short side, left: mains 1–8, then cross 1; tied off at the head, right.\n"
              "Long side, right: mains 1–8, then crosses 2–19; tied off at the throat, right.\n"
              "two pounds looser than last time: it felt a touch stiff\n");
}

TEST(CardWords, TwoPiecesOffAnEndAndAReel) {
    EXPECT_EQ(told(cardWords(samples::tomas(), english())),
              "2122 | logged | Tomas Ferreday | Aldermoor 98 | Thu 22 Jan 16:30\n"
              "mains | 50 lb |  | \n"
              "crosses | 52 lb |  | \n"
              " | marked 50 to 60 lb\n"
              "[ ] 6.2 m | mains | Kestrelline 125, black, 1.25 mm (17) | "
              "! off K-2: fits by 0.2 m if the book is right, measure before cutting | \n"
              "[ ] 5.6 m | crosses | Larkspun 130, natural, 1.30 mm (16) | off L-3: leaves 43.1 m | \n"
              " |  |  | \n"
              "two pieces\n"
              "Mains: 1–8 on each side, from the head; tied off at the head.\n"
              "Crosses: 1–19, begun left; tied off at the throat, right.\n"
              "\n");
}

TEST(CardWords, OneLineSaysWhatItNeedsAndByWhat) {
    const std::string one = cardWords(samples::petra(), english()).needs.toStdString();
    EXPECT_TRUE(one.starts_with("needs about ")) << one;
    EXPECT_TRUE(one.ends_with(" m by the head's measurements")) << one;
    desk::JobCard card = samples::tomas();
    card.plan.pieces[0].observations = 7;
    card.plan.pieces[0].measured = 5;
    const std::string two = cardWords(card, english()).needs.toStdString();
    EXPECT_NE(two.find(" m by 7 cuts here, 5 with tails; crosses need about "), std::string::npos) << two;
}

TEST(CardWords, AMachineInTheUnitAskedHasOneDial) {
    desk::JobCard card = samples::petra();
    card.mains = desk::dialSetting(card.job.asked.mains, TensionUnit::Pound, 50);
    EXPECT_EQ(cardWords(card, english()).pulls[0].dial.toStdString(), "52 lb");
    EXPECT_EQ(cardWords(card, english()).pulls[0].detail.toStdString(), "");
    card.job.asked.mains = Tension::tryParse("52.25 lb", TensionUnit::Pound).value();
    card.mains = desk::dialSetting(card.job.asked.mains, TensionUnit::Pound, 50);
    EXPECT_EQ(cardWords(card, english()).pulls[0].dial.toStdString(), "52 or 52.5 lb");
    EXPECT_EQ(cardWords(card, english()).pulls[0].detail.toStdString(), "52.25 lb is between two steps");
}

TEST(CardWords, WhatWasCutIsSaidAsItWas) {
    desk::JobCard card = samples::tomas();
    desk::CardPiece& mains = card.pieces[0];
    mains.piece.attempts[0].cut = DoneCut{LotId::of(7), "K-2", mm(6350), Instant{}, true};
    mains.leavesOnLot = mm(0);
    desk::CardPiece& crosses = card.pieces[1];
    crosses.piece.attempts[0].cut = DoneCut{LotId::of(7), "L-3", mm(5600), Instant{}, false};
    crosses.piece.attempts[0].lost = LostReason::CameShort;
    crosses.piece.attempts.push_back({.id = AttemptId::of(2), .number = 2, .cut = std::nullopt, .lost = std::nullopt});
    crosses.piece.planned = mm(5650);
    const CardWords words = cardWords(card, english());
    EXPECT_TRUE(words.cuts[0].done);
    EXPECT_FALSE(words.cuts[0].careful);
    EXPECT_EQ(words.cuts[0].length.toStdString(), "6.35 m");
    EXPECT_EQ(words.cuts[0].source.toStdString(), "cut off K-2, which holds 0 m now");
    EXPECT_FALSE(words.cuts[1].done);
    EXPECT_EQ(words.cuts[1].length.toStdString(), "5.65 m");
    EXPECT_EQ(words.cuts[1].lost.toStdString(), "5.6 m lost, came short");
}

Tension lb(const char* text) { return Tension::tryParse(text, TensionUnit::Pound).value(); }
Instant at(int hour, int minute) {
    return Instant(std::chrono::sys_days(std::chrono::year(2026) / 1 / 22) + std::chrono::hours(hour) +
                   std::chrono::minutes(minute));
}

std::string noticesOf(const desk::JobCard& card) {
    std::string text;
    for (const auto& notice : cardWords(card, english()).notices) {
        text += (notice.warns ? "! " : "") + notice.words.toStdString() + "\n";
    }
    return text;
}

TEST(CardWords, AboveTheMarkedMaximumIsAWarningUntilItIsAgreed) {
    desk::JobCard card = samples::petra();
    EXPECT_EQ(noticesOf(card), "");
    const AboveMarked above{lb("63.5"), lb("60")};
    card.above = desk::CardAbove{above, std::nullopt, {}};
    EXPECT_EQ(noticesOf(card), "! not agreed: 63.5 lb is 3.5 lb above the marked 60 lb\n");
    card.above->consent = Consent{above, "", "", {StaffId::of(1), "counter", at(10, 5)}};
    card.above->toldBy = "Oriel Tamm";
    EXPECT_EQ(noticesOf(card), "63.5 lb is 3.5 lb above the marked 60 lb: the customer agreed, Thu 22 Jan 10:05, "
                               "told by Oriel Tamm\n");
    card.above->consent->agreedBy = "her coach";
    EXPECT_NE(noticesOf(card).find("her coach agreed"), std::string::npos);
}

TEST(CardWords, AChangeStandsBesideWhatWasAskedBeforeAndAfterWhatIsNotAgreed) {
    desk::JobCard card = samples::petra();
    card.change = desk::CardChange{{lb("54"), lb("50")}, "Oriel Tamm", at(11, 5)};
    EXPECT_EQ(noticesOf(card),
              "! changed by Oriel Tamm, Thu 22 Jan 11:05: 52/50 lb instead of 54/50 lb; N nods to it\n");
    const CardWords words = cardWords(card, english());
    EXPECT_EQ(words.pulls[0].was.toStdString(), "54 lb");
    EXPECT_EQ(words.pulls[1].was.toStdString(), "") << "the crosses stay as they were";
    card.above = desk::CardAbove{{lb("52"), lb("50")}, std::nullopt, {}};
    EXPECT_EQ(cardWords(card, english()).notices.front().words.left(10).toStdString(), "not agreed");
}

TEST(CardWords, WhileTheCrossesAreStrungTheirNumberStandsFirst) {
    desk::JobCard card = samples::petra();
    EXPECT_TRUE(cardWords(card, english()).steps.empty()) << "it lies on no machine";
    card.job.state = JobState::OnTheMachine;
    card.job.benchStep = BenchStep::Mains;
    EXPECT_EQ(cardWords(card, english()).pulls[0].number.toStdString(), "52");
    EXPECT_TRUE(cardWords(card, english()).pulls[1].quiet);
    card.job.benchStep = BenchStep::Crosses;
    card.hands = desk::CardHands{"Bastian Quill", "Bench B", at(10, 30), true};
    const CardWords words = cardWords(card, english());
    EXPECT_EQ(words.pulls[0].name.toStdString(), "crosses");
    EXPECT_EQ(words.pulls[0].number.toStdString(), "50");
    EXPECT_FALSE(words.pulls[0].quiet);
    EXPECT_TRUE(words.pulls[1].quiet);
    EXPECT_NE(told(words).find("✓ look over, ✓ mains, ▸ crosses, ○ finish | "
                               "Bastian Quill on Bench B since Thu 22 Jan 10:30"),
              std::string::npos)
        << told(words);
    card.job.benchStep = BenchStep::Finish;
    EXPECT_EQ(cardWords(card, english()).pulls[0].name.toStdString(), "mains");
    EXPECT_FALSE(cardWords(card, english()).pulls[0].quiet);
}

TEST(CardWords, WhoHadIt) {
    desk::JobCard card = samples::petra();
    card.hands = desk::CardHands{"Ines Varholt", "Bench A", at(11, 20), false};
    EXPECT_EQ(cardWords(card, english()).hands.toStdString(), "Ines Varholt had it on Bench A until Thu 22 Jan 11:20");
}

TEST(CardWords, ACutThatWasTakenBackIsNoLostLength) {
    desk::JobCard card = samples::petra();
    JobPiece& piece = card.pieces[0].piece;
    piece.attempts[0].cut = DoneCut{LotId::of(7), "L-3", mm(10800), Instant{}, false, true};
    piece.attempts[0].lost = LostReason::Other;
    piece.attempts.push_back({.id = AttemptId::of(2), .number = 2, .cut = std::nullopt, .lost = std::nullopt});
    EXPECT_EQ(cardWords(card, english()).cuts[0].lost.toStdString(), "10.8 m taken back");
}

TEST(CardWords, WhatCameWithItAndWhatWasSeen) {
    desk::JobCard card = samples::petra();
    EXPECT_EQ(cardWords(card, english()).inspection.toStdString(), "");
    card.inspection.remarks = "grommet 7 is worn";
    EXPECT_EQ(cardWords(card, english()).inspection.toStdString(), "seen: grommet 7 is worn");
    card.inspection.cameWith = "a cover";
    EXPECT_EQ(cardWords(card, english()).inspection.toStdString(), "came with a cover; seen: grommet 7 is worn");
}

TEST(CardWords, ARemnantIsCalledOne) {
    desk::JobCard card = samples::tomas();
    card.pieces[1].lot->kind = LotKind::Remnant;
    EXPECT_EQ(cardWords(card, english()).cuts[1].source.toStdString(), "off remnant L-3: leaves 43.1 m");
}

TEST(CardWords, OnlyAForcedSideWarns) {
    desk::JobCard card = samples::petra();
    EXPECT_FALSE(cardWords(card, english()).shortSideWarns);
    card.shortSide->from = desk::SideFrom::Frame;
    card.shortSide->because = "groove in the strip";
    EXPECT_TRUE(cardWords(card, english()).shortSideWarns);
    EXPECT_EQ(cardWords(card, english()).shortSideFrom.toStdString(), "the frame forces it: groove in the strip");
}

TEST(CardWords, TheReelIsNamedWithItsReason) {
    using Reason = stock::QueueReason;
    desk::JobCard card = samples::petra();
    const Length left = card.pieces[0].leavesOnLot;
    card.pieces[0].why = {.left = Reason{.kind = Reason::Kind::LeavesUseful, .leaves = left, .later = 1, .whole = true},
                          .onTheMachine = true};
    EXPECT_EQ(cardWords(card, english()).cuts[0].source.toStdString(),
              "off L-3: leaves 37.9 m: one more job later; on the machine already");
    EXPECT_FALSE(cardWords(card, english()).cuts[0].careful);
}

TEST(CardWords, WithoutAReelTheCardSaysSo) {
    desk::JobCard card = samples::petra();
    card.pieces[0].lot.reset();
    EXPECT_TRUE(cardWords(card, english()).cuts[0].careful);
    EXPECT_EQ(cardWords(card, english()).cuts[0].source.toStdString(), "no reel holds it");
    card.pieces[0].piece.source = PieceSource::CustomersSet;
    EXPECT_FALSE(cardWords(card, english()).cuts[0].careful);
    EXPECT_EQ(cardWords(card, english()).cuts[0].source.toStdString(), "from the customer's own set");
    card.pieces[0].piece.setLength = mm(12200);
    EXPECT_EQ(cardWords(card, english()).cuts[0].source.toStdString(), "from the customer's own set of 12.2 m");
    card.pieces[0].piece.setLength = mm(9000);
    card.pieces[0].fit = Fit::DoesNotFit;
    card.pieces[0].leavesOnLot = mm(-1800);
    EXPECT_TRUE(cardWords(card, english()).cuts[0].careful);
    EXPECT_EQ(cardWords(card, english()).cuts[0].source.toStdString(),
              "from the customer's own set of 9 m: 1.8 m too short");
}

TEST(CardWords, StrungIsAFactBesideAsked) {
    desk::JobCard card = samples::petra();
    card.job.strung = Strung{{Tension::tryParse("23.5 kg", TensionUnit::Pound).value(),
                              Tension::tryParse("22.5 kg", TensionUnit::Pound).value()},
                             MachineId::of(2),
                             {StaffId::of(2), "bench", Instant{}}};
    card.stringer = "Bastian Quill";
    const CardWords words = cardWords(card, english());
    EXPECT_EQ(words.strung.toStdString(), "strung 23.5/22.5 kg on Bench B by Bastian Quill");
    EXPECT_EQ(words.pulls[0].number.toStdString(), "52");
}

} // namespace
} // namespace rw::ui
