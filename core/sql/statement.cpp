// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sql/statement.h"

#include "core/base/world_error.h"
#include "core/sql/engine_error.h"

#include <QMetaType>
#include <QSqlError>
#include <QSqlRecord>
#include <QVariant>

#include <algorithm>
#include <stdexcept>

namespace rw::sql {

namespace {

QString qstring(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

bool isWholeNumber(const QVariant& value) {
    switch (value.typeId()) {
    case QMetaType::Bool:
    case QMetaType::Int:
    case QMetaType::UInt:
    case QMetaType::LongLong:
    case QMetaType::ULongLong: // QPSQL gives a bigint back unsigned when it is not negative
        return true;
    default:
        return false;
    }
}

} // namespace

Statement::Statement(Connection& connection, std::string_view queryName)
    : m_connection(connection)
    , m_name(queryName)
    , m_prepared(connection.borrow(queryName)) {}

Statement::~Statement() { m_connection.giveBack(m_name, std::move(m_prepared)); }

Statement& Statement::bindValue(std::string_view placeholder, const QVariant& value) {
    const auto name = qstring(placeholder);
    const auto& known = m_prepared->placeholders;
    if (std::find(known.begin(), known.end(), name) == known.end()) {
        throw std::logic_error("query " + m_name + " has no " + std::string(placeholder));
    }
    m_bound.insert(name);
    m_prepared->query.bindValue(name, value);
    return *this;
}

Statement& Statement::bindInteger(std::string_view placeholder, std::int64_t value) {
    m_ids += " " + std::string(placeholder) + "=" + std::to_string(value);
    return bindValue(placeholder, QVariant::fromValue<qlonglong>(value));
}

Statement& Statement::bind(std::string_view placeholder, double value) {
    return bindValue(placeholder, QVariant(value));
}

Statement& Statement::bind(std::string_view placeholder, std::string_view value) {
    if (value.find('\0') != std::string_view::npos) {
        throw LedgerGuard("text_without_nul (" + doing() + " " + std::string(placeholder) + ")");
    }
    // An empty QString that is null would be stored as NULL.
    return bindValue(placeholder, value.empty() ? QVariant(QStringLiteral("")) : QVariant(qstring(value)));
}

Statement& Statement::bind(std::string_view placeholder, std::nullopt_t) { return bindValue(placeholder, QVariant()); }

void Statement::run() {
    if (m_bound.size() != m_prepared->placeholders.size()) {
        throw std::logic_error("query " + m_name + " has placeholders that were not bound");
    }
    m_connection.mustBeOpen();
    if (!m_prepared->query.exec()) {
        throwEngineError(m_connection, m_prepared->query.lastError(), doing());
    }
    m_bound.clear();
    m_ids.clear();
    if (m_prepared->columns.empty() && m_prepared->query.isSelect()) {
        const auto record = m_prepared->query.record();
        for (int column = 0; column < record.count(); ++column) {
            m_prepared->columns[record.fieldName(column).toStdString()] = column;
        }
    }
}

bool Statement::next() {
    if (m_prepared->query.next()) {
        return true;
    }
    if (m_prepared->query.lastError().isValid()) {
        throwEngineError(m_connection, m_prepared->query.lastError(), doing());
    }
    return false;
}

int Statement::rowsAffected() const { return m_prepared->query.numRowsAffected(); }

std::int64_t Statement::insertedId() {
    if (!next()) {
        throw std::logic_error("query " + m_name + " gave no id back");
    }
    return integer("id");
}

QVariant Statement::value(std::string_view column) const {
    const auto found = m_prepared->columns.find(column);
    if (found == m_prepared->columns.end()) {
        throw std::logic_error("query " + m_name + " has no column " + std::string(column));
    }
    return m_prepared->query.value(found->second);
}

bool Statement::isNull(std::string_view column) const { return value(column).isNull(); }

std::int64_t Statement::integer(std::string_view column) const {
    const auto found = value(column);
    if (found.isNull() || !isWholeNumber(found)) {
        wrongKind(column, "a whole number");
    }
    return found.toLongLong();
}

double Statement::real(std::string_view column) const {
    const auto found = value(column);
    if (found.isNull() || !(isWholeNumber(found) || found.typeId() == QMetaType::Double)) {
        wrongKind(column, "a number");
    }
    return found.toDouble();
}

std::string Statement::text(std::string_view column) const {
    const auto found = value(column);
    if (found.isNull() || found.typeId() != QMetaType::QString) {
        wrongKind(column, "a text");
    }
    return found.toString().toStdString();
}

std::optional<double> Statement::optionalReal(std::string_view column) const {
    return isNull(column) ? std::nullopt : std::optional(real(column));
}

std::optional<std::string> Statement::optionalText(std::string_view column) const {
    return isNull(column) ? std::nullopt : std::optional(text(column));
}

void Statement::wrongKind(std::string_view column, std::string_view kind) const {
    throw LedgerCorrupt("column " + std::string(column) + " is not " + std::string(kind) + " (" + m_name + ")");
}

std::string Statement::doing() const { return m_name + m_ids; }

} // namespace rw::sql
