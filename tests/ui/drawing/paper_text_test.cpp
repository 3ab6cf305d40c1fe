// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/drawing/paper_text.h"

#include "tests/ui/no_warnings.h"

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

TEST(PaperText, IsAsWideAtEverySize) {
    const QString words = QStringLiteral("short side");
    const double small = PaperText{1.5}.width(words);
    EXPECT_NEAR(PaperText{150}.width(words), 100 * small, 1e-6 * small);
    EXPECT_GT((PaperText{1.5, true}.width(words)), small);
}

TEST(PaperText, WrapsBetweenWords) {
    const PaperText text{10};
    const QString sentence = QStringLiteral("felt a touch stiff, two pounds looser please and the same grip again");
    const QStringList lines = text.wrapped(sentence, 120, 9);
    ASSERT_GT(lines.size(), 2);
    for (const QString& line : lines) {
        EXPECT_LE(text.width(line), 120);
    }
    EXPECT_EQ(lines.join(QLatin1Char(' ')), sentence);
}

TEST(PaperText, LeavesOutWhatDoesNotFitAndSaysSo) {
    const PaperText text{10};
    const QString sentence = QStringLiteral("felt a touch stiff, two pounds looser please and the same grip again");
    const QStringList lines = text.wrapped(sentence, 120, 2);
    ASSERT_EQ(lines.size(), 2);
    EXPECT_TRUE(lines.back().endsWith(QChar(u'…')));
    EXPECT_TRUE(text.wrapped(QString(), 120, 2).isEmpty());
    EXPECT_TRUE(text.wrapped(QStringLiteral(" \n "), 120, 2).isEmpty());
}

TEST(PaperText, BearsAnythingForAName) {
    const NoWarnings quiet;
    const PaperText text{10};
    for (const QString& name :
         {QString(10000, QLatin1Char('W')), QString::fromUtf8("🎾").repeated(3000),
          QString::fromUtf8("אוריאל תם").repeated(400), QString(QChar(0xd83c)) + QStringLiteral("x")}) {
        for (const QString& line : text.wrapped(name, 150, 3)) {
            EXPECT_LE(text.width(line), 150);
        }
        EXPECT_LE(text.wrapped(name, 150, 3).size(), 3);
        EXPECT_LE(text.width(text.elided(name, 150)), 150);
    }
}

TEST(PaperText, TheEndMayBeWhatIsKept) {
    const QString racket = QStringLiteral("Pellow Feather Longhead Team Edition 2026 white dot on the butt cap");
    const PaperText text{10};
    const double room = text.width(racket) * 0.7;
    const QString kept = text.elided(racket, room, Qt::ElideMiddle);
    EXPECT_TRUE(kept.startsWith(QStringLiteral("Pellow"))) << kept.toStdString();
    EXPECT_TRUE(kept.endsWith(QStringLiteral("butt cap"))) << kept.toStdString();
    EXPECT_LE(text.width(kept), room);
}

} // namespace
} // namespace rw::ui
