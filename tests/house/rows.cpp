// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/house/rows.h"

#include <map>

namespace rw::house {
namespace {

using Names = std::set<std::string>;

// The floors of core, lowest first. A folder stands on every floor below its own and on no neighbour.
const std::vector<std::vector<std::string>> kFloors = {
    {"base"},
    {"units", "money", "calendar", "owner"},
    {"frames", "strings", "customers"},
    {"length"},
    {"stock"},
    {"jobs"},
    {"pricing"},
    {"desk"},
    {"sql", "exchange"},
};

// The only arrows between neighbours. They go one way, so the order of the floors stays whole.
const std::map<std::string, Names> kNeighbours = {
    {"money", {"core/units"}},    // an amount is typed with the same decimals as a length
    {"strings", {"core/frames"}}, // a string is sold for a sport
};

// QtCore is let in only where the standard library has nothing: folding names for search, time zones, JSON.
// QtSql is let in at one place, which is also the one that opens files and knows what a disk is.
Names qtOfCore(const std::string& folder) {
    if (folder == "sql") {
        return {"Core", "Sql"};
    }
    if (folder == "customers" || folder == "calendar" || folder == "exchange") {
        return {"Core"};
    }
    return {};
}

Names foreignOfCore(const std::string& folder) {
    Names names = {"tl/expected.hpp", "boost/math/"};
    if (folder == "owner") {
        names.insert("sodium.h"); // password hashes, which nobody should write himself
    }
    if (folder == "sql") {
        names.insert("sqlite3.h"); // the online backup, which Qt's driver does not have
    }
    return names;
}

const Names kPaper = {"ui/text", "ui/drawing", "ui/documents"};

// Above core. What a folder may include of core is kUseCases; this lists what it may include of ui and app.
struct Upper {
    std::string folder;
    Names own;
    Names qt;
};

const std::vector<Upper> kUpper = {
    // paper: sentences and drawings without a widget, because the console program prints them too
    {"ui/text", {}, {"Core", "Gui"}},
    {"ui/drawing", {"ui/text"}, {"Core", "Gui"}},
    {"ui/documents", {"ui/text", "ui/drawing"}, {"Core", "Gui", "Svg"}}, // Svg writes pictures, it opens no window
    // what a station thinks, without a widget, so that it is tested without a window
    {"ui/port", kPaper, {"Core", "Gui"}},
    {"ui/model", kPaper, {"Core", "Gui"}},
    {"ui/presenter", {"ui/text", "ui/drawing", "ui/documents", "ui/model", "ui/port"}, {"Core", "Gui"}},
    // what stations are made of
    {"ui/widgets", {"ui/text", "ui/drawing", "ui/model", "ui/port"}, {"Core", "Gui", "Widgets"}},
    {"ui/charts", {"ui/text", "ui/drawing", "ui/model"}, {"Core", "Gui", "Widgets", "Charts"}},
    // where the world outside is reached
    {"ui/qtport", {"ui/text", "ui/documents", "ui/port", "ui/widgets"}, {"Core", "Gui", "Widgets", "PrintSupport"}},
};

const Names kStations = {"ui/counter", "ui/bench", "ui/stockroom", "ui/books"};
const Names kForStations = {"ui/text", "ui/drawing",   "ui/documents", "ui/model",
                            "ui/port", "ui/presenter", "ui/widgets",   "ui/charts"};

std::vector<Row> makeRows() {
    std::vector<Row> all;
    Names below;
    for (const auto& floor : kFloors) {
        for (const auto& folder : floor) {
            Row row{"core/" + folder, below, qtOfCore(folder), foreignOfCore(folder), folder == "sql"};
            row.own.insert(row.folder);
            if (const auto found = kNeighbours.find(folder); found != kNeighbours.end()) {
                row.own.insert(found->second.begin(), found->second.end());
            }
            all.push_back(std::move(row));
        }
        for (const auto& folder : floor) {
            below.insert("core/" + folder);
        }
    }
    const Names allOfCore = below;
    Names useCases = below; // values and use cases: the ledger's engine and its formats are chosen in app
    useCases.erase("core/sql");
    useCases.erase("core/exchange");

    const auto upper = [&](const std::string& folder, const Names& own, const Names& qt) {
        Row row{folder, useCases, qt, {"tl/expected.hpp"}};
        row.own.insert(own.begin(), own.end());
        row.own.insert(folder);
        return row;
    };
    Names everything = allOfCore;
    for (const auto& [folder, own, qt] : kUpper) {
        all.push_back(upper(folder, own, qt));
        if (folder == "ui/documents") {
            all.back().foreign.insert("qrencode.h"); // the code on a tag, by its standard
        }
        everything.insert(folder);
    }
    for (const auto& station : kStations) {
        all.push_back(upper(station, kForStations, {"Core", "Gui", "Widgets"}));
        everything.insert(station);
    }
    Names forShell = kForStations;
    forShell.insert(kStations.begin(), kStations.end());
    all.push_back(upper("ui/shell", forShell, {"Core", "Gui", "Widgets"}));
    everything.insert("ui/shell");

    Row app{"app", everything, {"Core", "Gui", "Widgets"}, {"tl/expected.hpp"}, true};
    app.own.insert("app");
    all.push_back(app);

    // Tests may look anywhere, except that what is tested without a window is tested without a window.
    everything.insert("app");
    everything.insert("tests");
    const Names testTools = {"gtest/", "gmock/", "tl/expected.hpp", "boost/math/"};
    const auto tests = [&](const std::string& folder, const Names& qt, Names foreign) {
        foreign.insert(testTools.begin(), testTools.end());
        return Row{folder, everything, qt, foreign, true};
    };
    const Names onEveryEngine = {"Core", "Sql"};
    const Names withWindows = {"Core", "Sql", "Gui", "Widgets", "Svg", "PrintSupport", "Test"};
    all.push_back(tests("tests/house", {}, {}));
    all.push_back(tests("tests/core", {"Core"}, {}));
    all.push_back(tests("tests/core/stock", {"Core"}, {"glpk.h"})); // what the planner's plans are held against
    all.push_back(tests("tests/core/sql", onEveryEngine, {"sqlite3.h"}));
    all.push_back(tests("tests/sql", onEveryEngine, {"sqlite3.h"}));
    all.push_back(tests("tests/core/desk", onEveryEngine, {}));
    all.push_back(tests("tests/ui", withWindows, {}));
    all.push_back(tests("tests/app", withWindows, {}));
    all.push_back(tests("tests/stories", withWindows, {}));
    all.push_back(tests("tests/bench", withWindows, {"benchmark/", "sqlite3.h"}));
    return all;
}

} // namespace

const std::vector<Row>& rows() {
    static const std::vector<Row> kRows = makeRows();
    return kRows;
}

const Row* rowOf(std::string_view path) {
    const Row* best = nullptr;
    for (const Row& row : rows()) {
        const bool inside = path.size() > row.folder.size() && path.substr(0, row.folder.size()) == row.folder &&
                            path[row.folder.size()] == '/';
        if (inside && (best == nullptr || row.folder.size() > best->folder.size())) {
            best = &row;
        }
    }
    return best;
}

const std::set<std::string>& topLevel() {
    static const std::set<std::string> kNames = {"CMakeLists.txt", "README.md", "DEVELOPERS.md", "LICENSE", "app",
                                                 "core",           "ui",        "migrations",    "tests",   "resources",
                                                 "packaging"};
    return kNames;
}

} // namespace rw::house
