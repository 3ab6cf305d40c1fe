// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stock/weighing.h"

#include "core/stock/book_uncertainty.h"

#include <gtest/gtest.h>

#include <cmath>

namespace rw::stock {
namespace {

constexpr Length kPerJob = Length::fromMillimetres(11'000);

// stock-checks.csv, weigh1: GUM eq. 10; a Monte Carlo agrees. A scale of 2 g reads with 0.58 g.
TEST(Weighing, AgainstTheNewReelIsAsInTheChecks) {
    const auto left = lengthAgainstNew({{236, 0.58}, {150, 1}}, {{200'000, 1'000}, {490, 0.58}});
    ASSERT_TRUE(left);
    EXPECT_NEAR(left->value / 1'000, 50.588235, 1e-5);
    EXPECT_NEAR(left->sd / 1'000, 0.617204, 1e-5);
    EXPECT_NEAR(scaleSdG(2), 0.57735, 1e-5);
}

// stock-checks.csv, weigh2: GUM eq. 10.
TEST(Weighing, ByGramsPerMetreIsAsInTheChecks) {
    const auto left = lengthByWeight({{236, 0.58}, {150, 1}}, {1.70, 1.70 * 0.02});
    ASSERT_TRUE(left);
    EXPECT_NEAR(left->value / 1'000, 50.588235, 1e-5);
    EXPECT_NEAR(left->sd / 1'000, 1.219053, 1e-5);
}

TEST(Weighing, BelowTheEmptySpoolIsRefused) {
    const Weighing tooLight{{149.5, 0.3}, {150, 1}};
    for (const auto& left :
         {lengthAgainstNew(tooLight, {{200'000, 1'000}, {490, 0.58}}), lengthByWeight(tooLight, {1.7, 0.1}),
          newLengthFrom(tooLight, {{200'000, 1'000}, {490, 0.58}}, {100'000, 60})}) {
        ASSERT_FALSE(left);
        EXPECT_EQ(left.error().code(), Code::ImpossibleValue);
        EXPECT_EQ(left.error().text("key"), "weight");
        EXPECT_EQ(left.error().text("text"), "149.5 g");
    }
    EXPECT_EQ(lengthByWeight({{150, 0.3}, {150, 1}}, {1.7, 0.1})->value, 0); // empty
    const auto neverNew = lengthAgainstNew({{160, 0.3}, {150, 1}}, {{200'000, 1'000}, {150, 0.58}});
    ASSERT_FALSE(neverNew);
    EXPECT_EQ(neverNew.error().text("key"), "weight when new");
}

// Check value 21: density * pi d^2 / 4; densities of nylon and aramid published, of PET and gut from memory.
TEST(GramsPerMetre, OfSolidRoundStrings) {
    EXPECT_NEAR(gramsPerMetreOf(Material::Nylon, 1.30).value, 1.513, 0.0005);
    EXPECT_NEAR(gramsPerMetreOf(Material::Polyester, 1.25).value, 1.694, 0.0005);
    EXPECT_NEAR(gramsPerMetreOf(Material::NaturalGut, 1.30).value, 1.726, 0.0005);
    EXPECT_NEAR(gramsPerMetreOf(Material::Aramid, 1.25).value, 1.767, 0.0005);
    EXPECT_NEAR(gramsPerMetreOf(Material::Nylon, 0.70).value, 0.439, 0.0005);
    EXPECT_NEAR(gramsPerMetreOf(Material::Nylon, 1.30).sd, 1.513 * 0.05, 0.0001);
}

// stock-checks.csv, nnpost, computed there: a normal prior and three measurements, and the next one's 99 % quantile
// with z = 2.3263478740 (the normal distribution). The same sum learns grams per metre.
TEST(Estimates, CombineByPrecision) {
    Estimate known{11.4, 0.35};
    for (const double seen : {11.62, 11.71, 11.55}) {
        known = combined(known, {seen, 0.12});
    }
    EXPECT_NEAR(known.value, 11.618119926682, 1e-9);
    EXPECT_NEAR(known.sd, 0.067963300480, 1e-9);
    const double next = std::hypot(known.sd, 0.12);
    EXPECT_NEAR(next, 0.137909427568, 1e-9);
    EXPECT_NEAR(known.value + 2.3263478740408408 * next, 11.938945230315, 1e-9);
    EXPECT_EQ(combined({1, 0}, {2, 0.1}).value, 1); // what is sure stays
    EXPECT_EQ(combined({1, 0.1}, {2, 0}).value, 2);
}

TEST(GramsPerMetre, AreLearnedFromKnownCuts) {
    const Estimate guess = gramsPerMetreOf(Material::Multifilament, 1.30); // 1.513, and really 1.62
    const Estimate cut{11'000, 20};
    Estimate known = guess;
    for (int i = 0; i < 5; ++i) {
        const Estimate next = learnedGramsPerMetre(known, {400, 0.29}, {400 - 1.62 * 11, 0.29}, cut);
        EXPECT_LT(std::abs(next.value - 1.62), std::abs(known.value - 1.62));
        EXPECT_LT(next.sd, known.sd);
        known = next;
    }
    EXPECT_NEAR(known.value, 1.62, 2 * known.sd);
    EXPECT_LT(known.sd, guess.sd / 4);
    // by hand, of one cut without a guess: 0.29 g sqrt(2) in 11 m, and 20 mm in 11 m
    const Estimate once = learnedGramsPerMetre({0, 1e9}, {400, 0.29}, {400 - 1.62 * 11, 0.29}, cut);
    EXPECT_NEAR(once.value, 1.62, 1e-9);
    EXPECT_NEAR(once.sd, std::hypot(0.29 * std::sqrt(2.0) / 11, 1.62 * 20 / 11'000), 1e-9);
}

// By hand: half is gone by weight and 99 m were cut, so it was 198 m, and the nominal 200 m pulls it up.
TEST(NewLength, ShowsWhenHalfOfItIsGone) {
    const NewReel nominal{{200'000, 1'000}, {490, 0.29}};
    const auto full = newLengthFrom({{320, 0.29}, {150, 0.5}}, nominal, {99'000, 60});
    ASSERT_TRUE(full);
    const double shareSd = std::hypot(0.29 / 340, 0.5 * 0.29 / 340, 170 * 0.5 / (340.0 * 340));
    const Estimate byWeight{198'000, std::hypot(60 / 0.5, 99'000 / 0.25 * shareSd)};
    EXPECT_NEAR(full->value, combined(nominal.lengthMm, byWeight).value, 1e-6);
    EXPECT_NEAR(full->sd, combined(nominal.lengthMm, byWeight).sd, 1e-6);
    EXPECT_GT(full->value, 198'000);
    EXPECT_LT(full->value, 199'300);
    // early on it tells nothing
    EXPECT_GT(newLengthFrom({{480, 0.29}, {150, 0.5}}, nominal, {6'000, 20})->sd, 990);
    EXPECT_EQ(newLengthFrom({{491, 0.29}, {150, 0.5}}, nominal, {6'000, 20})->value, 200'000);
}

TEST(CompareWithBook, FindsOnlyWhatIsBeyondDoubt) {
    const Estimate book{50'000, 800};
    EXPECT_FALSE(compareWithBook({47'001, 600}, book, kPerJob).isFinding); // 3 sqrt(0.6^2 + 0.8^2) = 3 m
    const auto finding = compareWithBook({46'999, 600}, book, kPerJob);
    EXPECT_TRUE(finding.isFinding);
    EXPECT_NEAR(finding.differenceMm, -3'001, 1e-9);
    EXPECT_EQ(finding.unbookedJobs, std::nullopt);
    EXPECT_EQ(compareWithBook({38'500, 600}, book, kPerJob).unbookedJobs, 1);
    EXPECT_EQ(compareWithBook({29'000, 600}, book, kPerJob).unbookedJobs, 2);
    EXPECT_EQ(compareWithBook({61'000, 600}, book, kPerJob).unbookedJobs, std::nullopt); // one too many
}

// Stock model: 0.5 % of a new reel; 2 cm, 1 % or 2 % of each cut; 1 cm after a tape. Variances add.
TEST(BookUncertainty, AddsUpCutByCut) {
    const Length reel = Length::fromMillimetres(200'000);
    EXPECT_DOUBLE_EQ(BookUncertainty::ofNew(reel).sdMm(), 1'000);
    EXPECT_DOUBLE_EQ(BookUncertainty::ofNew(reel, 0.01).sdMm(), 2'000);
    EXPECT_DOUBLE_EQ(BookUncertainty::measured().sdMm(), 10);
    BookUncertainty book = BookUncertainty::measured();
    for (int i = 0; i < 3; ++i) {
        book = book.afterCut(kPerJob, CutMeasure::Tape);
    }
    EXPECT_DOUBLE_EQ(book.sdMm(), std::sqrt(10 * 10 + 3 * 20 * 20.0));
    EXPECT_DOUBLE_EQ(BookUncertainty::measured().afterCut(kPerJob, CutMeasure::HeadLengths).sdMm(),
                     std::hypot(10, 110));
    EXPECT_DOUBLE_EQ(BookUncertainty::measured().afterCut(kPerJob, CutMeasure::ArmSpans).sdMm(), std::hypot(10, 220));
}

} // namespace
} // namespace rw::stock
