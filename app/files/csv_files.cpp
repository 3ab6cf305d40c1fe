// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/files/csv_files.h"

#include "core/exchange/table_csv.h"
#include "ui/documents/file_set.h"
#include "ui/text/format.h"

#include <QDir>

namespace rw::app {

QString CsvFiles::path(const QString& folder, const std::string& table) {
    return QDir(folder).filePath(ui::fromUtf8(table) + QStringLiteral(".csv"));
}

Result<bool> CsvFiles::write(const QString& folder, const std::vector<desk::LedgerTable>& tables, Currency currency,
                             const GoOn& goOn) const {
    if (!QDir(folder).mkpath(QStringLiteral("."))) {
        return refuse(Code::FileUnwritable,
                      {{"file", folder.toStdString()}, {"reason", std::string("the folder cannot be made")}});
    }
    ui::FileSet files;
    int written = 0;
    for (const desk::LedgerTable& table : tables) {
        if (!goOn(written)) {
            return false;
        }
        const QString file = path(folder, table.name);
        if (const auto may = m_guard ? m_guard(file) : Result<void>(); !may) {
            return tl::unexpected(may.error());
        }
        const QByteArray bytes = QByteArray::fromStdString(exchange::tableCsv(table, currency));
        if (const auto added = files.add(file, bytes); !added) {
            return tl::unexpected(added.error());
        }
        ++written;
    }
    if (!goOn(written)) {
        return false;
    }
    files.putInPlace();
    return true;
}

} // namespace rw::app
