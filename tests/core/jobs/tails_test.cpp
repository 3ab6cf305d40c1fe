// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/jobs/tails.h"

#include <gmock/gmock.h>

namespace rw {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

constexpr Length mm(std::int64_t length) { return Length::fromMillimetres(length); }
constexpr Length kHead = mm(340);

std::vector<TailsOf> read(std::string_view text, Method method) {
    const auto tails = tailsFromText(text, method, kHead);
    EXPECT_TRUE(tails.has_value()) << text;
    return tails.value_or(std::vector<TailsOf>());
}
std::string refused(std::string_view text, Method method) {
    const auto tails = tailsFromText(text, method, kHead);
    EXPECT_FALSE(tails.has_value()) << text;
    return tails ? "" : std::string(tails.error().text("expected"));
}
TailsOf mains(Tails tails) { return {PieceRole::Mains, false, tails}; }
TailsOf crosses(Tails tails) { return {PieceRole::Crosses, false, tails}; }

TEST(Tails, TwoPiecesEachHaveTheirOwn) {
    const auto both = ElementsAre(mains(Tails::measured(mm(380))), crosses(Tails::measured(mm(255))));
    for (const std::string_view text : {"38 / 25.5", "38/25,5", "380 mm / 0.255 m", " 38 cm /25.5 "}) {
        EXPECT_THAT(read(text, Method::TwoPiece), both) << text;
    }
    EXPECT_THAT(read("38 / -", Method::TwoPiece), ElementsAre(mains(Tails::measured(mm(380)))));
    EXPECT_THAT(read("enough / 25", Method::TwoPiece), ElementsAre(crosses(Tails::measured(mm(250)))));
    EXPECT_THAT(read("/ 0", Method::TwoPiece), ElementsAre(crosses(Tails::measured(mm(0)))));
}

TEST(Tails, NothingSaidIsNothingTold) {
    for (const std::string_view text : {"", "-", "enough", "- / -", " / "}) {
        EXPECT_THAT(read(text, Method::TwoPiece), IsEmpty()) << text;
        EXPECT_THAT(read(text, Method::OnePiece), IsEmpty()) << text;
    }
}

TEST(Tails, WordsLieSomewhereAroundTheirMeasure) {
    EXPECT_THAT(read("a hand / two hands", Method::TwoPiece),
                ElementsAre(mains({mm(90), mm(270)}), crosses({mm(270), mm(450)})));
    EXPECT_THAT(read("Head length / more", Method::TwoPiece),
                ElementsAre(mains({mm(170), mm(510)}), crosses({mm(510), mm(1360)})));
    EXPECT_FALSE(read("hand / -", Method::TwoPiece).front().tails.isMeasured());
    EXPECT_TRUE(read("18 / -", Method::TwoPiece).front().tails.isMeasured());
}

TEST(Tails, OnePieceHasTwoSidesOrOneSum) {
    const TailsOf shortSide{PieceRole::Whole, true, Tails::measured(mm(300))};
    EXPECT_THAT(read("30 / 45", Method::OnePiece),
                ElementsAre(shortSide, TailsOf{PieceRole::Whole, false, Tails::measured(mm(750))}));
    EXPECT_THAT(read("30 / -", Method::OnePiece), ElementsAre(shortSide));
    EXPECT_THAT(read("75", Method::OnePiece), ElementsAre(TailsOf{PieceRole::Whole, false, Tails::measured(mm(750))}));
    EXPECT_THAT(read("30 / a hand", Method::OnePiece),
                ElementsAre(shortSide, TailsOf{PieceRole::Whole, false, {mm(390), mm(570)}}));
}

TEST(Tails, WhatCannotBeToldApartIsSentBack) {
    EXPECT_THAT(refused("38", Method::TwoPiece), testing::HasSubstr("the crosses'"));
    EXPECT_THAT(refused("- / 45", Method::OnePiece), testing::HasSubstr("short side"));
    EXPECT_THAT(refused("1 / 2 / 3", Method::TwoPiece), testing::HasSubstr("at most two"));
    for (const std::string_view text : {"long / 3", "-4 / 3", "38 miles / 3", "3 8 / 3"}) {
        EXPECT_THAT(refused(text, Method::TwoPiece), testing::HasSubstr("cm, a hand")) << text;
    }
}

} // namespace
} // namespace rw
