// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

// What became of a slip that was printed.
namespace rw::ui {

/// "Tag 2121 went to the printer “Counter”."
[[nodiscard]] QString printedText(const QString& slip, const QString& printer);
/// "Tag 2121 is kept as tag-2121.pdf in …"; and that a printer is not there any more, when one was chosen.
[[nodiscard]] QString printedToFileText(const QString& slip, const QString& path, const QString& missingPrinter);
/// Where the PDFs go that stand in for printed slips.
[[nodiscard]] QString pdfFolderText(const QString& folder);
/// Nothing is chosen that a paper could be printed of.
[[nodiscard]] QString noPaperText();

} // namespace rw::ui
