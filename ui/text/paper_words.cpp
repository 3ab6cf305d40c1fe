// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/paper_words.h"

#include <QCoreApplication>
#include <QFileInfo>

namespace rw::ui {

namespace {
struct Papers {
    Q_DECLARE_TR_FUNCTIONS(Papers)
};
} // namespace

QString printedText(const QString& slip, const QString& printer) {
    return Papers::tr("%1 went to the printer “%2”.").arg(slip, printer);
}

QString printedToFileText(const QString& slip, const QString& path, const QString& missingPrinter) {
    const QFileInfo file(path);
    const QString kept = Papers::tr("%1 is kept as %2 in %3.").arg(slip, file.fileName(), file.path());
    return missingPrinter.isEmpty() ? kept : Papers::tr("%1 The printer “%2” is not there.").arg(kept, missingPrinter);
}

QString pdfFolderText(const QString& folder) { return Papers::tr("goes as a PDF to %1").arg(folder); }

QString noPaperText() {
    return Papers::tr("A paper belongs to a job: log one, or choose it on the rack, in the list to be strung or at the "
                      "bench.");
}

} // namespace rw::ui
