// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sql/repositories/repository_test.h"

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

namespace rw::sql::test {

class FramesTest : public RepositoryTest {
protected:
    void expectComesBack(const FrameModel& frame) {
        const auto id = frames().add(frame);
        const auto stored = frames().get(id).value();
        EXPECT_EQ(stored.id, id);
        EXPECT_EQ(stored.name, frame.name);
        EXPECT_EQ(stored.sport, frame.sport);
        EXPECT_EQ(stored.hoop, frame.hoop);
        EXPECT_EQ(stored.pattern, frame.pattern);
        EXPECT_EQ(stored.marked, frame.marked);
        EXPECT_EQ(stored.note, frame.note);
    }
    FrameModelId add(const std::string& name) {
        FrameModel frame;
        frame.name = name;
        return frames().add(frame);
    }
    std::vector<std::string> found(std::string_view text, int atMost = 20) {
        std::vector<std::string> names;
        for (const FrameModel& frame : frames().find(text, atMost)) {
            names.push_back(frame.name);
        }
        return names;
    }
};
ON_BOTH_ENGINES(FramesTest);

TEST_P(FramesTest, ComeBackAsTheyWereStored) {
    FrameModel bare;
    bare.name = "Pellow Feather";
    bare.sport = Sport::Badminton;
    expectComesBack(bare);

    FrameModel full;
    full.name = "Corran Drop 500 “🎾”";
    full.sport = Sport::Squash;
    full.hoop = {.lengthMm = 345.6,
                 .widthMm = 11.5 * 25.4,
                 .headAreaCm2 = 500.000001,
                 .openThroat = true,
                 .widestFromThroat = 0.55,
                 .headExponent = 2.1,
                 .throatExponent = 1.0 / 3.0 + 1.5,
                 .wallMm = 10.25,
                 .outermostMainMm = 201.5,
                 .lastCrossMm = 133.1};
    full.pattern = {.mains = 14,
                    .crosses = 18,
                    .mainsSpanMm = 190.5,
                    .crossesSpanMm = 280.25,
                    .crossesCentreMm = -3.5,
                    .spread = 0.4,
                    .mainsStart = HoopEnd::Throat};
    full.marked = {lb(2'000), kg(1'270)};
    full.note = {.forcedSide = ForcedSide{Side::Right, "groove in the strip"},
                 .mountingMark = "butt-cap logo up",
                 .crossesFromThroatAllowed = true,
                 .text = "awl for 7H"};
    expectComesBack(full);

    full.marked = {std::nullopt, lb(2'600)};
    full.pattern.mainsStart = HoopEnd::Head;
    full.note.forcedSide = ForcedSide{Side::Left, ""};
    expectComesBack(full);
    EXPECT_FALSE(frames().get(FrameModelId::of(987'654)));
}

TEST_P(FramesTest, ChangeWhileTheirVersionIsTheStoredOne) {
    const auto id = add("Pellow Feather");
    const auto other = frames().get(add("Aldermoor 98")).value();
    FrameModel changed = frames().get(id).value();
    EXPECT_EQ(changed.version, 1);
    changed.name = "Pellow Føther";
    changed.sport = Sport::Badminton;
    changed.hoop.lengthMm = 245;
    changed.hoop.widthMm = 190;
    changed.hoop.wallMm = 9.5;
    changed.hoop.outermostMainMm = 170.5;
    changed.hoop.lastCrossMm = 120;
    changed.pattern.mains = 22;
    changed.pattern.crosses = 21;
    changed.pattern.mainsSpanMm = 150;
    changed.pattern.mainsStart = HoopEnd::Head;
    changed.marked = {std::nullopt, lb(2'800)};
    changed.note.forcedSide = ForcedSide{Side::Left, "strip"};
    changed.note.mountingMark = "cap up";
    changed.note.text = "tight at 7H";
    ASSERT_TRUE(frames().update(changed));
    changed.version = 2;
    EXPECT_EQ(frames().get(id), changed);
    EXPECT_THAT(found("pellow fother"), ElementsAre("Pellow Føther"));
    EXPECT_EQ(frames().get(*other.id), other) << "the other one is as it was";

    changed.version = 1;
    const auto stale = frames().update(changed);
    ASSERT_FALSE(stale);
    EXPECT_EQ(stale.error().code(), Code::ChangedMeanwhile);
    changed.id = FrameModelId::of(987'654);
    EXPECT_EQ(frames().update(changed).error().code(), Code::NotFound);
}

TEST_P(FramesTest, AreFoundByEveryWordByName) {
    add("Aldermoor 98");
    add("Aldermoor 110");
    add("Tarn Ridge 100");
    add("Six Word Frame Name For Finding");
    EXPECT_THAT(found("aldermoor"), ElementsAre("Aldermoor 110", "Aldermoor 98"));
    EXPECT_THAT(found("98 ALDER"), ElementsAre("Aldermoor 98"));
    EXPECT_THAT(found("alder", 1), ElementsAre("Aldermoor 110"));
    EXPECT_THAT(found("finding for name frame word six"), ElementsAre("Six Word Frame Name For Finding"));
    EXPECT_THAT(found("six word frame name missing"), IsEmpty());
    EXPECT_THAT(found("%"), IsEmpty());
    EXPECT_THAT(found("1_0"), IsEmpty());
    EXPECT_THAT(found(std::string(60'000, 'a')), IsEmpty());
}

TEST_P(FramesTest, AreNamedInEightyLettersAtMost) {
    EXPECT_EQ(guardOf([&] { add(std::string(80, 'a')); }), "");
    EXPECT_THAT(guardOf([&] { add(std::string(81, 'a')); }), HasSubstr("frame_name"));
    EXPECT_THAT(guardOf([&] { add(std::string(10'000, 'a')); }), HasSubstr("frame_name"));
    FrameModel frame;
    frame.name = "No Mark";
    frame.note.mountingMark = "";
    EXPECT_THAT(guardOf([&] { (void)frames().add(frame); }), HasSubstr("frame_mounting_mark"));
}

TEST_P(FramesTest, HaveOneUsualCutOfEachKind) {
    const auto id = add("Aldermoor 98");
    EXPECT_THAT(frames().usualCuts(id), IsEmpty());
    const auto set = [&](PieceRole role, std::optional<Material> material, const std::string& route, std::int64_t cut,
                         std::optional<Length> shortSide = std::nullopt) {
        frames().setUsualCut({id, role, material, route, mm(cut), shortSide});
    };
    set(PieceRole::Whole, Material::Polyester, "one-piece", 11'200, mm(3'000));
    set(PieceRole::Mains, std::nullopt, "", 6'100);
    set(PieceRole::Crosses, Material::Nylon, "", 5'600);
    set(PieceRole::Mains, Material::Nylon, "", 6'150);
    set(PieceRole::Mains, std::nullopt, "", 6'200); // again: the first one goes
    set(PieceRole::Whole, Material::Polyester, "one-piece", 11'250);

    std::vector<std::string> lines;
    for (const desk::UsualCut& cut : frames().usualCuts(id)) {
        EXPECT_EQ(cut.frame, id);
        lines.push_back(std::string(pieceRoleText(cut.role)) + " " +
                        std::string(cut.material ? materialText(*cut.material) : "any") + " " + cut.route + " " +
                        cut.cut.text() + (cut.shortSide ? " " + cut.shortSide->text() : ""));
    }
    EXPECT_THAT(lines, ElementsAre("mains any  6.2 m", "mains nylon  6.15 m", "crosses nylon  5.6 m",
                                   "whole polyester one-piece 11.25 m"));
    EXPECT_THAT(frames().usualCuts(add("Another")), IsEmpty());
    frames().dropUsualCut({id, PieceRole::Mains, std::nullopt, "", mm(1), std::nullopt});
    ASSERT_EQ(frames().usualCuts(id).size(), 3U);
    EXPECT_EQ(frames().usualCuts(id)[0].material, Material::Nylon) << "that of any material is gone, no other";
}

} // namespace rw::sql::test
