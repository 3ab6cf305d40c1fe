// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/need_words.h"

#include "tests/ui/text/said.h"
#include "ui/text/lesson_words.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace rw::ui {
namespace {

const QLocale kEnglish(QLocale::English, QLocale::UnitedKingdom);

length::CutPlan planOf(length::Experience experience) {
    length::CutRequest request = length::defaultRequest(Sport::Tennis);
    request.method = Method::TwoPiece;
    request.experience = std::move(experience);
    return length::planCut(request).value();
}

TEST(NeedWords, TheCardSaysWhatANeedStandsOn) {
    const std::string alone = said(needsText(planOf({}), kEnglish));
    EXPECT_NE(alone.find("mains need about "), std::string::npos) << alone;
    EXPECT_NE(alone.find("by the head's measurements; crosses need about "), std::string::npos) << alone;

    constexpr double kInfinity = std::numeric_limits<double>::infinity();
    const length::CutPlan learned =
        planOf({.mains = {length::kUnknownShop, {{0.01, 0.01}, {0.02, 0.02}, {-kInfinity, 0.05}}},
                .crosses = {{0.012, 0.01}, {}, 9}});
    EXPECT_EQ(said(needStandsOnText(learned.pieces[0], kEnglish)), "3 cuts here, 2 with tails");
    EXPECT_EQ(said(needStandsOnText(learned.pieces[1], kEnglish)), "this shop's tails on other frames");
    EXPECT_EQ(
        said(needStandsOnText(planOf({.mains = {length::kUnknownShop, {{-kInfinity, 0.05}}}}).pieces[0], kEnglish)),
        "one cut here, no tails told");
}

TEST(NeedWords, SharesAreSaidInPercentOfTheNeed) {
    EXPECT_EQ(said(shareText(std::log(1.012), kEnglish)), "+1.2 %");
    EXPECT_EQ(said(shareText(std::log(0.996), kEnglish)), "−0.4 %");
    EXPECT_EQ(said(spreadText(0.0091, kEnglish)), "± 0.9 %");
    EXPECT_EQ(said(measuredCutsText(14, 3, kEnglish)), "14 measured cuts of 3 frames and strings");
    EXPECT_EQ(said(measuredCutsText(1, 1, kEnglish)), "one measured cut of one frame and string");
}

TEST(NeedWords, AStoryEndsWithWhatTheNextNeeds) {
    const auto step = [](double low, double high) {
        return desk::NeedStep{
            .told = {.group = {FrameModelId::of(1), PieceRole::Crosses, false, Material::Polyester, {}},
                     .job = JobId::of(1),
                     .number = 2120,
                     .at = Instant(),
                     .cut = Length::fromMillimetres(5600),
                     .predictedMm = 5300,
                     .materialSpread = 0,
                     .seen = {0, 0}},
            .lowMm = low,
            .highMm = high,
            .learnedMm = 5310,
            .learnedSdMm = 90};
    };
    desk::NeedStory story{.group = step(0, 0).told.group,
                          .predictedMm = 5300,
                          .biasMm = 5300,
                          .steps = {step(5320, 5320), step(0, 5600)}};
    EXPECT_EQ(said(needStoryTitle(story, 1, 1)), "crosses, polyester");
    EXPECT_EQ(said(needStoryTitle(story, 2, 5)), "crosses, polyester (2 of 5)");
    EXPECT_EQ(said(needStoryText(story, kEnglish)),
              "The next needs about 5.31 m, give or take 0.09 m, by 2 cuts, 1 with tails. By the head's measurements "
              "alone 5.30 m.");
    story.biasMm = 5360;
    EXPECT_NE(said(needStoryText(story, kEnglish)).find("With what the rest of the shop's tails say 5.36 m."),
              std::string::npos);
    EXPECT_EQ(said(toldText(step(5320, 5320), kEnglish)), "needed 5.32 m");
    EXPECT_EQ(said(toldText(step(5300, 5400), kEnglish)), "needed 5.30 m to 5.40 m");
    EXPECT_EQ(said(toldText(step(0, 5600), kEnglish)), "was enough");
    EXPECT_EQ(said(toldText(step(5600, std::numeric_limits<double>::infinity()), kEnglish)), "came short");
}

} // namespace
} // namespace rw::ui
