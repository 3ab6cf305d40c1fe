// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/strict_json.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <algorithm>
#include <optional>
#include <vector>

namespace rw::exchange {

namespace {
constexpr std::size_t kMostBytes = 1'000'000; // a request is a few hundred

/// Walks over text that is known to be JSON and finds a key that stands twice in its object.
class RepeatedKey {
public:
    explicit RepeatedKey(std::string_view json)
        : m_json(json) {}

    std::optional<std::string> find() {
        while (m_at < m_json.size()) {
            switch (m_json[m_at]) {
            case '{':
            case '[':
                m_open.push_back({m_json[m_at] == '{', m_lastKey, {}});
                m_lastKey.clear();
                ++m_at;
                break;
            case '}':
            case ']':
                m_open.pop_back();
                ++m_at;
                break;
            case '"':
                if (auto repeated = readText()) {
                    return repeated;
                }
                break;
            default:
                ++m_at;
            }
        }
        return std::nullopt;
    }

private:
    struct Level {
        bool isObject;
        std::string name;
        std::vector<std::string> keys;
    };

    std::optional<std::string> readText() {
        const std::size_t begin = m_at++;
        while (m_json[m_at] != '"') {
            m_at += m_json[m_at] == '\\' ? 2 : 1;
        }
        const std::string_view quoted = m_json.substr(begin, ++m_at - begin);
        const std::size_t next = m_json.find_first_not_of(" \t\r\n", m_at);
        if (next == std::string_view::npos || m_json[next] != ':') {
            return std::nullopt;
        }
        Level& level = m_open.back();
        const std::string key = plainText(quoted);
        if (std::ranges::find(level.keys, key) != level.keys.end()) {
            std::string path;
            for (const Level& outer : m_open) {
                path = outer.name.empty() ? path : keyPath(path, outer.name);
            }
            return keyPath(path, key);
        }
        level.keys.push_back(key);
        m_lastKey = key;
        return std::nullopt;
    }

    /// A key may be written with escapes: "a" is "\u0061".
    static std::string plainText(std::string_view quoted) {
        const std::string inArray = '[' + std::string(quoted) + ']';
        return QJsonDocument::fromJson(QByteArray::fromStdString(inArray)).array().at(0).toString().toStdString();
    }

    std::string_view m_json;
    std::size_t m_at = 0;
    std::string m_lastKey;
    std::vector<Level> m_open;
};

tl::unexpected<Refusal> unreadable(std::string reason) {
    return refuse(Code::FileUnreadable, {{"file", "the input"}, {"reason", std::move(reason)}});
}
} // namespace

std::string keyPath(std::string_view object, std::string_view key) {
    return object.empty() ? std::string(key) : std::string(object) + '.' + std::string(key);
}

Result<QJsonObject> parseStrictObject(std::string_view utf8) {
    if (utf8.size() > kMostBytes) {
        return unreadable("it is larger than 1 MB");
    }
    if (utf8.find_first_not_of(" \t\r\n") == std::string_view::npos) {
        return unreadable("it is empty");
    }
    QJsonParseError error{};
    const QByteArray bytes(utf8.data(), static_cast<qsizetype>(utf8.size()));
    const QJsonDocument document = QJsonDocument::fromJson(bytes, &error);
    if (error.error != QJsonParseError::NoError) {
        return unreadable("it is not JSON (" + error.errorString().toStdString() + " at byte " +
                          std::to_string(error.offset) + ")");
    }
    if (!document.isObject()) {
        return refuse(Code::WrongType, {{"key", "the input"}, {"expected", "one object in braces"}});
    }
    if (const auto repeated = RepeatedKey(utf8).find()) {
        return refuse(Code::ImpossibleValue, {{"key", *repeated}, {"text", "given twice"}, {"expected", "given once"}});
    }
    return document.object();
}

} // namespace rw::exchange
