// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/job_card.h"

#include "core/base/world_error.h"
#include "tests/ui/canvas.h"
#include "tests/ui/no_warnings.h"
#include "tests/ui/sample_cards.h"
#include "tests/ui/sample_plans.h"

#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

/// The card of somebody who fills in everything, at length.
desk::JobCard crowded() {
    desk::JobCard card = samples::tomas();
    card.customer.name = std::string(10000, 'W');
    card.frame.name = std::string(80, 'M');
    card.racket.mark = "🎾🎾🎾";
    card.frame.marked.highest = Tension::tryParse("26 lb", TensionUnit::Pound).value();
    card.above = desk::CardAbove{{card.job.asked.crosses, *card.frame.marked.highest}, std::nullopt, {}};
    card.change = desk::CardChange{card.job.asked, std::string(300, 'O'), Instant{}};
    card.change->before.mains = Tension::tryParse("99.25 lb", TensionUnit::Pound).value();
    card.hands = desk::CardHands{std::string(300, 'B'), std::string(100, 'M'), Instant{}, true};
    card.job.state = JobState::OnTheMachine;
    card.job.benchStep = BenchStep::Crosses;
    for (int i = 0; i < 150; ++i) {
        card.job.note += "אוריאל תם wrote once more ";
    }
    for (desk::CardPiece& piece : card.pieces) {
        piece.article.name = std::string(200, 'K');
        piece.fit = Fit::FitsIfBookIsRight;
        Attempt lost = piece.piece.attempts.front();
        lost.cut = DoneCut{LotId::of(7), "K-2", Length::fromMillimetres(5600), Instant{}, false};
        lost.lost = LostReason::CameShort;
        piece.piece.attempts.insert(piece.piece.attempts.begin(), 9, lost);
    }
    return card;
}

QByteArray written(const desk::JobCard& card, PaperSize paper = PaperSize::A4) {
    const NoWarnings quiet;
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("card.pdf"));
    EXPECT_TRUE(writeJobCardPdf(path, card, {}, paper));
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

qsizetype count(const QByteArray& pdf, const char* pattern) {
    return QString::fromLatin1(pdf).count(QRegularExpression(QString::fromLatin1(pattern)));
}

TEST(JobCardPdf, IsOnePageWithItsFonts) {
    for (const PaperSize paper : {PaperSize::A4, PaperSize::A5Landscape}) {
        for (const desk::JobCard& card : {samples::petra(), samples::tomas(), crowded()}) {
            const QByteArray pdf = written(card, paper);
            EXPECT_TRUE(pdf.startsWith("%PDF-"));
            // A page is an object of /Type /Page; the tree above them is /Pages.
            EXPECT_EQ(count(pdf, "/Type\\s*/Page\\b(?!s)"), 1);
            EXPECT_GE(count(pdf, "/FontFile[23]?\\b"), 2); // regular and bold
        }
    }
}

TEST(JobCardPdf, IsOnTheRightPaper) {
    // ISO 216: A4 is 210 x 297 mm, A5 148 x 210 mm; a PDF's unit is 1/72 inch.
    const auto box = [](const QByteArray& pdf) {
        const auto match = QRegularExpression(QStringLiteral("/MediaBox \\[0 0 ([0-9.]+) ([0-9.]+)\\]"))
                               .match(QString::fromLatin1(pdf));
        return QSizeF(match.captured(1).toDouble(), match.captured(2).toDouble()) * (25.4 / 72);
    };
    EXPECT_NEAR(box(written(samples::petra())).width(), 210, 0.5);
    EXPECT_NEAR(box(written(samples::petra())).height(), 297, 0.5);
    EXPECT_NEAR(box(written(samples::petra(), PaperSize::A5Landscape)).width(), 210, 0.5);
    EXPECT_NEAR(box(written(samples::petra(), PaperSize::A5Landscape)).height(), 148, 0.5);
}

