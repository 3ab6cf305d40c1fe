// SPDX-License-Identifier: GPL-3.0-or-later
// Holds the tree itself to the rows of rows.cpp. argv: the top of the tree, Qt's include folder.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <set>

#include "tests/house/inspection.h"
#include "tests/house/rows.h"

namespace rw::house {
namespace {

namespace fs = std::filesystem;

fs::path g_tree;
fs::path g_qtIncludes;

std::string textOf(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

// Paths from the top of the tree, in order.
std::vector<std::string> filesBelow(const std::string& folder) {
    std::vector<std::string> paths;
    if (fs::exists(g_tree / folder)) {
        for (const auto& entry : fs::recursive_directory_iterator(g_tree / folder)) {
            if (entry.is_regular_file()) {
                paths.push_back(entry.path().lexically_relative(g_tree).generic_string());
            }
        }
    }
    std::sort(paths.begin(), paths.end());
    return paths;
}

bool isSource(const fs::path& path) { return path.extension() == ".h" || path.extension() == ".cpp"; }

void report(const std::vector<Finding>& findings) {
    for (const Finding& finding : findings) {
        ADD_FAILURE() << describe(finding);
    }
}

TEST(House, EveryFileKeepsToItsRow) {
    const QtHeaders qt = readQtHeaders(g_qtIncludes);
    ASSERT_EQ(qt.at("QString"), std::set<std::string>{"Core"});
    int files = 0;
    for (const char* folder : {"app", "core", "ui", "tests"}) {
        for (const auto& path : filesBelow(folder)) {
            if (isSource(path)) {
                report(inspectSource(path, textOf(g_tree / path), qt));
                ++files;
            }
        }
    }
    EXPECT_GT(files, 30) << "the tree was not found at " << g_tree;
}

TEST(House, SourcesAreNamedInOneWay) {
    for (const char* folder : {"app", "core", "ui", "tests"}) {
        for (const auto& path : filesBelow(folder)) {
            const auto extension = fs::path(path).extension();
            EXPECT_FALSE(extension == ".hpp" || extension == ".cc" || extension == ".cxx" || extension == ".hh")
                << path;
            EXPECT_TRUE(std::none_of(path.begin(), path.end(), [](char c) { return c >= 'A' && c <= 'Z'; }) ||
                        !isSource(path))
                << path << ": a file is named as its class in snake_case";
        }
    }
}

TEST(House, BuildFilesAndScriptsCarryTheLicence) {
    std::vector<std::string> paths = {"CMakeLists.txt"};
    for (const char* folder : {"app", "core", "ui", "tests", "migrations", "packaging", ".ci"}) {
        const auto below = filesBelow(folder);
        paths.insert(paths.end(), below.begin(), below.end());
    }
    for (const auto& path : paths) {
        const std::string text = textOf(g_tree / path);
        if (fs::path(path).filename() == "CMakeLists.txt" || fs::path(path).extension() == ".cmake" ||
            text.substr(0, 2) == "#!") {
            report(inspectLicence(path, text));
        }
    }
}

// A page that shows a picture which is not there shows a hole; a picture that no page shows is only weight.
TEST(House, ThePicturesOfTheGuideAreThereAndAreShown) {
    const std::regex picture(R"(!\[[^\]]+\]\(([^)]+)\))");
    const std::uintmax_t heaviest = 150'000; // they lie in the program and in everybody's checkout
    std::set<std::string> shown;
    auto pages = filesBelow("resources/guide");
    pages.emplace_back("README.md");
    for (const auto& page : pages) {
        if (fs::path(page).extension() != ".md") {
            continue;
        }
        const std::string text = textOf(g_tree / page);
        for (std::sregex_iterator found(text.begin(), text.end(), picture), end; found != end; ++found) {
            const auto path = (fs::path(page).parent_path() / (*found)[1].str()).lexically_normal();
            shown.insert(path.generic_string());
            ASSERT_TRUE(fs::exists(g_tree / path)) << page << " shows " << path;
            EXPECT_LE(fs::file_size(g_tree / path), heaviest) << path;
        }
    }
    const auto there = filesBelow("resources/guide/pictures");
    EXPECT_FALSE(there.empty());
    EXPECT_EQ(shown, std::set<std::string>(there.begin(), there.end()));
}

TEST(House, TheTopLevelIsFixed) {
    for (const auto& entry : fs::directory_iterator(g_tree)) {
        const std::string name = entry.path().filename().string();
        const bool ignored = name.front() == '.' || name.substr(0, 5) == "build" || name == "compile_commands.json";
        EXPECT_TRUE(ignored || topLevel().count(name) != 0) << name << " has no place at the top";
    }
}

} // namespace
} // namespace rw::house

int main(int argc, char** argv) {
    testing::InitGoogleTest(&argc, argv);
    if (argc == 3) {
        rw::house::g_tree = argv[1];
        rw::house::g_qtIncludes = argv[2];
    }
    return RUN_ALL_TESTS();
}
