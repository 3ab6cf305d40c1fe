// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/clock.h"
#include "core/base/result.h"
#include "core/units/length.h"

#include <QJsonArray>
#include <QJsonObject>

#include <algorithm>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace rw::exchange {

/// A word of a file and what it stands for.
template<class T>
struct Choice {
    std::string_view word;
    T value;
};

/// What a file calls something of its own: text, or a whole number that stands for itself.
struct Label {
    std::string text;
    bool isNumber = false;
};

/// Reads one JSON object key by key into values that keep what they have when the key is left out. The first thing
/// that is wrong is kept and told by result(); after it nothing more is read.
class JsonObjectReader {
public:
    /// `path` is where the object stands, "" at the top. Every key must be among `known`: UnknownKey {key, known}.
    JsonObjectReader(const QJsonObject& object, std::string path, std::span<const std::string_view> known);

    void number(std::string_view key, double& into);
    void number(std::string_view key, std::optional<double>& into);
    void whole(std::string_view key, int& into);
    void yesNo(std::string_view key, bool& into);
    void text(std::string_view key, std::optional<std::string>& into, std::string_view expected = "text in quotes");
    /// A number within these two, or ImpossibleValue {key, text, expected: "0 to 100"}.
    void numberWithin(std::string_view key, double lowest, double highest, double& into);
    /// The same in whole millimetres.
    void length(std::string_view key, Length lowest, Length highest, Length& into);
    /// A label of at most 100 characters; null stands for none.
    void label(std::string_view key, std::optional<Label>& into);
    /// A date as 2026-03-12; null stands for none.
    void date(std::string_view key, std::optional<CivilDate>& into);
    /// A date, or a moment as 2026-03-12T10:05 (UTC unless a zone is written); null stands for none.
    void moment(std::string_view key, std::optional<Instant>& into);
    /// ImpossibleValue {key, text, expected: "one of ..."} for a word that is not a choice; of a choice with blanks
    /// around it, which nobody sees in a sentence, it says so.
    template<class T>
    void oneOf(std::string_view key, std::span<const Choice<T>> choices, T& into);
    /// An object inside this one; `read` is called with its reader when the key is there.
    void object(std::string_view key, std::span<const std::string_view> known,
                const std::function<void(JsonObjectReader&)>& read);
    /// A list of at most `most` objects; `read` is called with the reader of each, whose path is "lots[0]".
    void objects(std::string_view key, std::span<const std::string_view> known, std::size_t most,
                 const std::function<void(JsonObjectReader&)>& read);
    /// A list of at most `most` numbers within these two.
    void numbersWithin(std::string_view key, std::size_t most, double lowest, double highest,
                       std::vector<double>& into);
    /// A list of at most `most` texts; left alone when the key is left out.
    void texts(std::string_view key, std::size_t most, std::vector<std::string>& into);
    /// A list of exactly two numbers.
    void twoNumbers(std::string_view key, double& first, double& second);
    /// An object of at most `most` members, which are objects under names of their own; `read` is called with the name
    /// and the reader of each, whose path is "points.1L".
    void members(std::string_view key, std::span<const std::string_view> known, std::size_t most,
                 const std::function<void(const std::string&, JsonObjectReader&)>& read);
    /// Missing {what} when the key is not there.
    void need(std::string_view key);
    /// Narrows what is known: UnknownKey {key, known} for another key.
    void only(std::span<const std::string_view> known);
    /// ImpossibleValue {key, expected} for the object as a whole.
    void refuseWhole(std::string expected);

    [[nodiscard]] bool has(std::string_view key) const;
    void refuseValue(std::string_view key, std::string text, std::string expected);
    [[nodiscard]] const Result<void>& result() const { return m_result; }

private:
    /// The value when it is there and nothing was wrong so far.
    [[nodiscard]] std::optional<QJsonValue> value(std::string_view key) const;
    void wrongType(std::string_view key, std::string_view expected);
    [[nodiscard]] std::optional<std::string> textOrNull(std::string_view key, std::string_view expected);
    void readInner(const QJsonValue& value, const std::string& place, std::span<const std::string_view> known,
                   const std::function<void(JsonObjectReader&)>& read);
    [[nodiscard]] std::optional<QJsonArray> list(std::string_view key, std::size_t most);

    QJsonObject m_object;
    std::string m_path;
    Result<void> m_result;
};

/// "a, b or c".
[[nodiscard]] std::string oneOfThese(std::span<const std::string_view> words);

[[nodiscard]] std::string_view withoutBlanksAround(std::string_view text);

template<class T>
void JsonObjectReader::oneOf(std::string_view key, std::span<const Choice<T>> choices, T& into) {
    std::optional<std::string> word;
    text(key, word);
    if (!word) {
        return;
    }
    std::vector<std::string_view> words;
    for (const Choice<T>& choice : choices) {
        if (choice.word == *word) {
            into = choice.value;
            return;
        }
        words.push_back(choice.word);
    }
    const bool blanksAround = std::ranges::find(words, withoutBlanksAround(*word)) != words.end();
    refuseValue(key, *word, oneOfThese(words) + (blanksAround ? ", with no blank before or behind it" : ""));
}

} // namespace rw::exchange