TEST(JobCardPdf, RefusesWhereItCannotWriteAndKeepsWhatWasThere) {
    const QTemporaryDir folder;
    const auto nowhere = writeJobCardPdf(folder.filePath(QStringLiteral("no/such/card.pdf")), samples::petra());
    ASSERT_FALSE(nowhere);
    EXPECT_EQ(nowhere.error().code(), Code::FileUnwritable);
    EXPECT_FALSE(nowhere.error().text("reason").empty());
    const auto overFolder = writeJobCardPdf(folder.path(), samples::petra());
    ASSERT_FALSE(overFolder);
    EXPECT_EQ(overFolder.error().code(), Code::FileUnwritable);
}

TEST(JobCardPdf, OnAFullDeviceIsLost) {
    EXPECT_THROW((void)writeJobCardPdf(QStringLiteral("/dev/full"), samples::petra()), FileLost);
    EXPECT_TRUE(writeJobCardPdf(QStringLiteral("/dev/null"), samples::petra()));
    for (const char* device : {"/dev/full", "/dev/null"}) {
        EXPECT_FALSE(QFileInfo(QString::fromUtf8(device)).isFile()) << device << " was replaced by a card";
    }
}

Canvas painted(const desk::JobCard& card, QRect area, const Palette& palette = Palette::light()) {
    const NoWarnings quiet;
    Canvas canvas(900, 900, palette);
    JobCardStyle style;
    style.palette = palette;
    canvas.draw([&](QPainter& painter) { paintJobCard(painter, area, card, style); });
    return canvas;
}

TEST(JobCardPainting, FillsItsAreaAndNothingElse) {
    for (const QRect& area : {QRect(40, 40, 560, 800), QRect(40, 40, 800, 450), QRect(40, 40, 500, 500),
                              QRect(40, 40, 120, 700), QRect(40, 40, 800, 120), QRect(40, 40, 12, 9)}) {
        for (const desk::JobCard& card : {samples::petra(), samples::tomas(), crowded()}) {
            const Canvas canvas = painted(card, area);
            const int inside = canvas.inked(area);
            EXPECT_EQ(canvas.inked(canvas.all()), inside);
            EXPECT_GT(inside, area.width() * area.height() / 100);
        }
    }
    const Canvas empty = painted(samples::petra(), QRect(40, 40, 0, 0));
    EXPECT_EQ(empty.inked(empty.all()), 0);
}

TEST(JobCardPainting, ALongNameDoesNotMoveTheNumbers) {
    const QRect area(0, 0, 620, 880);
    desk::JobCard card = samples::petra();
    const QImage before = painted(card, area).image();
    card.customer.name = std::string(10000, 'W');
    const QImage after = painted(card, area).image();
    const QRect belowTheHeading(0, 90, 620, 700);
    EXPECT_NE(before, after);
    EXPECT_EQ(before.copy(belowTheHeading), after.copy(belowTheHeading));
    const QRect promise(430, 0, 190, 80);
    EXPECT_EQ(before.copy(promise), after.copy(promise));
}

TEST(JobCardPainting, TheOtherSideIsAnotherCard) {
    const QRect area(0, 0, 620, 880);
    desk::JobCard card = samples::petra();
    const QImage left = painted(card, area).image();
    card.shortSide->side = Side::Right;
    card.plan = samples::onePiece(Side::Right);
    EXPECT_NE(left, painted(card, area).image());
}

TEST(JobCardPainting, AYesThatIsMissingAndAStepChangeTheCard) {
    const QRect area(0, 0, 880, 500);
    desk::JobCard card = samples::petra();
    card.job.state = JobState::OnTheMachine;
    card.job.benchStep = BenchStep::Mains;
    const QImage mains = painted(card, area).image();
    card.job.benchStep = BenchStep::Crosses;
    const QImage crosses = painted(card, area).image();
    EXPECT_NE(mains, crosses);
    card.above = desk::CardAbove{{card.job.asked.mains, card.job.asked.crosses}, std::nullopt, {}};
    EXPECT_NE(crosses, painted(card, area).image());
}

TEST(JobCardPainting, DarkPaperWorksToo) {
    const Canvas canvas = painted(samples::petra(), QRect(0, 0, 880, 500), Palette::dark());
    EXPECT_GT(canvas.inked(canvas.all()), 5000);
}

} // namespace
} // namespace rw::ui
