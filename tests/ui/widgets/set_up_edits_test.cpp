// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/keyboard.h"
#include "tests/ui/support/known_warnings.h"
#include "ui/widgets/calendar_edits.h"
#include "ui/widgets/measure_edits.h"

#include <QVBoxLayout>

namespace rw::ui::test {
namespace {
using namespace std::chrono_literals;

/// An editor in a window, with somewhere else to go.
template<class Edit>
class Desk {
public:
    Desk()
        : edit(new Edit(&m_window))
        , m_elsewhere(new QLineEdit(&m_window)) {
        auto* layout = new QVBoxLayout(&m_window);
        layout->addWidget(edit);
        layout->addWidget(m_elsewhere);
        m_window.show();
        m_window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_window));
    }
    /// What it reads once that was typed and the line was left.
    auto typed(const char* text) {
        edit->setFocus(Qt::TabFocusReason);
        edit->selectAll();
        QTest::keyClicks(edit, QString::fromUtf8(text));
        const auto value = edit->value();
        press(Qt::Key_Tab);
        return value;
    }
    std::optional<Code> why(const char* text) {
        const auto value = typed(text);
        EXPECT_EQ(edit->problem().has_value(), !value.has_value());
        return value ? std::nullopt : std::optional(value.error().code());
    }
    [[nodiscard]] std::string shown() const { return edit->text().toStdString(); }

    OnlyKnownWarnings warnings;

private:
    QWidget m_window;

public:
    Edit* edit;

private:
    QLineEdit* m_elsewhere;
};

TEST(HoursEditTest, ReadsADay) {
    Desk<HoursEdit> desk;
    EXPECT_EQ(desk.typed("9.30-17"), (DayHours{9h + 30min, 17h}));
    EXPECT_EQ(desk.shown(), "09:30-17:00");
    EXPECT_EQ(desk.why("17-9"), Code::Unreadable);
    EXPECT_EQ(desk.shown(), "17-9") << "what cannot be read stays";
}

TEST(DateEditTest, ReadsOneDay) {
    Desk<DateEdit> desk;
    const CivilDate friday = 2026y / 3 / 13;
    for (const char* text : {"2026-03-13", "13 March 2026", "13 Mar 2026", "13.3.2026"}) {
        EXPECT_EQ(desk.typed(text), friday) << text;
        EXPECT_EQ(desk.shown(), "2026-03-13");
    }
    EXPECT_EQ(desk.why("tomorrow"), Code::Unreadable);
    EXPECT_EQ(desk.why("2026-02-30"), Code::Unreadable);
}

TEST(DaysEditTest, ReadsAListWithStretches) {
    Desk<DaysEdit> desk;
    const auto days = desk.typed("2026-12-25,2026-08-03 to 2026-08-05");
    ASSERT_TRUE(days);
    EXPECT_EQ(days->size(), 4U);
    EXPECT_EQ(desk.shown(), "2026-08-03 to 2026-08-05, 2026-12-25");
    EXPECT_EQ(desk.why("2026-08-03 to"), Code::Unreadable);
}

TEST(PercentEditTest, ReadsARateOfTax) {
    Desk<PercentEdit> desk;
    EXPECT_EQ(desk.typed("20"), 2000);
    EXPECT_EQ(desk.shown(), "20 %");
    EXPECT_EQ(desk.typed("7,7 %"), 770);
    EXPECT_EQ(desk.why("7.777"), Code::TooFine);
    EXPECT_EQ(desk.why("101"), Code::OutOfRange);
    EXPECT_EQ(desk.why("-1"), Code::Unreadable);
    EXPECT_EQ(desk.why("much"), Code::Unreadable);
}

// 1 in = 25.4 mm: NIST SP 811.
TEST(HeadEditsTest, ReadMillimetresAndInches) {
    Desk<HeadMeasureEdit> desk;
    EXPECT_EQ(desk.typed("245,5"), 245.5);
    EXPECT_EQ(desk.shown(), "245.5 mm");
    EXPECT_DOUBLE_EQ(*desk.typed("24.5 cm"), 245);
    EXPECT_DOUBLE_EQ(*desk.typed("10 in"), 254);
    EXPECT_EQ(desk.why("10 ft"), Code::Unreadable);
    EXPECT_EQ(desk.why("-5"), Code::Unreadable);

    Desk<HeadSizeEdit> size;
    EXPECT_EQ(size.typed("632.3"), 632.3);
    EXPECT_EQ(size.shown(), "632.3 cm²");
    EXPECT_DOUBLE_EQ(*size.typed("100"), 645.16) << "no head is that small in square centimetres";
    EXPECT_EQ(size.shown(), "645.16 cm²");
    EXPECT_DOUBLE_EQ(*size.typed("100 in²"), 645.16);
    EXPECT_EQ(size.why("100 ft"), Code::Unreadable);
}

TEST(StepEditTest, ReadsTheStepOfADial) {
    Desk<StepEdit> desk;
    EXPECT_EQ(desk.typed("0,25"), 25);
    EXPECT_EQ(desk.shown(), "0.25");
    EXPECT_EQ(desk.typed("1"), 100);
    EXPECT_EQ(desk.why("half"), Code::Unreadable);
}

} // namespace
} // namespace rw::ui::test
