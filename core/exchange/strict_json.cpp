// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/strict_json.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <charconv>
#include <unordered_set>
#include <vector>

namespace rw::exchange {

namespace {
constexpr std::size_t kMostBytes = 1'000'000; // a request is a few hundred
constexpr std::string_view kBlanks = " \t\r\n";

/// The parser takes an object or an array only; in an array it takes everything.
QJsonDocument inArray(std::string_view json) {
    return QJsonDocument::fromJson('[' + QByteArray(json.data(), static_cast<qsizetype>(json.size())) + ']');
}

/// Walks over JSON key by key. The text may break off, but what there is of it must be JSON.
class KeyWalk {
public:
    explicit KeyWalk(std::string_view json)
        : m_json(json) {}

    /// Goes on to the next key; false behind the last one.
    bool next() {
        while (m_at < m_json.size()) {
            switch (m_json[m_at]) {
            case '{':
            case '[':
                m_open.push_back({});
                ++m_at;
                break;
            case '}':
            case ']':
                m_open.pop_back();
                ++m_at;
                break;
            case '"':
                if (readText()) {
                    return true;
                }
                break;
            default:
                ++m_at;
            }
        }
        return false;
    }

    /// Whether the key that was read last stood before in the same object.
    [[nodiscard]] bool isRepeated() const { return m_repeated; }

    /// Where the walk is: the key that was read last in each object that is still open.
    [[nodiscard]] std::string path() const {
        std::string path;
        for (const Level& level : m_open) {
            path = level.key.empty() ? path : keyPath(path, level.key);
        }
        return path;
    }

private:
    struct Level {
        std::string key;
        std::unordered_set<std::string> keys;
    };

    /// Reads a text in quotes; true when it is a key.
    bool readText() {
        const std::size_t begin = m_at++;
        while (m_json[m_at] != '"') {
            m_at += m_json[m_at] == '\\' ? 2 : 1;
        }
        const std::string_view quoted = m_json.substr(begin, ++m_at - begin);
        const std::size_t behind = m_json.find_first_not_of(kBlanks, m_at);
        if (behind == std::string_view::npos || m_json[behind] != ':') {
            return false;
        }
        Level& level = m_open.back();
        level.key = plainText(quoted);
        m_repeated = !level.keys.insert(level.key).second;
        return true;
    }

    /// A key may be written with escapes: "a" is "\u0061".
    static std::string plainText(std::string_view quoted) {
        return inArray(quoted).array().at(0).toString().toStdString();
    }

    std::string_view m_json;
    std::size_t m_at = 0;
    bool m_repeated = false;
    std::vector<Level> m_open;
};

tl::unexpected<Refusal> unreadable(std::string reason) {
    return refuse(Code::FileUnreadable, {{"file", "the input"}, {"reason", std::move(reason)}});
}

/// The number that ends here when nothing is wrong with it but its size, such as 1e999; else nothing.
std::string_view hugeNumberBefore(std::string_view json, std::size_t end) {
    const std::size_t before = json.find_last_not_of("+-.eE0123456789", end - 1);
    const std::string_view number = json.substr(before + 1, end - before - 1);
    double ignored = 0;
    const auto read = std::from_chars(number.begin(), number.end(), ignored);
    return read.ec == std::errc::result_out_of_range && read.ptr == number.end() ? number : std::string_view();
}

tl::unexpected<Refusal> noObject() {
    return refuse(Code::WrongType, {{"key", "the input"}, {"expected", "one object in braces"}});
}

tl::unexpected<Refusal> whyNot(std::string_view json, const QJsonParseError& error) {
    if (inArray(json).array().size() == 1) {
        return noObject();
    }
    const auto at = static_cast<std::size_t>(error.offset);
    const std::string_view number =
        error.error == QJsonParseError::IllegalNumber ? hugeNumberBefore(json, at) : std::string_view();
    if (number.empty()) {
        return unreadable("it is not JSON (" + error.errorString().toStdString() + " at byte " + std::to_string(at) +
                          ")");
    }
    KeyWalk walk(json.substr(0, at));
    while (walk.next()) {
    }
    if (walk.path().empty()) {
        return noObject();
    }
    return refuse(Code::ImpossibleValue,
                  {{"key", walk.path()}, {"text", std::string(number)}, {"expected", "a number of ordinary size"}});
}
} // namespace

std::string keyPath(std::string_view object, std::string_view key) {
    return object.empty() ? std::string(key) : std::string(object) + '.' + std::string(key);
}

Result<QJsonObject> parseStrictObject(std::string_view utf8) {
    if (utf8.size() > kMostBytes) {
        return unreadable("it is larger than 1 MB");
    }
    if (utf8.find_first_not_of(kBlanks) == std::string_view::npos) {
        return unreadable("it is empty");
    }
    QJsonParseError error{};
    const QByteArray bytes(utf8.data(), static_cast<qsizetype>(utf8.size()));
    const QJsonDocument document = QJsonDocument::fromJson(bytes, &error);
    if (error.error != QJsonParseError::NoError) {
        return whyNot(utf8, error);
    }
    if (!document.isObject()) {
        return noObject();
    }
    KeyWalk walk(utf8);
    while (walk.next()) {
        if (walk.isRepeated()) {
            return refuse(Code::ImpossibleValue,
                          {{"key", walk.path()}, {"text", "given twice"}, {"expected", "given once"}});
        }
    }
    return document.object();
}

} // namespace rw::exchange
