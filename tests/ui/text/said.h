// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRegularExpression>
#include <QString>

#include <gtest/gtest.h>

#include <string>

/// What a sentence for people must never carry: a gap, a number that was not put in, a code's own name.
inline void expectWholeSentence(const QString& sentence) {
    SCOPED_TRACE(sentence.toStdString());
    EXPECT_FALSE(sentence.isEmpty());
    EXPECT_FALSE(sentence.contains(QRegularExpression(QStringLiteral("%L?[0-9]"))));
    EXPECT_FALSE(sentence.contains(QStringLiteral("  ")));
    EXPECT_FALSE(sentence.contains(QStringLiteral(" ,")));
    EXPECT_FALSE(sentence.contains(QStringLiteral(" .")));
    EXPECT_FALSE(sentence.contains(QStringLiteral("..")));
    EXPECT_FALSE(sentence.contains(QLatin1Char('\n')));
    EXPECT_TRUE(sentence.endsWith(QLatin1Char('.')) || sentence.endsWith(QLatin1Char(')')));
}

inline std::string said(const QString& text) { return text.toStdString(); }
