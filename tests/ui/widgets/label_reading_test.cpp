// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/label_reading.h"

#include <QAccessible>
#include <QLabel>
#include <QLineEdit>

#include <gtest/gtest.h>

namespace rw::ui::test {
namespace {

QString said(QWidget& widget, QAccessible::Text what) {
    return QAccessible::queryAccessibleInterface(&widget)->text(what);
}

// The look that every program of ours puts on lets labels be read; widget_main.cpp puts it on here.
TEST(LabelReading, ANamedLabelSaysWhatStandsInIt) {
    QLabel price(QStringLiteral("£31.50"));
    price.setAccessibleName(QStringLiteral("Price"));
    EXPECT_EQ(said(price, QAccessible::Name), QStringLiteral("Price"));
    EXPECT_EQ(said(price, QAccessible::Description), QStringLiteral("£31.50"));
    price.setText(QStringLiteral("£12.00"));
    EXPECT_EQ(said(price, QAccessible::Description), QStringLiteral("£12.00"));
}

TEST(LabelReading, WhatSomebodyWroteForItComesFirst) {
    QLabel head;
    head.setAccessibleName(QStringLiteral("The head"));
    head.setAccessibleDescription(QStringLiteral("16 mains and 19 crosses"));
    EXPECT_EQ(said(head, QAccessible::Description), QStringLiteral("16 mains and 19 crosses"));
}

TEST(LabelReading, ALabelWithoutANameIsItsOwnName) {
    QLabel heading(QStringLiteral("The rack"));
    EXPECT_EQ(said(heading, QAccessible::Name), QStringLiteral("The rack"));
    EXPECT_EQ(said(heading, QAccessible::Description), QString());
}

TEST(LabelReading, ALabelNamesItsFieldWithoutTheSignOfItsKey) {
    QWidget sheet;
    QLabel label(QStringLiteral("&Person"), &sheet);
    QLineEdit line(&sheet);
    label.setBuddy(&line);
    EXPECT_EQ(said(label, QAccessible::Name), QStringLiteral("Person"));
    EXPECT_EQ(said(line, QAccessible::Name), QStringLiteral("Person"));
    const auto relations =
        QAccessible::queryAccessibleInterface(&label)->relations(QAccessible::Relation(QAccessible::Labelled));
    ASSERT_EQ(relations.size(), 1);
    EXPECT_EQ(relations.front().first->object(), &line);
}

} // namespace
} // namespace rw::ui::test
