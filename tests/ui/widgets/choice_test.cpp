// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/keyboard.h"
#include "tests/ui/support/known_warnings.h"
#include "ui/widgets/choice.h"

#include <QAbstractItemView>
#include <QAction>
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

TEST_F(ChoiceTest, TheKeyThatClosesTheOpenListDoesNothingElse) {
    int fired = 0;
    QAction key;
    key.setShortcuts({QKeySequence(Qt::Key_Return), QKeySequence(Qt::Key_Escape)});
    key.setShortcutContext(Qt::WidgetWithChildrenShortcut);
    QObject::connect(&key, &QAction::triggered, [&] { ++fired; });
    window.addAction(&key);
    int chosen = 0;
    QObject::connect(choice, &QComboBox::activated, [&] { ++chosen; });
    choice->showPopup();
    QTest::keyClick(choice->view(), Qt::Key_Down);
    QTest::keyClick(choice->view(), Qt::Key_Return);
    EXPECT_FALSE(choice->view()->isVisible());
    EXPECT_EQ(choice->currentText(), QStringLiteral("K Kestrelline"));
    EXPECT_EQ(chosen, 1);
    choice->showPopup();
    QTest::keyClick(choice->view(), Qt::Key_Down);
    QTest::keyClick(choice->view(), Qt::Key_Escape);
    EXPECT_FALSE(choice->view()->isVisible());
    EXPECT_EQ(choice->currentText(), QStringLiteral("K Kestrelline"));
    EXPECT_EQ(chosen, 1);
    EXPECT_EQ(fired, 0);
    press(Qt::Key_Return);
    EXPECT_EQ(fired, 1) << "with the list closed it is a key of the station again";
}

TEST_F(ChoiceTest, WhatIsTypedHereIsNoKeyOfTheStationAround) {
    int fired = 0;
    QAction key;
    key.setShortcuts({QKeySequence(Qt::Key_T), QKeySequence(Qt::Key_1)});
    key.setShortcutContext(Qt::WidgetWithChildrenShortcut);
    QObject::connect(&key, &QAction::triggered, [&] { ++fired; });
    window.addAction(&key);
    type("t1");
    EXPECT_EQ(fired, 0);
    EXPECT_EQ(choice->currentText(), QStringLiteral("T Tarnweave"));
    choice->clearFocus();
    window.setFocus();
    type("t");
    EXPECT_EQ(fired, 1) << "elsewhere it is one";
}

} // namespace
} // namespace rw::ui::test
