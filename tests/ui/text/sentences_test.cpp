// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/sentences.h"

#include "core/base/world_error.h"
#include "core/money/money.h"
#include "core/units/length.h"
#include "core/units/tension.h"
#include "tests/ui/text/said.h"

#include <QLocale>

#include <gtest/gtest.h>

namespace rw::ui {
namespace {

const QLocale kEnglish(QLocale::English, QLocale::UnitedKingdom);
const QLocale kGerman(QLocale::German, QLocale::Germany);

struct Case {
    Code code;
    std::vector<Argument> arguments;
    const char* sentence;
};

std::int64_t mm(std::int64_t value) { return value; }

// One row a code, in the order of the enumeration.
const std::vector<Case> kCases = {
    {Code::Unreadable,
     {{"what", "tension"}, {"text", "abc"}},
     "“abc” cannot be read as a tension; write it as 52, 52.5 lb or 23.5 kg."},
    {Code::OutOfRange,
     {{"what", "tension"}, {"text", "5000 lb"}, {"lowest", "4 lb"}, {"highest", "100 lb"}},
     "“5000 lb” is no possible value for a tension: it must be between 4 lb and 100 lb."},
    {Code::TooFine,
     {{"what", "money"}, {"text", "14.505"}},
     "“14.505” has more decimals than are kept for an amount of money."},
    {Code::NothingToChange,
     {{"what", "tension"}, {"text", "-3"}},
     "“-3” is a change, and there is no earlier tension to change: write the whole value."},
    {Code::Missing, {{"what", "name"}}, "The name is missing."},
    {Code::TooLong,
     {{"what", "name"}, {"length", mm(10000)}, {"most", mm(200)}},
     "The name is too long: 10000 characters, and at most 200 are kept."},
    {Code::UnknownKey, {{"key", "sprot"}, {"known", "sport, hoop"}}, "“sprot” is not known here; known: sport, hoop."},
    {Code::WrongType, {{"key", "hoop.lengthMm"}, {"expected", "a number"}}, "hoop.lengthMm must be a number."},
    {Code::ImpossibleValue,
     {{"key", "pattern.mains"}, {"text", "3"}, {"expected", "6 to 30"}},
     "pattern.mains cannot be “3”: it must be 6 to 30."},
    {Code::RouteDoesNotFit,
     {{"route", "plain-1"}, {"reason", "8 mains a side from the throat finish at the throat"}, {"fits", "two pieces"}},
     "The route “plain-1” does not fit: 8 mains a side from the throat finish at the throat; what fits: two pieces."},
    {Code::RouteUnknown,
     {{"route", "loop"}, {"known", "plain-0, plain-1"}},
     "The route “loop” is not known; known routes: plain-0, plain-1."},
    {Code::StartEndUnknown,
     {{"route", "plain-1"}},
     "The route “plain-1” needs to know where the mains of this frame start, at the head or at the throat."},
    {Code::NotEnoughString,
     {{"lot", "K-2"}, {"lengthMm", mm(6350)}, {"wantedMm", mm(6400)}},
     "Lot “K-2” has 6.35 m, and 6.4 m are wanted: 0.05 m too little."},
    {Code::NoLot, {{"string", "K"}}, "There is no reel with enough of K; choose another string or receive one."},
    {Code::WrongLot,
     {{"lot", "L-3"}, {"string", "K"}},
     "Lot “L-3” cannot be used for K: it holds another string or belongs to somebody else."},
    {Code::LotClosed, {{"lot", "K-2"}}, "Lot “K-2” is closed; nothing can be cut from it."},
    {Code::MeasureFirst,
     {{"lot", "K-2"}, {"lengthMm", mm(6400)}, {"wantedMm", mm(6500)}},
     "Lot “K-2” has 6.4 m by the book and 6.5 m are wanted: measure what is left and enter it."},
    {Code::WrongState,
     {{"job", mm(2120)}, {"state", "collected"}, {"wanted", "logged, waiting, on-the-machine"}},
     "Job 2120 is collected; for this it must be logged, waiting or on the machine."},
    {Code::AlreadyCut,
     {{"job", mm(2120)}, {"piece", "mains"}, {"attempt", mm(1)}, {"lengthMm", mm(6200)}, {"lot", "K-2"}},
     "Job 2120: the mains were cut before, 6.2 m off “K-2”; nothing was changed."},
    {Code::NotCut, {{"job", mm(2120)}, {"piece", "crosses"}}, "Job 2120: the crosses are not cut yet."},
    {Code::StaleAttempt,
     {{"job", mm(2120)}, {"piece", "mains"}, {"attempt", mm(1)}},
     "Job 2120: the mains have moved on to another length since this card was opened; open it again."},
    {Code::RacketStillHere,
     {{"jobs", "2120, 2133"}, {"lots", "KT-1"}},
     "Something of theirs is still in the shop (job 2120, 2133; string KT-1): hand it over first."},
    {Code::ChangedMeanwhile,
     {{"what", "name"}, {"mine", "Petra"}, {"theirs", "Petra L."}},
     "Somebody else changed the name meanwhile: it is “Petra L.” now, yours says “Petra”; choose one."},
    {Code::NotFound, {{"what", "job"}, {"text", "99"}}, "There is no job “99”."},
    {Code::CurrencyMismatch,
     {{"left", "GBP"}, {"right", "EUR"}},
     "GBP and EUR are two currencies and cannot be put on one bill."},
    {Code::LedgerForeign,
     {{"ledger", "notes.txt"}, {"reason", "it is a text file"}},
     "notes.txt is not a ledger of this program and was not touched: it is a text file."},
    {Code::LedgerNewer,
     {{"ledger", "shop.ledger"}, {"found", mm(7)}, {"known", mm(3)}},
     "shop.ledger was written by a newer version: it has schema 7 and this program knows 3; it was not touched."},
    {Code::LedgerDamaged,
     {{"ledger", "shop.ledger"}, {"reason", "page 4 is malformed"}},
     "shop.ledger is damaged and was not touched: page 4 is malformed."},
    {Code::LedgerUnreachable,
     {{"ledger", "/srv"}, {"reason", "it is a directory"}},
     "/srv cannot be opened: it is a directory."},
    {Code::LedgerNotWritable,
     {{"ledger", "shop.ledger"}, {"reason", "permission denied"}},
     "shop.ledger cannot be written to by this user: permission denied."},
    {Code::LedgerEncoding,
     {{"ledger", "postgresql:///shop"}, {"found", "SQL_ASCII"}},
     "postgresql:///shop keeps its text as SQL_ASCII, and a ledger needs UTF-8; it was not touched."},
    {Code::LedgerOnNetwork,
     {{"ledger", "/mnt/shop.ledger"}, {"filesystem", "nfs"}},
     "/mnt/shop.ledger is on a network share (nfs), where a ledger file is not safe; keep it on a local disk or use "
     "a PostgreSQL ledger."},
    {Code::FileUnreadable, {{"file", "in.json"}, {"reason", "no such file"}}, "in.json cannot be read: no such file."},
    {Code::FileUnwritable,
     {{"file", "/root/x.pdf"}, {"reason", "permission denied"}},
     "/root/x.pdf cannot be written: permission denied."},
};

TEST(Sentences, EveryCodeHasItsOwn) {
    for (const Case& c : kCases) {
        EXPECT_EQ(said(sentenceFor(Refusal(c.code, c.arguments), kEnglish)), c.sentence);
    }
}

TEST(Sentences, AMissingPriceSaysOfWhat) {
    const auto missing = [](std::vector<Argument> arguments) {
        arguments.push_back({"what", "price"});
        return said(sentenceFor(Refusal(Code::Missing, std::move(arguments)), kEnglish));
    };
    EXPECT_EQ(missing({{"kind", "half-bed"}, {"string", "Larkspun 130"}}),
              "Today's list has no price for half a bed of “Larkspun 130”; E in the Stockroom sets it.");
    EXPECT_EQ(missing({{"kind", "packet"}, {"string", "Larkspun 130"}}),
              "Today's list has no price for a packet of “Larkspun 130”.");
    EXPECT_EQ(missing({{"kind", "rush"}}), "Today's list has no price for rush.");
    EXPECT_EQ(missing({{"kind", "extra"}, {"label", "grommet tube"}}), "Today's list has no price for “grommet tube”.");
}

TEST(Sentences, RoutesSayWhyTheyDoNotFit) {
    const auto why = [](std::vector<Argument> arguments) {
        return said(sentenceFor(Refusal(Code::RouteDoesNotFit, std::move(arguments)), kEnglish));
    };
    EXPECT_EQ(why({{"route", "plain-2"},
                   {"reason", "mains-finish-at-throat"},
                   {"fits", "two-piece, wrap-first-2, throat-up-0"},
                   {"mainsASide", mm(8)},
                   {"mainsStart", "throat"},
                   {"mainsFinish", "throat"}}),
              "The route “plain-2” does not fit: 8 mains a side from the throat finish at the throat; what fits: "
              "two-piece, wrap-first-2, throat-up-0. Crosses from the throat only where this frame's maker allows it.");
    EXPECT_EQ(why({{"route", "plain-2"}, {"reason", "odd-mains"}, {"fits", "two-piece, plain-0"}}),
              "The route “plain-2” does not fit: with a centre main the two sides finish at opposite ends; what fits: "
              "two-piece, plain-0.");
}

TEST(Sentences, TheTableLeavesNoCodeOut) {
    // The last code by hand: a code added behind it needs a row here and moves this line.
    ASSERT_EQ(kCases.size(), static_cast<std::size_t>(Code::FileUnwritable) + 1);
    for (std::size_t i = 0; i < kCases.size(); ++i) {
        EXPECT_EQ(static_cast<std::size_t>(kCases[i].code), i);
    }
}

TEST(Sentences, StayWholeWithoutTheirArguments) {
    for (const Case& c : kCases) {
        expectWholeSentence(sentenceFor(Refusal(c.code, c.arguments), kEnglish));
        expectWholeSentence(sentenceFor(Refusal(c.code), kEnglish));
    }
}

TEST(Sentences, LengthsFollowTheLocale) {
    const Refusal refusal(Code::NotEnoughString, {{"lot", "K-2"}, {"lengthMm", mm(6350)}, {"wantedMm", mm(6400)}});
    EXPECT_EQ(said(sentenceFor(refusal, kGerman)), "Lot “K-2” has 6,35 m, and 6,4 m are wanted: 0,05 m too little.");
}

TEST(Sentences, AJobThatWasLoggedWithAnotherWishIsNamed) {
    const Refusal other(Code::ChangedMeanwhile, {{"what", "job"}, {"job", std::int64_t{2120}}});
    EXPECT_EQ(said(sentenceFor(other, kEnglish)),
              "Job 2120 was logged from this sheet before, with another wish, and was not changed. Begin a new sheet "
              "(Ctrl+N), and withdraw the one that does not count.");
}

TEST(Sentences, WhatAFormAddedBeforeIsNamed) {
    const Refusal other(Code::ChangedMeanwhile, {{"what", "customer"}, {"added", "Zoe Marchbanks"}});
    EXPECT_EQ(said(sentenceFor(other, kEnglish)), "This form added the customer “Zoe Marchbanks” before, with other "
                                                  "words, and did not change it; look for it by its name.");
}

TEST(Sentences, APatternTypedWrongIsShownOne) {
    const Refusal typed(Code::Unreadable, {{"what", "pattern"}, {"text", "16-19"}});
    EXPECT_EQ(said(sentenceFor(typed, kEnglish)),
              "“16-19” cannot be read as a pattern; write mains and crosses as 16 x 19.");
}

TEST(Sentences, WhatIsGivenTwiceOrNotEmptyIsSaidPlainly) {
    const Refusal twice(Code::ImpossibleValue, {{"key", "hoop"}, {"text", "given twice"}, {"expected", "given once"}});
    EXPECT_EQ(said(sentenceFor(twice, kEnglish)), "hoop is given twice; it is needed once.");
    const Refusal full(Code::ImpossibleValue,
                       {{"key", "ledger"}, {"text", "not empty"}, {"expected", "a ledger with nothing in it"}});
    EXPECT_EQ(said(sentenceFor(full, kEnglish)), "The ledger is not empty; a ledger with nothing in it is needed.");
}

TEST(Sentences, ASingleStringIsNotMany) {
    const std::vector<Argument> whole = {{"job", mm(2120)}, {"piece", "whole"}};
    EXPECT_EQ(said(sentenceFor(Refusal(Code::NotCut, whole), kEnglish)), "Job 2120: the string is not cut yet.");
    EXPECT_EQ(said(sentenceFor(Refusal(Code::AlreadyCut, whole), kEnglish)),
              "Job 2120: the string was cut before; nothing was changed.");
    EXPECT_EQ(said(sentenceFor(Refusal(Code::StaleAttempt, whole), kEnglish)),
              "Job 2120: the string has moved on to another length since this card was opened; open it again.");
}

TEST(Sentences, RepeatWhatWasTypedAndNothingElse) {
    // Text that looks like a gap of the sentence, and text that would turn the line around.
    EXPECT_EQ(said(sentenceFor(Refusal(Code::Unreadable, {{"what", "length"}, {"text", "%1 %2"}}), kEnglish)),
              "“%1 %2” cannot be read as a length; write it as 11.2, 11.2 m or 1120 cm.");
    EXPECT_EQ(said(quoted(QString::fromUtf8("a\u202Eb\nc"))), "“a b c”");
    EXPECT_EQ(quoted(QString(10000, QLatin1Char('x'))).size(), 62);
    // A character of two halves at the edge is kept whole or not at all.
    const QString smile = QString::fromUtf8("😀");
    const QString cut = quoted(QString(58, QLatin1Char('x')) + smile + smile);
    EXPECT_FALSE(cut.contains(smile.at(0)));
    EXPECT_TRUE(cut.endsWith(QStringLiteral("x…”")));
}

TEST(Sentences, ForRefusalsAsTheParsersMakeThem) {
    expectWholeSentence(sentenceFor(Tension::tryParse("abc", TensionUnit::Pound).error(), kEnglish));
    expectWholeSentence(sentenceFor(Tension::tryParse("5000 lb", TensionUnit::Pound).error(), kEnglish));
    expectWholeSentence(sentenceFor(Tension::tryParse("-3", TensionUnit::Pound).error(), kEnglish));
    expectWholeSentence(sentenceFor(Tension::tryParse("", TensionUnit::Pound).error(), kEnglish));
    expectWholeSentence(sentenceFor(Length::tryParse("12 furlongs").error(), kEnglish));
    expectWholeSentence(sentenceFor(Money::tryParse("1.2345", Currency::pounds()).error(), kEnglish));
}

template<class Error, class... Arguments>
QString worldSentence(Arguments... arguments) {
    return sentenceFor(std::make_exception_ptr(Error(arguments...)));
}

TEST(Sentences, EveryKindOfBrokenWorldHasItsOwn) {
    const std::vector<QString> sentences = {worldSentence<LedgerFull>("disk I/O error"),
                                            worldSentence<LedgerLost>("server closed the connection"),
                                            worldSentence<LedgerCorrupt>("malformed"),
                                            worldSentence<LedgerReadOnly>("read-only"),
                                            worldSentence<LedgerBusy>("locked"),
                                            worldSentence<LedgerGuard>("lot K-2 below zero"),
                                            worldSentence<FileLost>("card.pdf: No space left on device"),
                                            worldSentence<Cancelled>(),
                                            worldSentence<std::bad_alloc>(),
                                            worldSentence<std::runtime_error>("odd."),
                                            sentenceFor(std::make_exception_ptr(7))};
    for (const QString& sentence : sentences) {
        expectWholeSentence(sentence);
    }
    EXPECT_EQ(said(sentences[5]),
              "The ledger refused this to keep its books right; nothing of it was kept. (lot K-2 below zero)");
    for (std::size_t i = 0; i < sentences.size(); ++i) {
        for (std::size_t j = i + 1; j < sentences.size(); ++j) {
            EXPECT_NE(said(sentences[i]), said(sentences[j]));
        }
    }
}

} // namespace
} // namespace rw::ui
