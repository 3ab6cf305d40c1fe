// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/repositories/repository_test.h"

using testing::ElementsAre;
using testing::HasSubstr;

namespace rw::sql::test {

class StringsTest : public RepositoryTest {};
ON_BOTH_ENGINES(StringsTest);
class PriceListsTest : public StockedTest {};
ON_BOTH_ENGINES(PriceListsTest);

TEST_P(StringsTest, ComeBackAsTheyWereStoredAndAreListedByCode) {
    const StringArticle full{.id = std::nullopt,
                             .code = "T",
                             .name = "Tarnweave 120",
                             .colour = "red",
                             .sport = Sport::Squash,
                             .material = Material::NaturalGut,
                             .diameterMicrometres = 1'200,
                             .gaugeName = "17",
                             .milligramsPerMetre = 1'250,
                             .stretchPercent = 9.75,
                             .packet = Length::fromMillimetres(12'200)};
    const StringArticle bare{.id = std::nullopt,
                             .code = "K",
                             .name = "Kestrelline 125",
                             .colour = {},
                             .sport = Sport::Tennis,
                             .material = Material::Polyester,
                             .diameterMicrometres = 1'250,
                             .gaugeName = {},
                             .milligramsPerMetre = std::nullopt,
                             .stretchPercent = std::nullopt};
    for (const StringArticle& article : {full, bare}) {
        const auto id = strings().add(article);
        const auto stored = strings().get(id).value();
        EXPECT_EQ(stored.id, id);
        EXPECT_EQ(stored.code, article.code);
        EXPECT_EQ(stored.name, article.name);
        EXPECT_EQ(stored.colour, article.colour);
        EXPECT_EQ(stored.sport, article.sport);
        EXPECT_EQ(stored.material, article.material);
        EXPECT_EQ(stored.diameterMicrometres, article.diameterMicrometres);
        EXPECT_EQ(stored.gaugeName, article.gaugeName);
        EXPECT_EQ(stored.milligramsPerMetre, article.milligramsPerMetre);
        EXPECT_EQ(stored.stretchPercent, article.stretchPercent);
        EXPECT_EQ(stored.packet, article.packet);
    }
    EXPECT_THAT(strings().all(),
                ElementsAre(testing::Field(&StringArticle::code, "K"), testing::Field(&StringArticle::code, "T")));
    EXPECT_FALSE(strings().get(StringArticleId::of(987'654)));
    StringArticle changed = full;
    changed.id = strings().all().front().id;
    ASSERT_TRUE(strings().update(changed));
    const auto stored = strings().get(*changed.id).value();
    EXPECT_EQ(stored.code, "K") << "it stands on the reels";
    EXPECT_EQ(stored.name, full.name);
    EXPECT_EQ(stored.colour, full.colour);
    EXPECT_EQ(stored.sport, full.sport);
    EXPECT_EQ(stored.material, full.material);
    EXPECT_EQ(stored.packet, full.packet);
    EXPECT_EQ(stored.diameterMicrometres, full.diameterMicrometres);
    EXPECT_EQ(stored.gaugeName, full.gaugeName);
    EXPECT_EQ(stored.milligramsPerMetre, full.milligramsPerMetre);
    EXPECT_EQ(stored.stretchPercent, full.stretchPercent);
    EXPECT_EQ(strings().all().back().name, full.name) << "the other one is as it was";
    EXPECT_THAT(guardOf([&] { (void)strings().add(bare); }), HasSubstr("string_article_code"));
}

TEST_P(PriceListsTest, TheNewestThatHasBegunIsValid) {
    using namespace std::chrono;
    const Currency pound = Currency::pounds();
    const auto k = string("K");
    const PriceLine labour{ChargeKind::Labour, Sport::Tennis, Method::TwoPiece, std::nullopt, "", pounds(1'400), 2'000};
    const PriceLine bed{ChargeKind::FullBed, std::nullopt, std::nullopt, k, "", pounds(1'300), 0};
    const PriceLine tube{ChargeKind::Extra, std::nullopt, std::nullopt, std::nullopt,
                         "grommet tube",    pounds(50),   500,          pounds(18)};
    EXPECT_FALSE(priceLists().validOn(2026y / March / 2));
    priceLists().add({0, 2026y / January / 1, pound, TaxRule::Included, {labour, bed, tube}});
    priceLists().add({0, 2026y / April / 6, pound, TaxRule::Added, {}});

    const auto winter = priceLists().validOn(2026y / April / 5).value();
    EXPECT_GT(winter.id, 0);
    EXPECT_EQ(winter.validFrom, CivilDate(2026y / January / 1));
    EXPECT_EQ(winter.currency, pound);
    EXPECT_EQ(winter.taxRule, TaxRule::Included);
    ASSERT_EQ(winter.lines.size(), 3U);
    for (const auto& [stored, line] :
         {std::pair(winter.lines[0], labour), std::pair(winter.lines[1], bed), std::pair(winter.lines[2], tube)}) {
        EXPECT_EQ(stored.kind, line.kind);
        EXPECT_EQ(stored.sport, line.sport);
        EXPECT_EQ(stored.method, line.method);
        EXPECT_EQ(stored.article, line.article);
        EXPECT_EQ(stored.label, line.label);
        EXPECT_EQ(stored.amount, line.amount);
        EXPECT_EQ(stored.taxHundredthsPercent, line.taxHundredthsPercent);
        EXPECT_EQ(stored.cost, line.cost);
    }
    EXPECT_EQ(priceLists().validOn(2026y / April / 6).value().taxRule, TaxRule::Added);
    PriceList dearer = winter;
    dearer.lines = {tube};
    priceLists().replaceLines(dearer);
    ASSERT_EQ(priceLists().validOn(2026y / April / 5).value().lines.size(), 1U);
    EXPECT_EQ(priceLists().validOn(2026y / April / 5).value().lines[0].label, "grommet tube");
    EXPECT_FALSE(priceLists().validOn(2025y / December / 31));
    EXPECT_NE(guardOf([&] { priceLists().add({0, 2026y / April / 6, pound, TaxRule::Added, {}}); }), "");
}

TEST_P(PriceListsTest, AreListedTheLastFirstAndOneIsTakenBack) {
    using namespace std::chrono;
    const PriceLine labour{ChargeKind::Labour, std::nullopt, std::nullopt, std::nullopt, "", pounds(1'400), 0};
    priceLists().add({0, 2026y / January / 1, Currency::pounds(), TaxRule::Included, {labour}});
    priceLists().add({0, 2026y / April / 6, Currency::pounds(), TaxRule::Included, {labour, labour}});
    const auto all = priceLists().all();
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].validFrom, CivilDate(2026y / April / 6));
    EXPECT_EQ(all[0].lines, (std::vector{labour, labour}));
    EXPECT_EQ(all[1], priceLists().validOn(2026y / March / 2));
    PriceList added = all[0];
    added.taxRule = TaxRule::Added;
    priceLists().replaceLines(added);
    EXPECT_EQ(priceLists().all()[0], added);
    EXPECT_EQ(priceLists().all()[1], all[1]) << "the other one is as it was";
    priceLists().remove(all[0].id);
    EXPECT_THAT(priceLists().all(), ElementsAre(all[1]));
}

TEST_P(PriceListsTest, WhatIsNoDateIsCorrupt) {
    connection().execute("INSERT INTO price_list (valid_from, currency, tax_rule) "
                         "VALUES ('2026-02-30', 'GBP', 'included')");
    EXPECT_THAT(corruptionIn([&] { (void)priceLists().validOn(std::chrono::year(2027) / 1 / 1); }),
                testing::AllOf(HasSubstr("price_list 1"), HasSubstr("valid_from"), HasSubstr("2026-02-30")));
}

} // namespace rw::sql::test
