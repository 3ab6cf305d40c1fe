// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/keyboard.h"
#include "tests/ui/support/known_warnings.h"
#include "ui/widgets/count_edit.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/money_edit.h"
#include "ui/widgets/pattern_edit.h"
#include "ui/widgets/tension_edit.h"
#include "ui/widgets/thickness_edit.h"
#include "ui/widgets/weight_edit.h"

#include <QVBoxLayout>

namespace rw::ui::test {
namespace {

Tension lb(std::string_view text) { return *Tension::tryParse(text, TensionUnit::Pound); }

/// An editor in a window, with somewhere else to go.
template<class Edit>
class Desk {
public:
    template<class... Arguments>
    explicit Desk(Arguments... arguments)
        : edit(new Edit(arguments..., &m_window))
        , m_elsewhere(new QLineEdit(&m_window)) {
        auto* layout = new QVBoxLayout(&m_window);
        layout->addWidget(edit);
        layout->addWidget(m_elsewhere);
        m_window.show();
        m_window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_window));
        edit->setFocus(Qt::TabFocusReason);
    }
    void typed(const char* text) {
        edit->setFocus(Qt::TabFocusReason);
        edit->selectAll();
        QTest::keyClicks(edit, QString::fromUtf8(text));
    }
    void leave() { press(Qt::Key_Tab); }

    OnlyKnownWarnings warnings;

private:
    QWidget m_window;

public:
    Edit* edit;

private:
    QLineEdit* m_elsewhere;
};

TEST(CountEditTest, IsAWholeNumberFromOneOn) {
    Desk<CountEdit> desk(500);
    const struct {
        const char* typed;
        int count; ///< 0: none
        Code why;
    } cases[] = {{"1", 1, {}},
                 {" 12 ", 12, {}},
                 {"500", 500, {}},
                 {"", 0, Code::Missing},
                 {"0", 0, Code::OutOfRange},
                 {"501", 0, Code::OutOfRange},
                 {"-3", 0, Code::OutOfRange},
                 {"2.5", 0, Code::Unreadable},
                 {"a box", 0, Code::Unreadable},
                 {"99999999999999999999", 0, Code::Unreadable}};
    for (const auto& c : cases) {
        desk.edit->clear();
        desk.typed(c.typed);
        const auto count = desk.edit->value();
        if (c.count > 0) {
            ASSERT_TRUE(count) << c.typed;
            EXPECT_EQ(*count, c.count) << c.typed;
        } else {
            ASSERT_FALSE(count) << c.typed;
            EXPECT_EQ(count.error().code(), c.why) << c.typed;
        }
    }
    desk.typed(" 7 ");
    desk.leave();
    EXPECT_EQ(desk.edit->text(), QStringLiteral("7"));
}

TEST(TensionEditTest, ReadsWhatPeopleType) {
    Desk<TensionEdit> desk;
    const struct {
        const char* typed;
        const char* value; ///< "" : none
        Code why;
    } cases[] = {
        {"52", "52 lb", {}},           {"52,5", "52.5 lb", {}},           {"23.5 kg", "23.5 kg", {}},
        {"abc", "", Code::Unreadable}, {"-3", "", Code::NothingToChange}, {"5000 lb", "", Code::OutOfRange},
        {"52.555", "", Code::TooFine},
    };
    for (const auto& c : cases) {
        desk.edit->setValue(std::nullopt);
        desk.edit->setDefaultUnit(TensionUnit::Pound);
        desk.typed(c.typed);
        const auto value = desk.edit->value();
        if (*c.value != '\0') {
            ASSERT_TRUE(value) << c.typed;
            EXPECT_EQ(value->text(), c.value);
            EXPECT_FALSE(desk.edit->problem()) << c.typed;
        } else {
            ASSERT_FALSE(value) << c.typed;
            EXPECT_EQ(value.error().code(), c.why) << c.typed;
            EXPECT_TRUE(desk.edit->problem()) << c.typed;
        }
    }
}

