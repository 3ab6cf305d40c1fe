// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/keyboard.h"
#include "tests/ui/support/known_warnings.h"
#include "ui/widgets/choice.h"

#include <QLineEdit>
#include <QVBoxLayout>

namespace rw::ui::test {
namespace {

class ChoiceTest : public testing::Test {
protected:
    ChoiceTest() {
        auto* layout = new QVBoxLayout(&window);
        layout->addWidget(choice);
        layout->addWidget(elsewhere);
        for (const char* string : {"", "K Kestrelline", "L Larkspun", "LX Lowther", "T Tarnweave"}) {
            choice->addItem(QString::fromLatin1(string));
        }
        window.show();
        window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
        choice->setFocus(Qt::TabFocusReason);
    }
    OnlyKnownWarnings warnings;
    QWidget window;
    Choice* choice = new Choice(&window);
    QLineEdit* elsewhere = new QLineEdit(&window);
};

TEST_F(ChoiceTest, ALetterMovesToWhatBeginsWithIt) {
    type("t");
    EXPECT_EQ(choice->currentText(), QStringLiteral("T Tarnweave"));
}

TEST_F(ChoiceTest, LettersOfOneWordBelongTogether) {
    type("lx");
    EXPECT_EQ(choice->currentText(), QStringLiteral("LX Lowther"));
}

TEST_F(ChoiceTest, TheSameLetterAgainGoesToTheNext) {
    type("l");
    EXPECT_EQ(choice->currentText(), QStringLiteral("L Larkspun"));
    type("l");
    EXPECT_EQ(choice->currentText(), QStringLiteral("LX Lowther"));
    type("l");
    EXPECT_EQ(choice->currentText(), QStringLiteral("L Larkspun"));
}

TEST_F(ChoiceTest, WhoeverComesBackBeginsANewWord) {
    type("t");
    press(Qt::Key_Tab);
    press(Qt::Key_Tab, Qt::ShiftModifier);
    choice->setCurrentIndex(0);
    type("t");
    EXPECT_EQ(choice->currentText(), QStringLiteral("T Tarnweave"));
}

TEST_F(ChoiceTest, ALetterThatNothingBeginsWithChangesNothing) {
    type("l");
    type("z");
    EXPECT_EQ(choice->currentText(), QStringLiteral("L Larkspun"));
}

} // namespace
} // namespace rw::ui::test
