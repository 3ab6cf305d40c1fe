// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/tag_code.h"

#include "tests/ui/no_warnings.h"
#include "tests/ui/sample_cards.h"
#include "ui/documents/slip.h"

#include <QImage>
#include <QPainter>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <array>
#include <utility>

// What is printed is read back with zbar, which knows nothing of how it was made.
namespace rw::ui {
namespace {

constexpr double kLabelPrinterDpi = 203; ///< 8 dots a millimetre: the coarse ones (common practice)

/// Everything that a reader finds in a picture: "QR-Code:2121".
std::string readBack(const QImage& picture) {
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("page.png"));
    EXPECT_TRUE(picture.save(file));
    QProcess reader;
    reader.start(QStringLiteral(ZBARIMG_PROGRAM), {QStringLiteral("--quiet"), file});
    EXPECT_TRUE(reader.waitForFinished());
    return reader.readAllStandardOutput().trimmed().toStdString();
}

desk::JobPaper strungAs(std::int64_t number) {
    desk::JobCard card = samples::petra();
    card.job.number = number;
    card.job.strung = Strung{card.job.asked, MachineId::of(2), {StaffId::of(2), "bench", Instant{}}};
    card.inspection.cameWith = "a cover";
    return {std::move(card), "Harbour Lane Strings", Money::zero(Currency::pounds())};
}

/// The page as a label printer burns it: black or nothing.
QImage burned(Slip slip, PaperSize size, std::int64_t number) {
    const QSizeF dots = printableMillimetres(size) * kLabelPrinterDpi / 25.4;
    QImage page(dots.toSize(), QImage::Format_Grayscale8);
    page.fill(Qt::white);
    QPainter painter(&page);
    paintSlip(painter, page.rect(), size, slip, strungAs(number));
    painter.end();
    return page.convertToFormat(QImage::Format_Mono, Qt::ThresholdDither);
}

const std::array kSlipsWithCode = {
    std::pair{Slip::Tag, PaperSize::A7Landscape}, std::pair{Slip::Tag, PaperSize::RollLong},
    std::pair{Slip::Tag, PaperSize::A4},          std::pair{Slip::Ticket, PaperSize::A6},
    std::pair{Slip::Ticket, PaperSize::A4},       std::pair{Slip::FrameLabel, PaperSize::RollShort},
    std::pair{Slip::FrameLabel, PaperSize::A6},   std::pair{Slip::Ready, PaperSize::A7Landscape},
    std::pair{Slip::Ready, PaperSize::RollLong}};

TEST(TagCode, IsReadBackFromEverySlipThatCarriesIt) {
    const NoWarnings quiet;
    for (const auto& [slip, size] : kSlipsWithCode) {
        for (const std::int64_t number : {7LL, 42LL, 205LL, 2121LL, 10'000LL, 987'654LL, 1'234'567LL}) {
            EXPECT_EQ(readBack(burned(slip, size, number)), "QR-Code:" + std::to_string(number))
                << slipCode(slip).toStdString() << " on " << paperSizeCode(size).toStdString();
        }
    }
}

TEST(TagCode, AScuffedOneIsStillRead) {
    // Level H restores up to 30 % of the code words (ISO/IEC 18004). A stripe of 4 modules across the 21 of the data
    // area, clear of the finder patterns' centres, is far less.
    QImage page = burned(Slip::Tag, PaperSize::A7Landscape, 2121);
    QPainter painter(&page);
    const double dot = kLabelPrinterDpi / 25.4;
    const double module = 25 * dot / (21 + 2 * TagCode::kQuietZone);
    const double left = 72 * dot + (TagCode::kQuietZone + 9) * module;
    painter.fillRect(QRectF(left, TagCode::kQuietZone * module + 9 * module, 12 * module, 2 * module), Qt::white);
    painter.end();
    EXPECT_EQ(readBack(page), "QR-Code:2121");
}

TEST(TagCode, StaysSmallForEveryNumberOfAShop) {
    // ISO/IEC 18004: version 1 has 21 modules a side and holds 17 digits at level H, version 2 has 25.
    EXPECT_EQ(TagCode(1).modules(), 21);
    EXPECT_EQ(TagCode(99'999'999'999'999'999).modules(), 21);
    EXPECT_EQ(TagCode(100'000'000'000'000'000).modules(), 25);
}

TEST(TagCode, KeepsItsQuietZoneWhite) {
    const QImage page = burned(Slip::Tag, PaperSize::A7Landscape, 2121);
    const double dot = kLabelPrinterDpi / 25.4;
    const double quiet = 25 * dot * TagCode::kQuietZone / (21 + 2 * TagCode::kQuietZone);
    const QRect code(qRound(72 * dot), 0, qRound(25 * dot), qRound(25 * dot));
    const QRect inside = code.adjusted(qRound(quiet), qRound(quiet), -qRound(quiet), -qRound(quiet));
    int dark = 0;
    for (int y = code.top() + 1; y < code.bottom(); ++y) {
        for (int x = code.left() + 1; x < code.right(); ++x) {
            const bool isDark = qGray(page.pixel(x, y)) < 128;
            EXPECT_FALSE(isDark && !inside.adjusted(-1, -1, 1, 1).contains(x, y)) << x << ", " << y;
            dark += isDark ? 1 : 0;
        }
    }
    EXPECT_GT(dark, inside.width() * inside.height() / 4);
}

} // namespace
} // namespace rw::ui
