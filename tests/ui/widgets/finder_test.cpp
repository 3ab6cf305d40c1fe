// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/keyboard.h"
#include "tests/ui/support/known_warnings.h"
#include "ui/widgets/finder.h"

#include <QLineEdit>
#include <QListView>
#include <QStringListModel>
#include <QVBoxLayout>

namespace rw::ui::test {
namespace {

class FinderTest : public testing::Test {
protected:
    FinderTest() {
        auto* layout = new QVBoxLayout(&window);
        layout->addWidget(finder);
        layout->addWidget(elsewhere);
        window.resize(600, 400);
        QObject::connect(finder, &Finder::picked, [this](int row) { picked << row; });
        window.show();
        window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
        finder->setFocus(Qt::TabFocusReason);
    }
    void answer(const QStringList& rows) {
        found.setStringList(rows);
        finder->setReady(true);
    }

    OnlyKnownWarnings warnings;
    QStringListModel found;
    QWidget window;
    Finder* finder = new Finder(&found, &window);
    QLineEdit* elsewhere = new QLineEdit(&window);
    QList<int> picked;
};

TEST_F(FinderTest, TheArrowKeysMoveAndEnterPicks) {
    type("a");
    answer({QStringLiteral("one"), QStringLiteral("two"), QStringLiteral("three")});
    EXPECT_TRUE(finder->list()->isVisible());
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    press(Qt::Key_Up);
    press(Qt::Key_Return);
    EXPECT_EQ(picked, QList<int>{1});
    EXPECT_FALSE(finder->list()->isVisible());
}

TEST_F(FinderTest, EnterBeforeTheAnswerWaitsForIt) {
    answer({QStringLiteral("of an older text")});
    type("4");
    finder->setReady(false);
    press(Qt::Key_Return);
    EXPECT_TRUE(picked.isEmpty()) << "an old answer must not be picked";
    answer({QStringLiteral("right")});
    EXPECT_EQ(picked, QList<int>{0});
}

TEST_F(FinderTest, EnterBeforeTheAnswerHurriesIt) {
    int hurried = 0;
    QObject::connect(finder, &Finder::hurried, [&] { ++hurried; });
    type("4");
    finder->setReady(false);
    press(Qt::Key_Return);
    EXPECT_EQ(hurried, 1);
}

TEST_F(FinderTest, LosesNothingOfALongName) {
    const QString name(250, QLatin1Char('n'));
    finder->line()->insert(name);
    EXPECT_EQ(finder->line()->text(), name);
}

TEST_F(FinderTest, KnowsWhatEnterWouldPick) {
    EXPECT_FALSE(finder->highlighted());
    type("a");
    answer({QStringLiteral("one"), QStringLiteral("two")});
    press(Qt::Key_Down);
    ASSERT_EQ(finder->highlighted(), std::optional(1));
    finder->pickHighlighted();
    EXPECT_EQ(picked, QList<int>{1});
    EXPECT_FALSE(finder->highlighted());
}

TEST_F(FinderTest, TypingOnTakesAWaitingEnterBack) {
    type("4");
    finder->setReady(false);
    press(Qt::Key_Return);
    type("4");
    answer({QStringLiteral("one")});
    EXPECT_TRUE(picked.isEmpty());
}

TEST_F(FinderTest, TabPicksToo) {
    type("a");
    answer({QStringLiteral("one")});
    press(Qt::Key_Tab);
    EXPECT_EQ(picked, QList<int>{0});
}

TEST_F(FinderTest, TabGoesOnWhenNothingWasTyped) {
    press(Qt::Key_Tab);
    EXPECT_TRUE(elsewhere->hasFocus());
    EXPECT_TRUE(picked.isEmpty());
}

TEST_F(FinderTest, EscapePutsBackWhatWasPicked) {
    finder->setPicked(QStringLiteral("Petra Lindobi"));
    type("x");
    answer({QStringLiteral("one")});
    press(Qt::Key_Escape);
    EXPECT_EQ(finder->line()->text(), QStringLiteral("Petra Lindobi"));
    EXPECT_FALSE(finder->list()->isVisible());
}

TEST_F(FinderTest, TheListStaysInsideTheWindow) {
    QStringList many;
    for (int i = 0; i < 50; ++i) {
        many << QString::number(i);
    }
    type("a");
    answer(many);
    EXPECT_TRUE(window.rect().contains(finder->list()->geometry()));
}

TEST_F(FinderTest, LeavingClosesTheList) {
    type("a");
    answer({QStringLiteral("one")});
    elsewhere->setFocus(Qt::OtherFocusReason);
    EXPECT_FALSE(finder->list()->isVisible());
}

} // namespace
} // namespace rw::ui::test
