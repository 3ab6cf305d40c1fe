// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/desk/port/ledger_table.h"
#include "core/money/money.h"

#include <QString>

namespace rw::ui {

/// Writes tables of the ledger as files that a spreadsheet reads. Called on the ledger's thread.
class TableFiles {
public:
    virtual ~TableFiles() = default;
    /// Writes the table whole into the folder, which is made if it is not there, in place of a file that has its name.
    /// FileUnwritable; throws FileLost when the disk gives way.
    [[nodiscard]] virtual Result<void> write(const QString& folder, const desk::LedgerTable& table,
                                             Currency currency) const = 0;
};

} // namespace rw::ui
