// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/keyboard.h"
#include "tests/ui/support/known_warnings.h"
#include "ui/widgets/finder.h"
#include "ui/widgets/scan_watch.h"
#include "ui/widgets/typed_tag.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QStringListModel>
#include <QVBoxLayout>

namespace rw::ui::test {
namespace {

struct Stroke {
    Qt::Key key;
    unsigned long long at = 0; ///< milliseconds
};

template<class Use>
auto asEvent(const Stroke& stroke, Use use) {
    const bool isDigit = stroke.key >= Qt::Key_0 && stroke.key <= Qt::Key_9;
    QKeyEvent event(QEvent::KeyPress, stroke.key, Qt::NoModifier, isDigit ? QString(QChar(stroke.key)) : QString());
    event.setTimestamp(stroke.at);
    return use(event);
}

QString scanned(std::initializer_list<Stroke> strokes) {
    ScanWatch watch;
    for (const Stroke& stroke : strokes) {
        asEvent(stroke, [&](const QKeyEvent& event) { watch.see(event); });
    }
    return watch.scanned();
}

bool takes(TypedTag& tag, Qt::Key key) {
    return asEvent({key}, [&](const QKeyEvent& event) { return tag.take(event); });
}

TEST(ScanWatch, KnowsAScannerByItsSpeed) {
    EXPECT_EQ(scanned({{Qt::Key_4, 1000}, {Qt::Key_2, 1005}, {Qt::Key_Return, 1012}}), QStringLiteral("42"));
    EXPECT_EQ(scanned({{Qt::Key_4, 1000}, {Qt::Key_2, 1005}, {Qt::Key_Enter, 1012}}), QStringLiteral("42"));
    EXPECT_EQ(scanned({{Qt::Key_7, 1000}, {Qt::Key_Return, 1035}}), QStringLiteral("7")) << "one digit";
    EXPECT_EQ(scanned({{Qt::Key_4, 1000}, {Qt::Key_2, 1090}, {Qt::Key_Return, 1180}}), QString()) << "by hand";
    EXPECT_EQ(scanned({{Qt::Key_4, 1000}, {Qt::Key_2, 1005}, {Qt::Key_Return, 1100}}), QString()) << "Enter came later";
    EXPECT_EQ(scanned({{Qt::Key_4, 1000}, {Qt::Key_2, 1090}, {Qt::Key_1, 1100}, {Qt::Key_Return, 1110}}),
              QStringLiteral("21"))
        << "what stood there before was typed";
    EXPECT_EQ(scanned({{Qt::Key_4, 1000}, {Qt::Key_A, 1005}, {Qt::Key_Return, 1010}}), QString());
    EXPECT_EQ(scanned({{Qt::Key_4, 1000}, {Qt::Key_Return, 1010}, {Qt::Key_Return, 1020}}), QString())
        << "the second Enter ends nothing";
}

TEST(TypedTag, IsDigitsAndEnter) {
    TypedTag tag;
    EXPECT_FALSE(takes(tag, Qt::Key_Return)) << "without a number Enter means what it means";
    EXPECT_TRUE(takes(tag, Qt::Key_2));
    EXPECT_TRUE(takes(tag, Qt::Key_1));
    EXPECT_EQ(tag.digits(), QStringLiteral("21"));
    EXPECT_FALSE(tag.finished());
    EXPECT_TRUE(takes(tag, Qt::Key_Return));
    EXPECT_EQ(tag.finished(), 21);
    EXPECT_FALSE(tag.finished()) << "once";
    EXPECT_EQ(tag.digits(), QString());
}

TEST(TypedTag, IsTakenBackOrDropped) {
    TypedTag tag;
    EXPECT_TRUE(takes(tag, Qt::Key_2));
    EXPECT_TRUE(takes(tag, Qt::Key_1));
    EXPECT_TRUE(takes(tag, Qt::Key_Backspace));
    EXPECT_EQ(tag.digits(), QStringLiteral("2"));
    EXPECT_FALSE(takes(tag, Qt::Key_Shift));
    EXPECT_EQ(tag.digits(), QStringLiteral("2"));
    EXPECT_TRUE(takes(tag, Qt::Key_Escape));
    EXPECT_EQ(tag.digits(), QString());
    EXPECT_FALSE(takes(tag, Qt::Key_Escape));
    EXPECT_TRUE(takes(tag, Qt::Key_2));
    EXPECT_FALSE(takes(tag, Qt::Key_Down)) << "another key means what it means";
    EXPECT_FALSE(takes(tag, Qt::Key_Return));
    EXPECT_FALSE(tag.finished());
}

class Scanned : public testing::Test {
protected:
    Scanned() {
        auto* layout = new QVBoxLayout(&window);
        layout->addWidget(finder);
        QObject::connect(finder, &Finder::picked, [this](int row) { picked << row; });
        window.show();
        window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
        finder->setFocus(Qt::TabFocusReason);
        found.setStringList({QStringLiteral("whose phone holds it"), QStringLiteral("the tag")});
        finder->setScannedRow(1);
    }
    void send(std::initializer_list<Stroke> strokes) {
        for (const Stroke& stroke : strokes) {
            asEvent(stroke, [this](QKeyEvent& event) { QApplication::sendEvent(finder->line(), &event); });
            if (stroke.key != Qt::Key_Return) {
                finder->setReady(false); // as the presenter says it, and answers later
            }
        }
    }

    OnlyKnownWarnings warnings;
    QStringListModel found;
    QWidget window;
    Finder* finder = new Finder(&found, &window);
    QList<int> picked;
};

TEST_F(Scanned, AScannersEnterPicksTheTagAndAPersonsTheFirstRow) {
    send({{Qt::Key_2, 1000}, {Qt::Key_1, 1010}, {Qt::Key_Return, 1020}});
    EXPECT_TRUE(picked.isEmpty()) << "the answer is on its way";
    finder->setReady(true);
    EXPECT_EQ(picked, QList<int>{1});
    finder->setPicked({});
    send({{Qt::Key_2, 2000}, {Qt::Key_1, 2200}, {Qt::Key_Return, 2400}});
    finder->setReady(true);
    EXPECT_EQ(picked, (QList<int>{1, 0}));
}

TEST_F(Scanned, WithoutATagOfThatNumberItIsAnOrdinarySearch) {
    finder->setScannedRow(std::nullopt);
    send({{Qt::Key_2, 1000}, {Qt::Key_1, 1010}, {Qt::Key_Return, 1020}});
    finder->setReady(true);
    EXPECT_EQ(picked, QList<int>{0});
}

} // namespace
} // namespace rw::ui::test
