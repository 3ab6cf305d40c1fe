// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/json_object_reader.h"

#include "core/calendar/civil_date_text.h"
#include "core/exchange/strict_json.h"

#include <QDateTime>

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

std::optional<Instant> instantFromText(const std::string& text) {
    if (const auto date = civilDateFromText(text)) {
        return std::chrono::sys_days(*date);
    }
    QDateTime moment = QDateTime::fromString(inQt(text), Qt::ISODate);
    if (!moment.isValid() || text.find('T') == std::string::npos) {
        return std::nullopt;
    }
    if (moment.timeSpec() == Qt::LocalTime) {
        moment.setTimeSpec(Qt::UTC);
    }
    return Instant(std::chrono::milliseconds(moment.toMSecsSinceEpoch()));
}

std::string entryPath(std::string_view list, qsizetype at) {
    return std::string(list) + "[" + std::to_string(at) + "]";
}

std::string plainNumber(double value) {
    constexpr int kDigits = 12;
    return QString::number(value, 'g', kDigits).toStdString();
}

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
    only(known);
}

void JsonObjectReader::only(std::span<const std::string_view> known) {
    for (const QString& key : m_object.keys()) {
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

void JsonObjectReader::numberWithin(std::string_view key, double lowest, double highest, double& into) {
    number(key, into);
    if (m_result && !(lowest <= into && into <= highest)) {
        refuseValue(key, plainNumber(into), plainNumber(lowest) + " to " + plainNumber(highest));
    }
}

void JsonObjectReader::length(std::string_view key, Length lowest, Length highest, Length& into) {
    int read = static_cast<int>(into.millimetres());
    whole(key, read);
    const Length length = Length::fromMillimetres(read);
    if (m_result && (length < lowest || length > highest)) {
        refuseValue(key, std::to_string(read),
                    std::to_string(lowest.millimetres()) + " to " + std::to_string(highest.millimetres()));
    }
    into = length;
}

void JsonObjectReader::label(std::string_view key, std::optional<Label>& into) {
    constexpr std::size_t kMost = 100;
    const auto found = value(key);
    if (!found || found->isNull()) {
        return;
    }
    if (found->isDouble()) {
        int read = 0;
        whole(key, read);
        into = Label{std::to_string(read), true};
        return;
    }
    std::optional<std::string> read;
    text(key, read, "text in quotes or a whole number");
    if (read && (read->empty() || read->size() > kMost)) {
        refuseValue(key, *read, "1 to " + std::to_string(kMost) + " characters");
    } else if (read) {
        into = Label{*read, false};
    }
}

std::optional<std::string> JsonObjectReader::textOrNull(std::string_view key, std::string_view expected) {
    std::optional<std::string> read;
    if (const auto found = value(key); found && !found->isNull()) {
        text(key, read, expected);
    }
    return read;
}

void JsonObjectReader::date(std::string_view key, std::optional<CivilDate>& into) {
    if (const auto read = textOrNull(key, "a date in quotes")) {
        into = civilDateFromText(*read);
        if (!into) {
            refuseValue(key, *read, "a date such as 2026-03-12");
        }
    }
}

void JsonObjectReader::moment(std::string_view key, std::optional<Instant>& into) {
    if (const auto read = textOrNull(key, "a date in quotes")) {
        into = instantFromText(*read);
        if (!into) {
            refuseValue(key, *read, "a date such as 2026-03-12, or a moment such as 2026-03-12T10:05");
        }
    }
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

void JsonObjectReader::readInner(const QJsonValue& value, const std::string& place,
                                 std::span<const std::string_view> known,
                                 const std::function<void(JsonObjectReader&)>& read) {
    if (!value.isObject()) {
        wrongType(place, "an object in braces");
        return;
    }
    JsonObjectReader inner(value.toObject(), keyPath(m_path, place), known);
    if (inner.m_result) {
        read(inner);
    }
    m_result = inner.m_result;
}

void JsonObjectReader::object(std::string_view key, std::span<const std::string_view> known,
                              const std::function<void(JsonObjectReader&)>& read) {
    if (const auto found = value(key)) {
        readInner(*found, std::string(key), known, read);
    }
}

void JsonObjectReader::members(std::string_view key, std::span<const std::string_view> known, std::size_t most,
                               const std::function<void(const std::string&, JsonObjectReader&)>& read) {
    const auto found = value(key);
    if (!found) {
        return;
    }
    const QJsonObject all = found->toObject();
    if (!found->isObject()) {
        wrongType(key, "an object in braces");
    } else if (all.size() > static_cast<qsizetype>(most)) {
        refuseValue(key, std::to_string(all.size()) + " entries", "at most " + std::to_string(most));
    }
    for (auto member = all.begin(); m_result && member != all.end(); ++member) {
        const std::string name = member.key().toStdString();
        readInner(member.value(), keyPath(key, name), known, [&](JsonObjectReader& inner) { read(name, inner); });
    }
}

std::optional<QJsonArray> JsonObjectReader::list(std::string_view key, std::size_t most) {
    const auto found = value(key);
    if (!found) {
        return std::nullopt;
    }
    if (!found->isArray()) {
        wrongType(key, "a list in square brackets");
        return std::nullopt;
    }
    const QJsonArray all = found->toArray();
    if (all.size() > static_cast<qsizetype>(most)) {
        refuseValue(key, std::to_string(all.size()) + " entries", "at most " + std::to_string(most));
        return std::nullopt;
    }
    return all;
}

void JsonObjectReader::objects(std::string_view key, std::span<const std::string_view> known, std::size_t most,
                               const std::function<void(JsonObjectReader&)>& read) {
    const auto all = list(key, most);
    for (qsizetype i = 0; all && m_result && i < all->size(); ++i) {
        readInner(all->at(i), entryPath(key, i), known, read);
    }
}

void JsonObjectReader::texts(std::string_view key, std::size_t most, std::vector<std::string>& into) {
    const auto all = list(key, most);
    for (qsizetype i = 0; all && i < all->size(); ++i) {
        if (!all->at(i).isString()) {
            wrongType(entryPath(key, i), "text in quotes");
            return;
        }
        into.push_back(all->at(i).toString().toStdString());
    }
}

void JsonObjectReader::twoNumbers(std::string_view key, double& first, double& second) {
    const auto all = list(key, 2);
    if (!all) {
        return;
    }
    if (all->size() != 2 || !all->at(0).isDouble() || !all->at(1).isDouble()) {
        wrongType(key, "two numbers in square brackets");
        return;
    }
    first = all->at(0).toDouble();
    second = all->at(1).toDouble();
}

void JsonObjectReader::numbersWithin(std::string_view key, std::size_t most, double lowest, double highest,
                                     std::vector<double>& into) {
    const auto all = list(key, most);
    if (!all) {
        return;
    }
    into.clear();
    for (qsizetype i = 0; i < all->size(); ++i) {
        const std::string place = entryPath(key, i);
        if (!all->at(i).isDouble()) {
            wrongType(place, "a number");
            return;
        }
        const double number = all->at(i).toDouble();
        if (!(lowest <= number && number <= highest)) {
            refuseValue(place, plainNumber(number), plainNumber(lowest) + " to " + plainNumber(highest));
            return;
        }
        into.push_back(number);
    }
}

void JsonObjectReader::need(std::string_view key) {
    if (m_result && !has(key)) {
        m_result = refuse(Code::Missing, {{"what", "key " + keyPath(m_path, key)}});
    }
}

void JsonObjectReader::refuseWhole(std::string expected) {
    m_result = refuse(Code::ImpossibleValue, {{"key", m_path}, {"expected", std::move(expected)}});
}

} // namespace rw::exchange