TEST(TensionEditTest, ASignChangesWhatStoodThere) {
    Desk<TensionEdit> desk;
    desk.edit->setValue(lb("54"));
    desk.typed("-2 lb");
    EXPECT_EQ(desk.edit->readable(), lb("52"));
    EXPECT_EQ(desk.edit->text(), QStringLiteral("-2 lb")) << "typing is never rewritten under somebody's hands";
    desk.leave();
    EXPECT_EQ(desk.edit->text(), QStringLiteral("52 lb"));
    desk.typed("-2");
    desk.leave();
    EXPECT_EQ(desk.edit->readable(), lb("50")) << "the next change starts from what stands there now";
}

TEST(TensionEditTest, TheUnitOfTheOldValueIsTheUnitOfABareNumber) {
    Desk<TensionEdit> desk;
    desk.edit->setValue(*Tension::tryParse("23.5 kg", TensionUnit::Pound));
    desk.typed("24");
    EXPECT_EQ(desk.edit->value()->text(), "24 kg");
}

TEST(TensionEditTest, SaysWhenSomebodyTypesAndNotWhenItIsFilled) {
    Desk<TensionEdit> desk;
    int changes = 0;
    QObject::connect(desk.edit, &ValueEdit::valueChanged, [&] { ++changes; });
    desk.edit->setValue(lb("54"));
    EXPECT_EQ(changes, 0);
    desk.typed("50");
    EXPECT_EQ(changes, 2);
}

TEST(TensionEditTest, WhatCannotBeReadStaysAsItWasTyped) {
    Desk<TensionEdit> desk;
    desk.typed("abc");
    desk.leave();
    EXPECT_EQ(desk.edit->text(), QStringLiteral("abc"));
}

TEST(LengthEditTest, ReadsUnitsAndRefusesWhatIsNoLength) {
    Desk<LengthEdit> desk;
    const struct {
        const char* typed;
        std::int64_t mm; ///< -1: none
    } cases[] = {{"11.2", 11200}, {"11,2 m", 11200}, {"1120 cm", 11200}, {"40 ft", 12192},
                 {"0", -1},       {"-3", -1},        {"long", -1},       {"99999 m", -1}};
    for (const auto& c : cases) {
        desk.typed(c.typed);
        const auto length = desk.edit->readable();
        EXPECT_EQ(length ? length->millimetres() : -1, c.mm) << c.typed;
    }
    desk.edit->setMayBeZero(true);
    desk.typed("0");
    EXPECT_TRUE(desk.edit->readable());
}

TEST(LengthEditTest, BlankIsMissingUnlessItMayBe) {
    Desk<LengthEdit> desk;
    ASSERT_TRUE(desk.edit->problem());
    EXPECT_EQ(desk.edit->problem()->code(), Code::Missing);
    desk.edit->setMayBeBlank(true);
    EXPECT_FALSE(desk.edit->problem());
}

TEST(MoneyEditTest, TakesTheSignItWritesItself) {
    Desk<MoneyEdit> desk(Currency::pounds());
    desk.typed("14,5");
    desk.leave();
    EXPECT_EQ(desk.edit->text(), QStringLiteral("£14.50"));
    EXPECT_EQ(desk.edit->readable()->minor(), 1450);
    desk.typed("30.001");
    EXPECT_EQ(desk.edit->problem()->code(), Code::TooFine);
    desk.typed("-5");
    EXPECT_TRUE(desk.edit->problem());
}

