// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/keyboard.h"
#include "tests/ui/support/known_warnings.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/sheet.h"
#include "ui/widgets/tension_edit.h"

namespace rw::ui::test {
namespace {

class MarginNoteTest : public testing::Test {
protected:
    MarginNoteTest() {
        line = sheet.addLine(QStringLiteral("&Tensions"), {mains, crosses});
        line.note->watch(mains);
        line.note->watch(crosses);
        line.note->setNote(QStringLiteral("marked 50 to 60 lb"));
        sheet.show();
        sheet.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&sheet));
        mains->setFocus(Qt::TabFocusReason);
    }
    OnlyKnownWarnings warnings;
    Sheet sheet;
    TensionEdit* mains = new TensionEdit(&sheet);
    TensionEdit* crosses = new TensionEdit(&sheet);
    Sheet::Line line{};
};

TEST_F(MarginNoteTest, SaysWhatIsWrongOnlyWhenTheLineIsLeft) {
    type("5");
    EXPECT_TRUE(line.note->problem().isEmpty()) << "5 is on the way to 52";
    type("000");
    press(Qt::Key_Tab);
    EXPECT_FALSE(line.note->problem().isEmpty());
    EXPECT_TRUE(line.note->text().startsWith(QStringLiteral("✕ "))) << "told by a shape too";
    EXPECT_EQ(mains->accessibleDescription(), line.note->problem());
}

TEST_F(MarginNoteTest, TakesItBackAsSoonAsItIsRight) {
    type("abc");
    press(Qt::Key_Tab);
    ASSERT_FALSE(line.note->problem().isEmpty());
    press(Qt::Key_Tab, Qt::ShiftModifier);
    type("52");
    EXPECT_TRUE(line.note->problem().isEmpty());
    EXPECT_EQ(line.note->text(), QStringLiteral("marked 50 to 60 lb"));
    EXPECT_TRUE(mains->accessibleDescription().isEmpty());
}

TEST_F(MarginNoteTest, AWarningHasItsOwnSign) {
    line.note->setWarning(QStringLiteral("above the mark"));
    EXPECT_EQ(line.note->text(), QStringLiteral("▲ above the mark\nmarked 50 to 60 lb"));
}

TEST_F(MarginNoteTest, ShowsTheFirstProblemWhenAsked) {
    EXPECT_FALSE(line.note->showProblems()) << "both are blank";
    mains->setValue(*Tension::tryParse("52", TensionUnit::Pound));
    crosses->setValue(*Tension::tryParse("50", TensionUnit::Pound));
    EXPECT_TRUE(line.note->showProblems());
}

} // namespace
} // namespace rw::ui::test
