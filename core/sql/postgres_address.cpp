// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/postgres_address.h"

#include <QRegularExpression>
#include <QUrl>
#include <QUrlQuery>

namespace rw::sql {

namespace {

/// A server that vanishes without a word (cable pulled, router restarted, machine asleep) must not leave a station
/// waiting: by itself Linux asks only after two hours whether it is still there, and repeats for a quarter of an hour
/// what nobody acknowledges. Here it asks after 15 s of silence and again every 5 s, and gives up after 30 s, longer
/// than a wireless network takes to come back. A statement may take longer than that: a server that works answers.
/// Source of the names: PostgreSQL 15 manual, 34.1.2.
constexpr const char* kUsualOptions = "connect_timeout='5' keepalives_idle='15' keepalives_interval='5' "
                                      "keepalives_count='3' tcp_user_timeout='30000' application_name='reelwright'";

/// For a value in a connection string (PostgreSQL 15 manual, 34.1.1.1).
QString quoted(QString value) {
    value.replace(QStringLiteral("\\"), QStringLiteral("\\\\")).replace(QStringLiteral("'"), QStringLiteral("\\'"));
    return QStringLiteral("'%1'").arg(value);
}

} // namespace

std::optional<PostgresAddress> PostgresAddress::parse(std::string_view text) {
    const QUrl url(QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())), QUrl::StrictMode);
    if (!url.isValid() || url.scheme() != QStringLiteral("postgresql") || url.hasFragment()) {
        return std::nullopt;
    }
    PostgresAddress address;
    address.host = url.host();
    address.port = url.port();
    address.user = url.userName(QUrl::FullyDecoded);
    address.password = url.password(QUrl::FullyDecoded);
    address.database = url.path(QUrl::FullyDecoded).mid(1);
    if (address.database.isEmpty() || address.database.contains(u'/')) {
        return std::nullopt;
    }
    address.options = QString::fromLatin1(kUsualOptions);
    static const QRegularExpression key(QStringLiteral("^[a-z_]+$"));
    const auto items = QUrlQuery(url).queryItems(QUrl::FullyDecoded);
    for (const auto& [name, value] : items) {
        // Qt takes a semicolon for the end of an option.
        if (!key.match(name).hasMatch() || value.contains(u';')) {
            return std::nullopt;
        }
        address.options += QStringLiteral(" %1=%2").arg(name, quoted(value));
    }
    return address;
}

} // namespace rw::sql
