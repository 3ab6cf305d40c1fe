// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/json_object_reader.h"

#include "core/exchange/strict_json.h"

#include <algorithm>
#include <cmath>

namespace rw::exchange {

namespace {
std::string listed(std::span<const std::string_view> words, std::string_view beforeLast) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0) {
            text += i + 1 == words.size() ? beforeLast : ", ";
        }
        text += words[i];
    }
    return text;
}

QString inQt(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }
} // namespace

std::string oneOfThese(std::span<const std::string_view> words) { return listed(words, " or "); }

std::string_view withoutBlanksAround(std::string_view text) {
    constexpr std::string_view kBlanks = " \t\r\n";
    const std::size_t begin = text.find_first_not_of(kBlanks);
    return begin == std::string_view::npos ? std::string_view()
                                           : text.substr(begin, text.find_last_not_of(kBlanks) + 1 - begin);
}

JsonObjectReader::JsonObjectReader(const QJsonObject& object, std::string path, std::span<const std::string_view> known)
    : m_object(object)
    , m_path(std::move(path)) {
    for (const QString& key : object.keys()) {
        const std::string name = key.toStdString();
        if (std::ranges::find(known, name) == known.end()) {
            m_result = refuse(Code::UnknownKey, {{"key", keyPath(m_path, name)}, {"known", listed(known, ", ")}});
            return;
        }
    }
}

bool JsonObjectReader::has(std::string_view key) const { return m_object.contains(inQt(key)); }

std::optional<QJsonValue> JsonObjectReader::value(std::string_view key) const {
    const auto found = m_object.constFind(inQt(key));
    if (!m_result || found == m_object.constEnd()) {
        return std::nullopt;
    }
    return QJsonValue(*found);
}

void JsonObjectReader::wrongType(std::string_view key, std::string_view expected) {
    m_result = refuse(Code::WrongType, {{"key", keyPath(m_path, key)}, {"expected", std::string(expected)}});
}

void JsonObjectReader::refuseValue(std::string_view key, std::string text, std::string expected) {
    m_result = refuse(Code::ImpossibleValue,
                      {{"key", keyPath(m_path, key)}, {"text", std::move(text)}, {"expected", std::move(expected)}});
}

void JsonObjectReader::number(std::string_view key, double& into) {
    if (const auto found = value(key)) {
        if (!found->isDouble()) {
            wrongType(key, "a number");
            return;
        }
        into = found->toDouble();
    }
}

void JsonObjectReader::number(std::string_view key, std::optional<double>& into) {
    if (value(key)) {
        double read = 0;
        number(key, read);
        into = read;
    }
}

void JsonObjectReader::whole(std::string_view key, int& into) {
    double read = into;
    number(key, read);
    constexpr double kMost = 1e9;
    if (m_result && (read != std::floor(read) || std::abs(read) > kMost)) {
        wrongType(key, "a whole number of ordinary size");
        return;
    }
    into = static_cast<int>(read);
}

void JsonObjectReader::yesNo(std::string_view key, bool& into) {
    if (const auto found = value(key)) {
        if (!found->isBool()) {
            wrongType(key, "true or false");
            return;
        }
        into = found->toBool();
    }
}

void JsonObjectReader::text(std::string_view key, std::optional<std::string>& into, std::string_view expected) {
    if (const auto found = value(key)) {
        if (!found->isString()) {
            wrongType(key, expected);
            return;
        }
        into = found->toString().toStdString();
    }
}

void JsonObjectReader::object(std::string_view key, std::span<const std::string_view> known,
                              const std::function<void(JsonObjectReader&)>& read) {
    const auto found = value(key);
    if (!found) {
        return;
    }
    if (!found->isObject()) {
        wrongType(key, "an object in braces");
        return;
    }
    JsonObjectReader inner(found->toObject(), keyPath(m_path, key), known);
    read(inner);
    m_result = inner.m_result;
}

} // namespace rw::exchange
