// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/resource_text.h"

#include <QDir>
#include <QFile>
#include <QString>

#include <optional>
#include <set>
#include <stdexcept>

namespace rw::sql {

namespace {

std::optional<std::string> read(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        return std::nullopt;
    }
    return file.readAll().toStdString();
}

QString withDialect(std::string_view name, Dialect dialect) {
    const auto text = dialectText(dialect);
    return QStringLiteral(":/queries/%1.%2.sql")
        .arg(QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())),
             QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())));
}

} // namespace

std::string queryText(std::string_view name, Dialect dialect) {
    if (auto own = read(withDialect(name, dialect))) {
        return *own;
    }
    const auto shared =
        QStringLiteral(":/queries/%1.sql").arg(QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())));
    if (auto text = read(shared)) {
        return *text;
    }
    throw std::logic_error("no query " + std::string(name) + " for " + std::string(dialectText(dialect)));
}

std::vector<std::string> queryNames(Dialect dialect) {
    std::set<std::string> names;
    const auto other = dialect == Dialect::Sqlite ? Dialect::Postgres : Dialect::Sqlite;
    for (const QString& entry : QDir(QStringLiteral(":/queries")).entryList()) {
        auto file = entry.toStdString();
        file.resize(file.size() - std::string_view(".sql").size());
        const auto dot = file.find('.');
        if (dot != std::string::npos && file.substr(dot + 1) == dialectText(other)) {
            continue;
        }
        names.insert(file.substr(0, dot));
    }
    return {names.begin(), names.end()};
}

std::vector<std::string> migrationFiles() {
    std::vector<std::string> files;
    for (const QString& entry : QDir(QStringLiteral(":/migrations")).entryList(QDir::Files, QDir::Name)) {
        files.push_back(entry.toStdString());
    }
    return files;
}

std::string migrationText(std::string_view file) {
    const auto path =
        QStringLiteral(":/migrations/") + QString::fromUtf8(file.data(), static_cast<qsizetype>(file.size()));
    if (auto text = read(path)) {
        return *text;
    }
    throw std::logic_error("no migration file " + std::string(file));
}

} // namespace rw::sql
