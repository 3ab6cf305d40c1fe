// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/ledger_address.h"

#include "core/sql/postgres_address.h"

#include <QString>
#include <QUrl>

#include <algorithm>
#include <optional>

namespace rw::sql {

namespace {

bool isUtf8(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())).toStdString() == text;
}

/// "postgresql:user@host/shop", "postgres:/…": an address whose slashes were forgotten, and no file's name.
bool lacksItsSlashes(std::string_view text) { return text.starts_with("postgresql:") || text.starts_with("postgres:"); }

/// "host=db password = 'secret'" is how other programs of PostgreSQL are told where to go, and no file's name either.
/// Where the password's key ends; nothing where there is none.
std::optional<std::size_t> passwordKeyIn(std::string_view text) {
    constexpr std::string_view kKey = "password";
    for (auto at = text.find(kKey); at != std::string_view::npos; at = text.find(kKey, at + 1)) {
        const auto next = text.find_first_not_of(' ', at + kKey.size());
        if (next != std::string_view::npos && text[next] == '=') {
            return at + kKey.size();
        }
    }
    return std::nullopt;
}

/// Where the user's name begins; the end of the text where none does.
std::size_t authorityOf(std::string_view text) {
    if (const auto scheme = text.find("://"); scheme != std::string_view::npos) {
        return scheme + 3;
    }
    return lacksItsSlashes(text) ? std::min(text.find_first_not_of('/', text.find(':') + 1), text.size()) : text.size();
}

/// "user:secret@host" is "user@host". By hand, because an address that cannot be read must not show its password
/// either.
std::string passwordRemoved(std::string_view text) {
    const bool isAddress = text.find("://") != std::string_view::npos || lacksItsSlashes(text);
    if (const auto end = passwordKeyIn(text); end && !isAddress) {
        return std::string(text.substr(0, *end)); // what is quoted there may hold anything
    }
    const auto start = authorityOf(text);
    const std::string_view rest = text.substr(start);
    const std::string_view authority = rest.substr(0, rest.find_first_of("/?#"));
    const auto colon = authority.find(':');
    const bool isPort =
        colon != authority.npos && authority.find_first_not_of("0123456789", colon + 1) == authority.npos;
    auto at = authority.rfind('@');
    // What was not encoded may hold a slash or a question mark: then the last "@" of all ends the password.
    if (at == authority.npos && colon != authority.npos && (!isPort || rest.find('@') < rest.find('?'))) {
        at = rest.rfind('@');
    }
    std::string result(text);
    if (at != rest.npos && colon != rest.npos && colon < at) {
        result.erase(start + colon, at - colon);
    }
    // A password may stand among the options as well.
    for (auto key = result.find("password="); key != std::string::npos; key = result.find("password=", key + 1)) {
        const auto value = key + std::string_view("password=").size();
        result.erase(value, std::min(result.find('&', value), result.size()) - value);
    }
    return result;
}

} // namespace

Result<LedgerAddress> LedgerAddress::parse(std::string_view text) {
    if (text.empty()) {
        return refuse(Code::Missing, {{"what", "ledger"}});
    }
    const auto unreadable = [&] {
        return refuse(Code::Unreadable, {{"what", "ledger"}, {"text", passwordRemoved(text)}});
    };
    if (text.find('\0') != std::string_view::npos || !isUtf8(text)) {
        return unreadable();
    }
    const bool isAddress = text.find("://") != std::string_view::npos;
    if (!isAddress && !lacksItsSlashes(text) && !passwordKeyIn(text)) {
        return LedgerAddress(Engine::Sqlite, std::string(text));
    }
    if (!isAddress || !PostgresAddress::parse(text)) {
        return unreadable();
    }
    return LedgerAddress(Engine::Postgres, std::string(text));
}

std::string LedgerAddress::withoutPassword() const {
    return m_engine == Engine::Postgres ? passwordRemoved(m_text) : m_text;
}

} // namespace rw::sql
