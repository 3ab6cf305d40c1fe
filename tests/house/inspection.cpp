// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/house/inspection.h"

#include <algorithm>
#include <regex>

#include "tests/house/rows.h"
#include "tests/house/source_text.h"

namespace rw::house {
namespace {

constexpr int kMostCodeLines = 500;

std::string folderOf(std::string_view path) {
    const auto slash = path.rfind('/');
    return std::string(slash == std::string_view::npos ? std::string_view() : path.substr(0, slash));
}

std::string stemOf(std::string_view path) {
    const auto slash = path.rfind('/');
    const auto name = slash == std::string_view::npos ? path : path.substr(slash + 1);
    return std::string(name.substr(0, name.find('.')));
}

bool covers(const std::set<std::string>& folders, std::string_view folder) {
    return std::any_of(folders.begin(), folders.end(), [&](const std::string& allowed) {
        return folder == allowed || folder.substr(0, allowed.size() + 1) == allowed + "/";
    });
}

// What is wrong with one include in a file of that row; empty when nothing is.
std::string objection(std::string_view path, const Include& include, const Row& row, const QtHeaders& qt) {
    const std::string& name = include.name;
    if (include.quoted) {
        if (name == stemOf(path) + ".moc") {
            return {};
        }
        static const std::regex kRooted("(app|core|ui|tests)/([a-z0-9_]+/)*[a-z0-9_]+\\.h");
        if (!std::regex_match(name, kRooted)) {
            return "own headers are named from the top of the tree";
        }
        return covers(row.own, folderOf(name)) ? "" : row.folder + " does not stand on " + folderOf(name);
    }
    if (std::regex_search(name, std::regex("^Qt[A-Z][A-Za-z]*/"))) {
        return "Qt headers are named in their short form";
    }
    if (const auto found = qt.find(name); found != qt.end()) {
        const auto& modules = found->second;
        const bool allowed = std::any_of(modules.begin(), modules.end(),
                                         [&](const std::string& module) { return row.qt.count(module) != 0; });
        return allowed ? "" : row.folder + " does not use Qt" + *modules.begin();
    }
    if (std::regex_match(name, std::regex("[a-z_0-9]+"))) {
        return {}; // the standard library
    }
    const bool allowed = std::any_of(row.foreign.begin(), row.foreign.end(), [&](const std::string& beginning) {
        return name.substr(0, beginning.size()) == beginning;
    });
    if (allowed || (row.system && std::regex_match(name, std::regex("([a-z_0-9]+/)?[a-z_0-9]+\\.h")))) {
        return {};
    }
    return row.folder + " does not use this library";
}

// Words that make a test pass without having tested.
void inspectTestWords(std::string_view path, std::string_view code, std::vector<Finding>& findings) {
    static const std::regex kIdle("\\b(QVERIFY2?|QCOMPARE|QTRY_[A-Z0-9_]+|QSKIP|QEXPECT_FAIL|GTEST_SKIP|"
                                  "DISABLED_[A-Za-z0-9_]*|sleep_for|sleep_until|usleep|msleep|qSleep)\\b");
    int number = 0;
    for (auto rest = code; !rest.empty();) {
        ++number;
        const auto end = rest.find('\n');
        const std::string line(rest.substr(0, end));
        rest.remove_prefix(end == std::string_view::npos ? rest.size() : end + 1);
        std::smatch match;
        if (std::regex_search(line, match, kIdle)) {
            findings.push_back(
                {std::string(path), number, match.str() + " in a test: it would pass without testing, or by waiting"});
        }
    }
}

} // namespace

std::string describe(const Finding& finding) {
    const std::string line = finding.line > 0 ? ":" + std::to_string(finding.line) : "";
    return finding.path + line + ": " + finding.what;
}

std::vector<Finding> inspectSource(std::string_view path, std::string_view source, const QtHeaders& qt) {
    std::vector<Finding> findings = inspectLicence(path, source);
    const std::string code = codeOnly(source);
    if (const int lines = codeLines(code); lines > kMostCodeLines) {
        findings.push_back({std::string(path), 0, std::to_string(lines) + " code lines in one file"});
    }
    if (path.substr(0, 6) == "tests/") {
        inspectTestWords(path, code, findings);
    }
    const Row* row = rowOf(path);
    if (row == nullptr) {
        findings.push_back({std::string(path), 0, "no folder of the house has this file"});
        return findings;
    }
    for (const Include& include : includesOf(code)) {
        if (const auto what = objection(path, include, *row, qt); !what.empty()) {
            findings.push_back({std::string(path), include.line, "includes " + include.name + ": " + what});
        }
    }
    return findings;
}

std::vector<Finding> inspectLicence(std::string_view path, std::string_view text) {
    if (text.substr(0, 2) == "#!") {
        const auto end = text.find('\n');
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
    static const std::regex kLicence("(//|#|--) SPDX-License-Identifier: GPL-3\\.0-or-later");
    const std::string first(text.substr(0, text.find('\n')));
    if (std::regex_match(first, kLicence)) {
        return {};
    }
    return {{std::string(path), 1, "the licence line is missing on top"}};
}

} // namespace rw::house
