// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/check/schema_promise.h"

#include "core/sql/sql_scanner.h"

#include <algorithm>
#include <array>
#include <cctype>

namespace rw::sql {

namespace {

constexpr std::array<std::string_view, 5> kKinds = {"table", "view", "index", "trigger", "function"};

std::string lower(std::string_view text) {
    std::string result(text);
    std::transform(result.begin(), result.end(), result.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return result;
}

/// The words of a statement in lower case, and the last text in dollars that it quotes.
struct Words {
    std::vector<std::string> words;
    std::string body;

    explicit Words(std::string_view statement) {
        for (const SqlToken& token : scanSql(statement, Dialect::Postgres)) {
            if (token.kind == SqlToken::Kind::Word) {
                words.push_back(lower(token.text));
            } else if (token.kind == SqlToken::Kind::Quoted && token.text.starts_with('$')) {
                const auto tag = token.text.find('$', 1) + 1;
                body = token.text.substr(tag, token.text.size() - 2 * tag);
            }
        }
    }
    /// The kind that is made or dropped, past OR REPLACE and UNIQUE, and the name after it, past IF EXISTS.
    [[nodiscard]] std::pair<std::string, std::string> subject() const {
        for (std::size_t i = 1; i < words.size() && i < 5; ++i) {
            if (std::find(kKinds.begin(), kKinds.end(), words[i]) == kKinds.end()) {
                continue;
            }
            auto name = i + 1;
            while (name < words.size() && (words[name] == "if" || words[name] == "not" || words[name] == "exists")) {
                ++name;
            }
            if (name < words.size()) {
                return {words[i], words[name]};
            }
        }
        return {};
    }
};

void follow(const Words& statement, SchemaPromise& promise) {
    const auto& words = statement.words;
    if (words.empty()) {
        return;
    }
    const auto subject = statement.subject();
    if (words.front() == "create" && !subject.first.empty()) {
        promise[subject] = subject.first == "function" ? statement.body : "on";
    } else if (words.front() == "drop" && !subject.first.empty()) {
        promise.erase(subject);
    }
    if (words.front() != "create" && words.front() != "alter") {
        return;
    }
    for (std::size_t i = 1; i + 1 < words.size(); ++i) {
        if (words[i] != "constraint" || (words.front() == "create" && subject.first != "table")) {
            continue;
        }
        if (words[i - 1] == "drop") {
            promise.erase({"constraint", words[i + 1]});
        } else {
            promise[{"constraint", words[i + 1]}] = "on";
        }
    }
}

} // namespace

SchemaPromise promisedSchema(const std::vector<Migration>& steps) {
    SchemaPromise promise;
    for (const auto& step : steps) {
        for (const auto& statement : step.statements) {
            follow(Words(statement), promise);
        }
    }
    return promise;
}

} // namespace rw::sql
