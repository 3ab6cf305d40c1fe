// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/qtport/csv_files.h"

#include "core/exchange/table_csv.h"
#include "ui/documents/whole_file.h"
#include "ui/text/format.h"

#include <QDir>

namespace rw::ui {

Result<void> CsvFiles::write(const QString& folder, const desk::LedgerTable& table, Currency currency) const {
    const QDir out(folder);
    if (!out.mkpath(QStringLiteral("."))) {
        return refuse(Code::FileUnwritable,
                      {{"file", folder.toStdString()}, {"reason", std::string("the folder cannot be made")}});
    }
    const QString path = out.filePath(fromUtf8(table.name) + QStringLiteral(".csv"));
    return writeWholeFile(path, QByteArray::fromStdString(exchange::tableCsv(table, currency)));
}

} // namespace rw::ui
