// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/qtport/csv_files.h"

#include "core/exchange/table_csv.h"
#include "ui/documents/file_set.h"
#include "ui/text/format.h"

#include <QDir>

namespace rw::ui {

Result<bool> CsvFiles::write(const QString& folder, const std::vector<desk::LedgerTable>& tables, Currency currency,
                             const GoOn& goOn) const {
    const QDir out(folder);
    if (!out.mkpath(QStringLiteral("."))) {
        return refuse(Code::FileUnwritable,
                      {{"file", folder.toStdString()}, {"reason", std::string("the folder cannot be made")}});
    }
    FileSet files;
    int written = 0;
    for (const desk::LedgerTable& table : tables) {
        if (!goOn(written)) {
            return false;
        }
        const QString path = out.filePath(fromUtf8(table.name) + QStringLiteral(".csv"));
        if (const auto may = m_guard ? m_guard(path) : Result<void>(); !may) {
            return tl::unexpected(may.error());
        }
        const QByteArray bytes = QByteArray::fromStdString(exchange::tableCsv(table, currency));
        if (const auto added = files.add(path, bytes); !added) {
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

} // namespace rw::ui
