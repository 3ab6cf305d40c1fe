// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/cli.h"
#include "tests/app/demo_ledger.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

// A reel on the scale from the shell. The demo shop's K-7 holds 60 m of the 138.4 m it came with; its spool is taken to
// weigh 150 g and the reel when new 385 g.
namespace rw::cli::test {
namespace {

using testing::HasSubstr;

class WeighCommand : public sql::test::OnEngine {
protected:
    void SetUp() override {
        standIn(demoLedger().copy(GetParam()));
        m_ledger = QString::fromStdString(place().address());
    }
    QStringList words(const char* gross, const QStringList& more) {
        return QStringList{QStringLiteral("weigh"),   QStringLiteral("--ledger"), m_ledger,
                           QStringLiteral("--lot"),   QStringLiteral("k-7"),      QStringLiteral("--gross"),
                           QString::fromLatin1(gross)} +
               more;
    }
    QJsonObject json(const char* gross, const QStringList& more) {
        const Outcome run = cli(words(gross, more + QStringList{QStringLiteral("--json")}));
        EXPECT_EQ(run.code, 0) << run.err;
        return QJsonDocument::fromJson(QByteArray::fromStdString(run.out)).object();
    }
    QString m_ledger;
    const QStringList m_spool{QStringLiteral("--empty"), QStringLiteral("150"), QStringLiteral("--new"),
                              QStringLiteral("385")};
};
ON_BOTH_ENGINES(WeighCommand);

TEST_P(WeighCommand, TellsTheLengthBesideTheBookAndWritesNothing) {
    const Outcome told = cli(words("233", m_spool));
    EXPECT_EQ(told.code, 0) << told.err;
    EXPECT_THAT(told.out, HasSubstr("K-7 Kestrelline 125: 233 g"));
    EXPECT_THAT(told.out, HasSubstr("by the scale  48.9 m ± "));
    EXPECT_THAT(told.out, HasSubstr("by the book   60.0 m ± "));
    EXPECT_THAT(told.out, HasSubstr("It may be: a job that nobody booked;"));
    EXPECT_THAT(told.out, HasSubstr("not whether this end does one more cross"));
    EXPECT_THAT(refusalOf(words("233", {})), HasSubstr("empty spool")) << "nothing of it was kept";
}

TEST_P(WeighCommand, KeepsTheWeightsAndBooksWhenAsked) {
    EXPECT_FALSE(json("252", m_spool + QStringList{QStringLiteral("--keep")})[QStringLiteral("finding")].toBool());
    const QJsonObject booked = json("233", {QStringLiteral("--book")});
    EXPECT_TRUE(booked[QStringLiteral("finding")].toBool());
    EXPECT_EQ(booked[QStringLiteral("unbookedJobs")].toInt(), 1);
    EXPECT_EQ(booked[QStringLiteral("basis")].toString().toStdString(), "new");
    EXPECT_TRUE(booked[QStringLiteral("booked")].toBool());
    const int weighed = booked[QStringLiteral("weighed")].toObject()[QStringLiteral("lengthMm")].toInt();
    EXPECT_EQ(booked[QStringLiteral("leftMm")].toInt(), weighed);
    EXPECT_EQ(json("233", {})[QStringLiteral("book")].toObject()[QStringLiteral("lengthMm")].toInt(), weighed);
    EXPECT_EQ(cli({QStringLiteral("check"), QStringLiteral("--ledger"), m_ledger}).code, 0);
}

TEST_P(WeighCommand, WhatCannotBeIsRefused) {
    EXPECT_THAT(refusalOf(words("149", m_spool)), HasSubstr("more than the empty spool's 150 g"));
    EXPECT_THAT(refusalOf(words("heavy", m_spool)), HasSubstr("weight"));
    EXPECT_THAT(refusalOf(words("252", m_spool + QStringList{QStringLiteral("--book"), QStringLiteral("--by"),
                                                             QStringLiteral("Nobody")})),
                HasSubstr("Nobody"));
}

} // namespace
} // namespace rw::cli::test
