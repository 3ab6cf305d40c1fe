// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/slip.h"

#include "tests/ui/canvas.h"
#include "tests/ui/no_warnings.h"
#include "tests/ui/sample_cards.h"

#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <algorithm>

namespace rw::ui {
namespace {

Money pounds(std::int64_t pence) { return Money::fromMinor(pence, Currency::pounds()); }

desk::JobCard strung(desk::JobCard card) {
    card.job.strung = Strung{card.job.asked, MachineId::of(2), {StaffId::of(2), "bench", Instant{}}};
    return card;
}

desk::JobPaper crowded() {
    desk::JobCard card = strung(samples::tomas());
    card.inspection.cameWith = std::string(2000, 'c');
    card.customer.name = std::string(10000, 'W');
    card.racket.mark = "🎾🎾🎾";
    for (desk::CardPiece& piece : card.pieces) {
        piece.article.name = std::string(200, 'K');
    }
    for (int i = 0; i < 60; ++i) {
        card.job.note += "אוריאל תם wrote once more ";
        card.job.charges.push_back({.kind = ChargeKind::Extra,
                                    .article = {},
                                    .label = "grommet strip, the long one " + std::to_string(i),
                                    .amount = pounds(123456)});
    }
    card.job.number = 99'999'999'999;
    card.job.total = pounds(99'999'999'999);
    return {std::move(card), std::string(300, 'H'), pounds(1)};
}

desk::JobPaper plain() { return {strung(samples::petra()), "Harbour Lane Strings", pounds(0)}; }

TEST(SlipPainting, KeepsToItsPaper) {
    const NoWarnings quiet;
    for (const PaperSize size : kPaperSizes) {
        const QSizeF page = printableMillimetres(size);
        const QRect area(30, 30, static_cast<int>(page.width() * 3), static_cast<int>(page.height() * 3));
        for (const Slip slip : {Slip::Tag, Slip::Ticket, Slip::FrameLabel, Slip::Ready}) {
            for (const desk::JobPaper& paper : {plain(), crowded()}) {
                Canvas canvas(area.width() + 60, area.height() + 60, Palette::print());
                canvas.draw([&](QPainter& painter) { paintSlip(painter, area, size, slip, paper); });
                const int inside = canvas.inked(area);
                EXPECT_EQ(canvas.inked(canvas.all()), inside);
                // A twentieth where the paper is small; a slip keeps its size on a large one.
                EXPECT_GT(inside, std::min(1000, area.width() * area.height() / 20));
            }
        }
    }
}

TEST(SlipPainting, ATagOnALargeSheetStaysATag) {
    // A4 leaves 186 x 273 mm; the tag takes 105 x 74 mm of it (ISO 216, A7), at the top left.
    const NoWarnings quiet;
    const QRect sheet(0, 0, 186 * 4, 273 * 4);
    Canvas canvas(sheet.width(), sheet.height(), Palette::print());
    canvas.draw([&](QPainter& painter) { paintSlip(painter, sheet, PaperSize::A4, Slip::Tag, plain()); });
    const int all = canvas.inked(sheet);
    EXPECT_EQ(canvas.inked(QRect(0, 0, 106 * 4, 75 * 4)), all);
    EXPECT_GT(canvas.inked(QRect(0, 0, 105 * 4, 30 * 4)), all / 3) << "the number takes most of it";
}

TEST(Slips, WhatSaysHowItWasStrungWaitsUntilItWas) {
    for (const Slip slip : kSlips) {
        EXPECT_TRUE(canBePrinted(slip, strung(samples::petra()).job));
    }
    const Job waiting = samples::petra().job;
    for (const Slip slip : {Slip::Tag, Slip::Ticket, Slip::JobCard}) {
        EXPECT_TRUE(canBePrinted(slip, waiting));
    }
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("slip.pdf"));
    for (const Slip slip : {Slip::FrameLabel, Slip::Ready}) {
        const auto written = writeSlipPdf(path, slip, {samples::petra(), "", pounds(0)}, PaperSize::A6);
        ASSERT_FALSE(written);
        EXPECT_EQ(written.error().code(), Code::WrongState);
        EXPECT_EQ(written.error().number("job"), 2121);
        EXPECT_EQ(written.error().text("wanted"), "strung");
        EXPECT_FALSE(QFile::exists(path));
    }
}

TEST(SlipPdf, IsOnePageOfItsPaper) {
    const NoWarnings quiet;
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("slip.pdf"));
    // ISO 216: A7 is 74 x 105 mm, A6 105 x 148 mm; a PDF's unit is 1/72 inch.
    const auto width = [&](Slip slip) {
        EXPECT_TRUE(writeSlipPdf(path, slip, plain(), usualPaper(slip)));
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        const QString pdf = QString::fromLatin1(file.readAll());
        EXPECT_EQ(pdf.count(QRegularExpression(QStringLiteral("/Type\\s*/Page\\b(?!s)"))), 1);
        const auto box = QRegularExpression(QStringLiteral("/MediaBox \\[0 0 ([0-9.]+) ([0-9.]+)\\]")).match(pdf);
        return box.captured(1).toDouble() * 25.4 / 72;
    };
    EXPECT_NEAR(width(Slip::Tag), 105, 0.5);
    EXPECT_NEAR(width(Slip::Ticket), 105, 0.5);
    EXPECT_NEAR(width(Slip::JobCard), 210, 0.5);
    EXPECT_NEAR(width(Slip::FrameLabel), 62, 0.5) << "a piece of the roll, read across it";
}

TEST(PaperSizes, AreKeptByTheirCodes) {
    for (const PaperSize size : kPaperSizes) {
        const PaperSize other = size == PaperSize::A4 ? PaperSize::A6 : PaperSize::A4;
        EXPECT_EQ(paperSizeFromCode(paperSizeCode(size), other), size);
    }
    EXPECT_EQ(paperSizeFromCode(QStringLiteral("foolscap"), PaperSize::A6), PaperSize::A6);
}

} // namespace
} // namespace rw::ui