TEST(MoneyEditTest, ReadsBackWhatItWroteInEveryLocale) {
    const struct {
        QLocale locale;
        const char* written;
    } cases[] = {{QLocale(QLocale::English, QLocale::UnitedKingdom), "£1234.50"},
                 {QLocale(QLocale::German, QLocale::Germany), "1234,50\u00a0£"},
                 {QLocale(QLocale::German, QLocale::Switzerland), nullptr},
                 {QLocale(QLocale::French, QLocale::France), nullptr},
                 {QLocale(QLocale::English, QLocale::India), nullptr},
                 {QLocale::c(), "£1234.50"}};
    const QLocale before;
    for (const auto& c : cases) {
        QLocale::setDefault(c.locale);
        for (const std::int64_t minor : {123'450, 1'000'000'000, 99'999}) {
            for (const Currency currency :
                 {Currency::pounds(), *Currency::fromCode("EUR"), *Currency::fromCode("USD")}) {
                Desk<MoneyEdit> desk(currency);
                desk.edit->setValue(Money::fromMinor(minor, currency));
                ASSERT_TRUE(desk.edit->readable()) << desk.edit->text().toStdString();
                EXPECT_EQ(desk.edit->readable()->minor(), minor) << desk.edit->text().toStdString();
            }
        }
        if (c.written != nullptr) {
            Desk<MoneyEdit> desk(Currency::pounds());
            desk.typed("£1234.50");
            desk.leave();
            EXPECT_EQ(desk.edit->text(), QString::fromUtf8(c.written));
            EXPECT_EQ(desk.edit->readable()->minor(), 123'450);
        }
    }
    QLocale::setDefault(before);
}

TEST(PatternEditTest, ReadsTwoNumbersHoweverTheyAreParted) {
    Desk<PatternEdit> desk;
    for (const char* typed : {"16x19", "16 × 19", "16/19", "16 19", "16X19"}) {
        desk.typed(typed);
        ASSERT_TRUE(desk.edit->value()) << typed;
        EXPECT_EQ(desk.edit->value()->mains, 16);
        EXPECT_EQ(desk.edit->value()->crosses, 19);
    }
    for (const char* typed : {"16", "16x", "x19", "16x19x3", "16-19", "sixteen", "3x19", "16x99", "16x999999999999"}) {
        desk.typed(typed);
        EXPECT_FALSE(desk.edit->value()) << typed;
    }
}

TEST(ThicknessEditTest, IsInMillimetres) {
    Desk<ThicknessEdit> desk;
    desk.typed("1,25");
    EXPECT_EQ(*desk.edit->micrometres(), 1250);
    desk.leave();
    EXPECT_EQ(desk.edit->text(), QStringLiteral("1.25 mm"));
    desk.typed("17");
    EXPECT_EQ(desk.edit->problem()->code(), Code::OutOfRange);
    desk.typed("1.25 in");
    EXPECT_TRUE(desk.edit->problem());
}

TEST(WeightEditTest, IsInGramsAMetre) {
    Desk<WeightEdit> desk;
    desk.edit->setMayBeBlank(true);
    EXPECT_FALSE(desk.edit->problem());
    EXPECT_FALSE(desk.edit->readable());
    desk.typed("1,65");
    EXPECT_EQ(desk.edit->readable(), 1650);
    desk.leave();
    EXPECT_EQ(desk.edit->text(), QStringLiteral("1.65 g/m"));
    EXPECT_EQ(desk.edit->readable(), 1650);
    desk.typed("-1");
    EXPECT_TRUE(desk.edit->problem());
    desk.typed("1.65 oz");
    EXPECT_TRUE(desk.edit->problem());
    desk.typed("1.6505");
    EXPECT_EQ(desk.edit->problem()->code(), Code::TooFine);
}

TEST(EveryEditor, SaysTooLongAndLosesNothingHoweverMuchIsPasted) {
    Desk<TensionEdit> desk;
    const QString pasted = QStringLiteral("52") + QString(250, QLatin1Char(' ')) + QStringLiteral("lb");
    desk.edit->setText(pasted);
    ASSERT_TRUE(desk.edit->problem());
    EXPECT_EQ(desk.edit->problem()->code(), Code::TooLong);
    EXPECT_EQ(desk.edit->problem()->text("what"), "tension");
    EXPECT_EQ(desk.edit->problem()->number("most"), 200);
    desk.leave();
    EXPECT_EQ(desk.edit->text(), pasted);
    desk.edit->setText(QString(10'000, QLatin1Char('7')));
    EXPECT_EQ(desk.edit->text().size(), 10'000);
    desk.edit->setText(QString::fromUtf8("\xF0\x9F\x8E\xBE \xD7\xA9\xD7\x9C\xD7\x95\xD7\x9D"));
    EXPECT_TRUE(desk.edit->problem());
}

} // namespace
} // namespace rw::ui::test
