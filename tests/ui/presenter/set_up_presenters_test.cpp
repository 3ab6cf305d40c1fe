// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/settings.h"
#include "tests/ui/support/at_work.h"
#include "ui/presenter/frames_presenter.h"
#include "ui/presenter/machines_presenter.h"
#include "ui/presenter/prices_presenter.h"
#include "ui/presenter/shop_presenter.h"
#include "ui/presenter/staff_presenter.h"

#include <algorithm>

// How the owner sets the shop up, without a window.
namespace rw::ui::test {
namespace {
using namespace std::chrono_literals;

class SetUp : public AtWork {
protected:
    template<class Presenter>
    void listen(Presenter& presenter) {
        QObject::connect(&presenter, &SetUpPresenter::refused, [this](const Refusal& refusal) { why = refusal; });
        QObject::connect(&presenter, &SetUpPresenter::changed, [this] { ++changes; });
        presenter.open();
    }
    std::optional<Refusal> why;
    int changes = 0;
};

TEST_F(SetUp, APageThatIsNotInViewAsksNothing) {
    StaffPresenter staff{runner, shift};
    shift.noteChange();
    EXPECT_EQ(runner.reads, 0);
    staff.open();
    EXPECT_EQ(runner.reads, 1);
    shift.noteChange();
    EXPECT_EQ(runner.reads, 2);
    staff.close();
    shift.noteChange();
    EXPECT_EQ(runner.reads, 2);
}

class StaffKept : public SetUp {
protected:
    StaffKept() { listen(staff); }
    desk::StaffMember called(std::string_view name) {
        return *std::ranges::find(staff.staff(), name, &desk::StaffMember::name);
    }
    StaffPresenter staff{runner, shift};
};

TEST_F(StaffKept, WhoHasLeftStandsBehindWhoIsHere) {
    EXPECT_TRUE(staff.isLoaded());
    EXPECT_EQ(staff.staff().size(), 4U);
    const auto first = staff.staff().front();
    std::string kept;
    QObject::connect(&staff, &StaffPresenter::kept, [&](const desk::StaffMember& member) { kept = member.name; });
    staff.retire(first);
    EXPECT_EQ(kept, first.name);
    EXPECT_EQ(staff.staff().back().name, first.name);
    EXPECT_TRUE(staff.staff().back().retired);
    staff.retire(staff.staff().back());
    EXPECT_FALSE(called(first.name).retired);
}

TEST_F(StaffKept, PressedTwiceIsDoneOnce) {
    desk::StaffMember member = called("Ines Varholt");
    member.name = "Ines Varholt-Brandt";
    runner.held = true;
    staff.keep(member);
    staff.keep(member);
    runner.release();
    EXPECT_FALSE(why) << "the second press would have found another version";
    EXPECT_EQ(called("Ines Varholt-Brandt").version, 2);
}

TEST_F(StaffKept, WhatIsRefusedIsTold) {
    desk::StaffMember member = called("Ines Varholt");
    member.name = "Oriel Tamm";
    staff.keep(member);
    ASSERT_TRUE(why);
    EXPECT_EQ(why->text("key"), "name");
    EXPECT_EQ(called("Ines Varholt").version, 1);
}

TEST_F(SetUp, AMachineIsKeptAndRetired) {
    MachinesPresenter machines{runner, shift};
    listen(machines);
    machines.keep({.id = std::nullopt, .name = "Bench C", .unit = TensionUnit::Kilogram});
    ASSERT_EQ(machines.machines().size(), 3U);
    machines.retire(machines.machines()[1]);
    EXPECT_EQ(machines.machines().back().name, "Bench B");
    EXPECT_TRUE(machines.machines().back().retired);
    EXPECT_FALSE(why);
}

class Prices : public SetUp {
protected:
    Prices() {
        listen(prices);
        QObject::connect(&prices, &PricesPresenter::kept, [this](const PriceList&, bool isNew) { renewed = isNew; });
    }
    PriceLine lineOf(ChargeKind kind) {
        const auto rows = prices.rows();
        return *std::ranges::find_if(rows, [&](const PriceRow& row) {
                    return row.line && row.line->kind == kind;
                })->line;
    }
    static Money pounds(std::int64_t pence) { return Money::fromMinor(pence, Currency::pounds()); }

