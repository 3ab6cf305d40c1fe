// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/desk/port/ledger_table.h"
#include "core/money/money.h"

#include <QString>

#include <functional>
#include <vector>

namespace rw::ui {

/// Writes tables of the ledger as files that a spreadsheet reads. Called on the ledger's thread.
class TableFiles {
public:
    virtual ~TableFiles() = default;
    /// Asked before each table, with how many are written, and once more when all are; false: stop.
    using GoOn = std::function<bool(int written)>;
    /// Writes all tables into the folder, which is made if it is not there, each in place of a file that has its name;
    /// or none of them. False when it was stopped. FileUnwritable; throws FileLost when the disk gives way.
    [[nodiscard]] virtual Result<bool> write(const QString& folder, const std::vector<desk::LedgerTable>& tables,
                                             Currency currency, const GoOn& goOn) const = 0;
};

} // namespace rw::ui
