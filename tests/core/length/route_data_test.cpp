// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/length/cut_plan.h"
#include "core/length/route_template.h"
#include "tests/core/length/requests.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <gtest/gtest.h>

#include <set>

using namespace rw;
using namespace rw::length;

namespace {

/// One route of the traced data, for one pattern. Each was traced string by string; short side on the left.
struct Traced {
    Pattern pattern;
    std::string name;
    std::vector<std::string> shortSide;
    std::vector<std::string> longSide;
    std::string shortEnds;
    std::string longEnds;
};

std::vector<std::string> lines(const QJsonValue& value) {
    std::vector<std::string> lines;
    for (const auto& line : value.toArray()) {
        lines.push_back(line.toString().toStdString());
    }
    return lines;
}

std::vector<Traced> readTraced() {
    QFile file(QStringLiteral(LENGTH_TEST_DATA "/routes.json"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    std::vector<Traced> traced;
    const QJsonArray patterns = QJsonDocument::fromJson(file.readAll()).object()[QStringLiteral("patterns")].toArray();
    for (const auto& entry : patterns) {
        const QJsonObject object = entry.toObject();
        Pattern pattern;
        pattern.mains = object[QStringLiteral("mains")].toInt();
        pattern.crosses = object[QStringLiteral("crosses")].toInt();
        pattern.mainsStart =
            object[QStringLiteral("mainsStart")].toString() == QStringLiteral("head") ? HoopEnd::Head : HoopEnd::Throat;
        const QJsonObject routes = object[QStringLiteral("routes")].toObject();
        for (const QString& name : routes.keys()) {
            const QJsonObject route = routes[name].toObject();
            traced.push_back({pattern, name.toStdString(), lines(route[QStringLiteral("short")]),
                              lines(route[QStringLiteral("long")]),
                              route[QStringLiteral("shortEnds")].toString().toStdString(),
                              route[QStringLiteral("longEnds")].toString().toStdString()});
        }
    }
    return traced;
}

std::vector<std::string> written(const Arm& arm) {
    std::vector<std::string> lines;
    for (const LaidString& string : arm.strings) {
        lines.push_back(string.id.text() + " to " + std::string(runsToText(string.to)));
    }
    return lines;
}

CutPlan planOf(const Traced& traced, Side shortSide) {
    CutRequest request = inOnePiece(defaultRequest(Sport::Tennis), traced.name);
    request.pattern = traced.pattern;
    request.shortSide = shortSide;
    return planCut(request).value();
}

std::string mirrored(std::string line) {
    if (line.starts_with("X")) {
        const bool left = line.ends_with("left");
        line.replace(line.find(" to "), std::string::npos, left ? " to right" : " to left");
        return line;
    }
    char& side = line[line.find(' ') - 1];
    side = side == 'L' ? 'R' : 'L';
    return line;
}

// The traced routes made for this project: routes string by string, for three patterns from both ends.
TEST(TracedRoutes, AreLaidInThatOrderEndingWhereTheySay) {
    const std::vector<Traced> all = readTraced();
    ASSERT_EQ(all.size(), 36U);
    for (const Traced& traced : all) {
        SCOPED_TRACE(traced.name + " " + std::to_string(traced.pattern.mains));
        const CutPlan plan = planOf(traced, Side::Left);
        ASSERT_EQ(plan.pieces.size(), 1U);
        ASSERT_EQ(plan.pieces[0].arms.size(), 2U);
        EXPECT_EQ(written(plan.pieces[0].arms[0]), traced.shortSide);
        EXPECT_EQ(written(plan.pieces[0].arms[1]), traced.longSide);
        EXPECT_EQ(plan.pieces[0].arms[0].endsAtText(), traced.shortEnds);
        EXPECT_EQ(plan.pieces[0].arms[1].endsAtText(), traced.longEnds);
    }
}

TEST(TracedRoutes, AreMirroredForTheOtherSide) {
    for (const Traced& traced : readTraced()) {
        SCOPED_TRACE(traced.name + " " + std::to_string(traced.pattern.mains));
        std::vector<std::string> shortSide = traced.shortSide;
        std::vector<std::string> longSide = traced.longSide;
        std::ranges::transform(shortSide, shortSide.begin(), mirrored);
        std::ranges::transform(longSide, longSide.begin(), mirrored);
        const CutPlan plan = planOf(traced, Side::Right);
        EXPECT_EQ(written(plan.pieces[0].arms[0]), shortSide);
        EXPECT_EQ(written(plan.pieces[0].arms[1]), longSide);
    }
}

TEST(TracedRoutes, EveryTemplateIsAmongThem) {
    std::set<std::string, std::less<>> names;
    for (const Traced& traced : readTraced()) {
        names.insert(traced.name);
    }
    for (const RouteTemplate& route : routeTemplates()) {
        EXPECT_TRUE(names.contains(route.name)) << route.name;
    }
    EXPECT_EQ(names.size(), routeTemplates().size());
}

TEST(TracedRoutes, DoNotFitFromTheOtherEnd) {
    for (const Traced& traced : readTraced()) {
        CutRequest request = inOnePiece(defaultRequest(Sport::Tennis), traced.name);
        request.pattern = traced.pattern;
        request.pattern.mainsStart = otherEnd(*traced.pattern.mainsStart);
        const auto plan = planCut(request);
        ASSERT_FALSE(plan) << traced.name;
        EXPECT_EQ(plan.error().code(), Code::RouteDoesNotFit);
    }
}

TEST(TracedRoutes, AnUnknownStartEndIsTheOneTheRouteNeeds) {
    for (const Traced& traced : readTraced()) {
        CutRequest request = inOnePiece(defaultRequest(Sport::Tennis), traced.name);
        request.pattern = traced.pattern;
        request.pattern.mainsStart.reset();
        const CutPlan plan = planCut(request).value();
        EXPECT_EQ(plan.mainsStart, *traced.pattern.mainsStart) << traced.name;
        EXPECT_EQ(written(plan.pieces[0].arms[1]), traced.longSide);
    }
}

} // namespace