    PricesPresenter prices{runner, shift};
    std::optional<bool> renewed;
};

TEST_F(Prices, ANewListIsOpenedAsACopy) {
    ASSERT_EQ(prices.lists().size(), 1U);
    EXPECT_EQ(prices.chosen(), nullptr);
    EXPECT_TRUE(prices.rows().empty());
    std::optional<PriceList> begun;
    QObject::connect(&prices, &PricesPresenter::begun, [&](const PriceList& list) { begun = list; });
    const CivilDate tomorrow = std::chrono::sys_days(prices.today()) + std::chrono::days(1);
    prices.begin(tomorrow);
    ASSERT_TRUE(begun);
    ASSERT_NE(prices.chosen(), nullptr);
    EXPECT_EQ(prices.chosen()->list.validFrom, tomorrow);
    EXPECT_EQ(prices.chosen()->holds, desk::Holds::Later);
    EXPECT_EQ(prices.chosen()->list.lines, prices.lists()[1].list.lines);
    EXPECT_TRUE(prices.mayChange());
    PriceLine labour = lineOf(ChargeKind::Labour);
    labour.amount = pounds(1550);
    prices.keepLine(prices.chosen()->list, lineOf(ChargeKind::Labour), labour);
    EXPECT_EQ(renewed, false);
    EXPECT_EQ(lineOf(ChargeKind::Labour).amount, pounds(1550));
    prices.drop(prices.chosen()->list);
    EXPECT_EQ(prices.lists().size(), 1U);
    EXPECT_EQ(prices.chosen(), nullptr);
    EXPECT_FALSE(why);
}

TEST_F(Prices, AChangeOfTheListInForceOpensTheNewOne) {
    const PriceList old = prices.lists().front().list;
    prices.choose(old.id);
    prices.keepTax(old, TaxRule::Added, 2000);
    EXPECT_EQ(renewed, true);
    ASSERT_NE(prices.chosen(), nullptr);
    EXPECT_NE(prices.chosen()->list.id, old.id);
    EXPECT_EQ(prices.chosen()->list.taxRule, TaxRule::Added);
    EXPECT_TRUE(std::ranges::all_of(prices.chosen()->list.lines,
                                    [](const PriceLine& line) { return line.taxHundredthsPercent == 2000; }));
    prices.choose(old.id);
    EXPECT_FALSE(prices.mayChange()) << "it is past";
    prices.keepTax(old, TaxRule::Included, 0);
    ASSERT_TRUE(why);
    EXPECT_EQ(why->code(), Code::ChangedMeanwhile);
}

TEST_F(Prices, RowsAreWorkThenStringsThenExtras) {
    prices.choose(prices.lists().front().list.id);
    const auto rows = prices.rows();
    ASSERT_EQ(rows.size(), 3U + 4U + 1U);
    EXPECT_EQ(rows[0].line->kind, ChargeKind::Labour);
    EXPECT_EQ(rows[3].string->code, "K");
    EXPECT_EQ(rows[3].prices.fullBed, pounds(1300));
    EXPECT_EQ(rows[7].line->label, "grommet tube");
    prices.keepString(prices.chosen()->list, *rows[3].string->id, {pounds(1500), std::nullopt, pounds(1700), 0});
    EXPECT_EQ(prices.rows()[3].prices, (desk::StringPrices{pounds(1500), pounds(750), pounds(1700), 0}));
    prices.takeOff(prices.chosen()->list, *rows[7].line);
    EXPECT_EQ(prices.rows().size(), 7U);
    prices.takeOff(prices.chosen()->list, *rows[0].line);
    ASSERT_TRUE(why) << "no list without labour";
    EXPECT_EQ(why->text("kind"), "labour");
    EXPECT_EQ(prices.rows().size(), 7U);
}

class FramesKnown : public SetUp {
protected:
    FramesKnown() { listen(frames); }
    FramesPresenter frames{runner, shift, kAtOnce};
};

TEST_F(FramesKnown, AreFoundByTypingAndOneIsOpened) {
    EXPECT_EQ(frames.frames().size(), 5U);
    frames.find(QStringLiteral("alder"));
    ASSERT_EQ(frames.frames().size(), 2U);
    frames.choose(frames.frames()[1].id);
    ASSERT_TRUE(frames.chosen());
    EXPECT_EQ(frames.chosen()->frame.name, "Aldermoor 98");
    EXPECT_EQ(frames.chosen()->usualCuts.size(), 4U);
    FrameModel changed = frames.chosen()->frame;
    changed.note.text = "awl for 7H";
    frames.keep(changed);
    EXPECT_EQ(frames.chosen()->frame.note.text, "awl for 7H");
    frames.keep(changed);
    ASSERT_TRUE(why);
    EXPECT_EQ(why->code(), Code::ChangedMeanwhile) << "it was read before it was changed";
    frames.choose(std::nullopt);
    EXPECT_FALSE(frames.chosen());
}

TEST_F(FramesKnown, ANewOneIsOpenedAtOnce) {
    FrameModel fresh;
    fresh.name = "Fennel Prow 102";
    frames.keep(fresh);
    ASSERT_TRUE(frames.chosen());
    EXPECT_EQ(frames.chosen()->frame.name, "Fennel Prow 102");
    desk::UsualCut cut{*frames.chosen()->frame.id, PieceRole::Mains, std::nullopt, "", metres(6.1), std::nullopt};
    frames.keepCut(cut);
    ASSERT_EQ(frames.chosen()->usualCuts.size(), 1U);
    cut.cut = metres(0.5);
    frames.keepCut(cut);
    ASSERT_TRUE(why);
    EXPECT_EQ(why->text("what"), "cut");
    frames.dropCut(cut);
    EXPECT_TRUE(frames.chosen()->usualCuts.empty());
}

class TheShop : public SetUp {
protected:
    TheShop() { listen(shop); }
    desk::SettingText setting(std::string_view name) {
        return *std::ranges::find(shop.settings(), name, &desk::SettingText::name);
    }
    ShopPresenter shop{runner, shift};
};

TEST_F(TheShop, ASettingIsKeptAsItIsRead) {
    std::optional<desk::SettingText> kept;
    QObject::connect(&shop, &ShopPresenter::kept, [&](const desk::SettingText& text) { kept = text; });
    shop.set(setting(desk::setting::kMinutesPerJob), QStringLiteral(" 40 "));
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->value, "40");
    EXPECT_EQ(setting(desk::setting::kMinutesPerJob).value, "40");
    shop.set(setting(desk::setting::kMinutesPerJob), QStringLiteral("soon"));
    ASSERT_TRUE(why);
    EXPECT_EQ(why->text("what"), desk::setting::kMinutesPerJob);
    EXPECT_EQ(setting(desk::setting::kMinutesPerJob).value, "40");
}

TEST_F(TheShop, WhatSomebodyElseChangedIsTold) {
    const auto seen = setting(desk::setting::kShopName);
    ledger.rows.settings["shop-name"] = "Harbour Lane Two";
    shop.set(seen, QStringLiteral("Harbour Lane Three"));
    ASSERT_TRUE(why);
    EXPECT_EQ(why->code(), Code::ChangedMeanwhile);
    EXPECT_EQ(why->text("theirs"), "Harbour Lane Two");
}

} // namespace
} // namespace rw::ui::test
