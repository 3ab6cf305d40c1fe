// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/qtport/station_printer.h"

#include "tests/ui/no_warnings.h"
#include "tests/ui/sample_cards.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

class OwnPapers : public testing::Test {
protected:
    [[nodiscard]] QString settings() const { return folder.filePath(QStringLiteral("papers.ini")); }
    [[nodiscard]] QString pdfs() const { return folder.filePath(QStringLiteral("papers/of/the shop")); }
    static desk::JobPaper petras() {
        desk::JobCard card = samples::petra();
        card.job.strung = Strung{card.job.asked, MachineId::of(2), {StaffId::of(2), "bench", Instant{}}};
        const Money nothing = card.job.total;
        return {std::move(card), "Harbour Lane Strings", nothing};
    }
    NoWarnings quiet;
    QTemporaryDir folder;
};

TEST_F(OwnPapers, WhatWasChosenIsKeptForNextTime) {
    {
        StationPrinter printer(settings(), pdfs());
        EXPECT_EQ(printer.choice(Slip::Tag), (SlipChoice{QString(), PaperSize::A7Landscape}));
        EXPECT_EQ(printer.choice(Slip::JobCard), (SlipChoice{QString(), PaperSize::A4}));
        printer.choose(Slip::Tag, {QStringLiteral("Counter"), PaperSize::A6});
    }
    const StationPrinter again(settings(), pdfs());
    EXPECT_EQ(again.choice(Slip::Tag), (SlipChoice{QStringLiteral("Counter"), PaperSize::A6}));
    EXPECT_EQ(again.choice(Slip::Ticket), (SlipChoice{QString(), PaperSize::A6})) << "one slip's choice is its own";
}

TEST_F(OwnPapers, WithoutAPrinterASlipIsAPdfInItsFolder) {
    StationPrinter printer(settings(), pdfs());
    for (const Slip slip : kSlips) {
        const auto printed = printer.print(slip, petras(), {});
        ASSERT_TRUE(printed);
        EXPECT_TRUE(printed->isFile);
        EXPECT_TRUE(printed->missingPrinter.isEmpty());
        EXPECT_EQ(QFileInfo(printed->where).path(), pdfs());
        EXPECT_EQ(QFileInfo(printed->where).fileName(), slipCode(slip) + QStringLiteral("-2121.pdf"));
        QFile file(printed->where);
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
        // Printed again it is the same slip, not another one beside it.
        EXPECT_EQ(printer.print(slip, petras(), {})->where, printed->where);
    }
    EXPECT_EQ(QDir(pdfs()).entryList(QDir::Files).size(), static_cast<qsizetype>(kSlips.size()));
}

TEST_F(OwnPapers, APrinterThatIsGoneIsNamed) {
    StationPrinter printer(settings(), pdfs());
    printer.choose(Slip::Ticket, {QStringLiteral("no such printer here"), PaperSize::A6});
    const auto printed = printer.print(Slip::Ticket, petras(), {});
    ASSERT_TRUE(printed);
    EXPECT_TRUE(printed->isFile);
    EXPECT_EQ(printed->missingPrinter, QStringLiteral("no such printer here"));
}

TEST_F(OwnPapers, AFolderThatCannotBeMadeIsRefused) {
    QFile inTheWay(folder.filePath(QStringLiteral("papers")));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    StationPrinter printer(settings(), pdfs());
    const auto printed = printer.print(Slip::Tag, petras(), {});
    ASSERT_FALSE(printed);
    EXPECT_EQ(printed.error().code(), Code::FileUnwritable);
}

} // namespace
} // namespace rw::ui
