// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/words.h"

#include "tests/ui/text/said.h"

#include <gtest/gtest.h>

#include <set>

namespace rw::ui {
namespace {

/// Every value of an enumeration up to `last` has a word of its own.
template<class Enum, class Word>
void expectWords(Enum last, Word word) {
    std::set<std::string> seen;
    for (int i = 0; i <= static_cast<int>(last); ++i) {
        const std::string text = said(word(static_cast<Enum>(i)));
        EXPECT_FALSE(text.empty()) << i;
        EXPECT_TRUE(seen.insert(text).second) << text;
    }
}

TEST(Words, EveryValueHasItsOwn) {
    expectWords(Sport::Badminton, sportWord);
    expectWords(Side::Right, sideWord);
    expectWords(HoopEnd::Throat, hoopEndWord);
    expectWords(Material::Aramid, materialWord);
    expectWords(PieceRole::Whole, pieceWord);
    expectWords(Method::OnePiece, methodWord);
    expectWords(JobState::Withdrawn, jobStateWord);
    expectWords(JobEventKind::Withdrawn, jobEventWord);
    expectWords(LotKind::Remnant, lotKindWord);
    expectWords(PieceSource::CustomersSet, sourceWord);
    expectWords(MovementReason::ThrownAway, movementWord);
    expectWords(LostReason::Other, lostReasonWord);
    expectWords(ChargeKind::Tax, [](ChargeKind kind) {
        return chargeWord({.kind = kind, .article = {}, .label = {}, .amount = Money::zero(Currency::pounds())});
    });
}

TEST(Words, ExtrasCarryTheirCount) {
    Charge tubes{.kind = ChargeKind::Extra,
                 .article = {},
                 .label = "grommet tube",
                 .count = 3,
                 .amount = Money::fromMinor(150, Currency::pounds())};
    EXPECT_EQ(said(chargeWord(tubes)), "grommet tube × 3");
    tubes.count = 1;
    EXPECT_EQ(said(chargeWord(tubes)), "grommet tube");
}

TEST(Words, ARacketIsItsFrameAndTheMarkThatTellsItFromItsTwin) {
    EXPECT_EQ(said(racketName("Aldermoor 98", "A")), "Aldermoor 98 A");
    EXPECT_EQ(said(racketName("Aldermoor 98", "")), "Aldermoor 98");
}

TEST(Words, AStringIsItsNameAndItsColourWhenItHasOne) {
    StringArticle article;
    article.name = "Larkspun 130";
    EXPECT_EQ(said(stringName(article)), "Larkspun 130");
    article.colour = "natural";
    EXPECT_EQ(said(stringName(article)), "Larkspun 130, natural");
}

TEST(Words, APatternIsOneSentence) {
    Pattern pattern;
    EXPECT_EQ(said(patternText(pattern)), "16 × 19");
    pattern.mainsStart = HoopEnd::Throat;
    EXPECT_EQ(said(patternText(pattern)), "16 × 19, mains start at the throat");
}

} // namespace
} // namespace rw::ui
