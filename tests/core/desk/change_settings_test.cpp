// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/change_settings.h"

#include "core/desk/setting_rules.h"
#include "core/desk/settings.h"
#include "tests/core/desk/demo_fixture.h"

#include <algorithm>

// The shop's settings as the owner writes them.
namespace rw::desk::test {
namespace {
using std::chrono::minutes;

class ChangedSettings : public DemoEverywhere {
protected:
    std::string text(std::string_view name) {
        const auto texts = read([](Transaction& t) { return settingTexts(t); });
        return std::ranges::find(*texts, name, &SettingText::name)->value;
    }
    Result<void> change(std::vector<SettingChange> changes) {
        return write([&](Transaction& t) { return changeSettings(t, changes); });
    }
    /// From what it says now.
    Result<void> set(std::string_view name, std::string_view value) {
        return change({{std::string(name), text(name), std::string(value)}});
    }
    ShopSettings settings() {
        return look([](Transaction& t) { return readSettings(t.shop()); });
    }
    std::optional<std::string> stored(std::string_view name) {
        return look([&](Transaction& t) { return t.shop().setting(name); });
    }
};
IN_MEMORY_AND_ON_BOTH_ENGINES(ChangedSettings);

TEST_P(ChangedSettings, SayWhatHolds) {
    EXPECT_EQ(text("minutes.per-job"), "25");
    EXPECT_EQ(text("promise.margin-percent"), "15");
    EXPECT_EQ(text("ceiling-percent"), "1");
    EXPECT_EQ(text("short-side"), "left");
    EXPECT_EQ(text("hours.mon"), "10:00-18:00");
    EXPECT_EQ(text("hours.sun"), "");
    EXPECT_EQ(text("spoiled-job.cost"), "");
    EXPECT_EQ(text("shop-name"), "Harbour Lane Strings");
}

TEST_P(ChangedSettings, AreKeptAsOneReadsThem) {
    ASSERT_TRUE(set("minutes.per-job", " 40 "));
    ASSERT_TRUE(set("promise.margin-percent", "0"));
    ASSERT_TRUE(set("promise.step-minutes", "30"));
    ASSERT_TRUE(set("running-short.jobs", "3"));
    ASSERT_TRUE(set("tape-step-mm", "10"));
    ASSERT_TRUE(set("ceiling-percent", "0,5 %"));
    ASSERT_TRUE(set("short-side", "right"));
    ASSERT_TRUE(set("scale-step-g", "0,5 g"));
    ASSERT_TRUE(set("spoiled-job.cost", "12,5"));
    ASSERT_TRUE(set("closed-days", "2026-12-25 to 2026-12-27, 2027-01-01"));
    ASSERT_TRUE(set("hours.mon", "9-12"));
    ASSERT_TRUE(set("hours.wed", ""));
    ASSERT_TRUE(set("shop-name", " Harbour Lane "));
    const ShopSettings found = settings();
    EXPECT_EQ(found.minutesPerJob, minutes(40));
    EXPECT_EQ(found.marginPercent, 0);
    EXPECT_EQ(found.step, minutes(30));
    EXPECT_EQ(found.runningShortJobs, 3);
    EXPECT_EQ(found.tapeStep, Length::fromMillimetres(10));
    EXPECT_DOUBLE_EQ(found.ceiling, 0.005);
    EXPECT_EQ(found.shortSide, Side::Right);
    EXPECT_EQ(found.scaleStep, Mass::fromMilligrams(500));
    EXPECT_EQ(text("scale-step-g"), "0.5");
    EXPECT_EQ(found.spoiledJobCost, pounds(12'50));
    EXPECT_EQ(found.hours.closedDays.size(), 4U);
    EXPECT_EQ(found.hours.week[0], (DayHours{minutes(9 * 60), minutes(12 * 60)}));
    EXPECT_EQ(found.hours.week[1], (DayHours{minutes(10 * 60), minutes(18 * 60)})) << "the other days stay";
    EXPECT_FALSE(found.hours.week[2]);
    EXPECT_EQ(text("spoiled-job.cost"), "12.50");
    EXPECT_EQ(stored("shop-name"), "Harbour Lane");
    ASSERT_TRUE(set("spoiled-job.cost", ""));
    EXPECT_FALSE(settings().spoiledJobCost);
}

TEST_P(ChangedSettings, WhatCannotBeReadIsNeverStored) {
    struct Case {
        std::string_view name;
        std::string_view typed;
        Code code;
    };
    for (const auto& [name, typed, code] : std::initializer_list<Case>{
             {"minutes.per-job", "soon", Code::Unreadable},
             {"minutes.per-job", "25 min", Code::Unreadable},
             {"minutes.per-job", "2.5", Code::TooFine},
             {"minutes.per-job", "0", Code::OutOfRange},
             {"minutes.per-job", "481", Code::OutOfRange},
             {"minutes.per-job", "-5", Code::OutOfRange},
             {"minutes.per-job", "", Code::Missing},
             {"promise.margin-percent", "501", Code::OutOfRange},
             {"promise.step-minutes", "0", Code::OutOfRange},
             {"running-short.jobs", "1001", Code::OutOfRange},
             {"tape-step-mm", "1001", Code::OutOfRange},
             {"ceiling-percent", "0", Code::OutOfRange},
             {"ceiling-percent", "50.01", Code::OutOfRange},
             {"ceiling-percent", "one", Code::Unreadable},
             {"scale-step-g", "0", Code::OutOfRange},
             {"scale-step-g", "1 kg", Code::Unreadable},
             {"scale-step-g", "0.001", Code::TooFine},
             {"short-side", "middle", Code::Unreadable},
             {"job-number.first", "0", Code::OutOfRange},
             {"hours.mon", "18-10", Code::Unreadable},
             {"closed-days", "christmas", Code::Unreadable},
             {"time-zone", "Harbour/Lane", Code::ImpossibleValue},
             {"spoiled-job.cost", "-1", Code::ImpossibleValue},
             {"spoiled-job.cost", "a lot", Code::Unreadable},
             {"shop-name", "\xFF", Code::Unreadable},
         }) {
        const auto before = stored(name);
        const auto changed = set(name, typed);
        ASSERT_FALSE(changed) << name << " " << typed;
        EXPECT_EQ(changed.error().code(), code) << name << " " << typed;
        const Refusal& why = changed.error();
        EXPECT_TRUE(why.text("what") == name || why.text("key") == name) << name << " " << typed;
        EXPECT_EQ(stored(name), before);
    }
    EXPECT_EQ(refusalOf(set("shop-name", std::string(201, 'h'))), Code::TooLong);
    EXPECT_EQ(refusalOf(change({{"colour-of-the-door", "", "red"}})), Code::UnknownKey);
    EXPECT_FALSE(stored("colour-of-the-door"));
}

TEST_P(ChangedSettings, AllOfThemOrNone) {
    EXPECT_FALSE(change({{"minutes.per-job", "25", "40"}, {"tape-step-mm", "50", "none"}}));
    EXPECT_EQ(text("minutes.per-job"), "25");
    ASSERT_TRUE(change({{"minutes.per-job", "25", "40"}, {"tape-step-mm", "50", "20"}}));
    EXPECT_EQ(text("minutes.per-job"), "40");
    EXPECT_EQ(text("tape-step-mm"), "20");
}

TEST_P(ChangedSettings, WhereTheNumbersBeginIsSaidBeforeTheFirstJob) {
    const std::string now = text("job-number.first");
    const auto late = set("job-number.first", "5000");
    ASSERT_FALSE(late);
    EXPECT_EQ(late.error().code(), Code::ImpossibleValue);
    EXPECT_EQ(late.error().text("expected"), "set before the first job is logged");
    EXPECT_EQ(text("job-number.first"), now);
    EXPECT_TRUE(set("job-number.first", now)) << "nothing is changed by it";

    FakeLedger empty;
    const std::int64_t next = *inTransaction(empty, Access::Write, [](Transaction& t) -> Result<std::int64_t> {
        const auto changed = changeSettings(t, {{"job-number.first", "1001", "5000"}});
        return changed ? Result<std::int64_t>(nextJobNumber(t)) : tl::unexpected(changed.error());
    });
    EXPECT_EQ(next, 5000);
}

TEST_P(ChangedSettings, AShopOpensOnOneDayAtLeast) {
    std::vector<SettingChange> week;
    for (const std::string_view day : setting::kHours) {
        week.push_back({std::string(day), text(day), ""});
    }
    const auto never = change(week);
    ASSERT_FALSE(never);
    EXPECT_EQ(never.error().text("key"), "hours");
    week[6].value = "12-16";
    ASSERT_TRUE(change(week));
    EXPECT_FALSE(settings().hours.week[0]);
    EXPECT_EQ(settings().hours.week[6], (DayHours{minutes(12 * 60), minutes(16 * 60)}));
    EXPECT_EQ(refusalOf(set("hours.sun", "")), Code::ImpossibleValue) << "it was the last one";
}

TEST_P(ChangedSettings, OfTwoThatChangeOneTheSecondIsTold) {
    ASSERT_TRUE(change({{"minutes.per-job", "25", "30"}}));
    const auto second = change({{"minutes.per-job", "25", "40"}});
    ASSERT_FALSE(second);
    EXPECT_EQ(second.error().code(), Code::ChangedMeanwhile);
    EXPECT_EQ(second.error().text("what"), "minutes.per-job");
    EXPECT_EQ(second.error().text("theirs"), "30");
    EXPECT_TRUE(change({{"minutes.per-job", "25", "30"}})) << "they wanted the same";
    EXPECT_TRUE(change({{"tape-step-mm", "50", "20"}})) << "another one";
    ASSERT_TRUE(change({{"hours.mon", "10:00-18:00", "9-18"}}));
    EXPECT_EQ(refusalOf(change({{"hours.mon", "10:00-18:00", "8-18"}})), Code::ChangedMeanwhile);
}

// Without evidence the head's measurements decide, and a dear mistake is worth some string.
TEST_P(ChangedSettings, ADearSpoiledJobMakesTheCutsLonger) {
    FrameModel fresh;
    fresh.name = "Fennel Prow 102";
    const auto frame = write([&](Transaction& t) { return addFrame(t, fresh); });
    ASSERT_TRUE(frame);
    IntakeDraft draft = draftFor(racketOf("Lindobi", "Aldermoor 98", "A"), "K", "K", "52", "52");
    draft.frame = *frame;
    draft.racket.reset();
    const auto planned = [&] {
        Length sum = metres(0);
        const auto found = preview(draft);
        for (const auto& piece : found->plan.pieces) {
            sum += piece.cut;
        }
        return sum;
    };
    const Length usual = planned();
    ASSERT_TRUE(set("spoiled-job.cost", "0"));
    EXPECT_EQ(planned(), usual) << "the accepted chance decides alone";
    ASSERT_TRUE(set("spoiled-job.cost", "5000"));
    EXPECT_GT(planned(), usual);
}

TEST_P(ChangedSettings, EveryNameHasAUsualValueThatCanBeKept) {
    for (const std::string_view name : settingNames()) {
        const auto kept = settingAsKept(name, usualSetting(name), Currency::pounds());
        ASSERT_TRUE(kept) << name;
        EXPECT_EQ(*kept, usualSetting(name)) << name;
    }
}

} // namespace
} // namespace rw::desk::test
