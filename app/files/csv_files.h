// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/port/table_files.h"

#include <functional>
#include <string>
#include <utility>

namespace rw::app {

/// Tables as CSV (core/exchange).
class CsvFiles final : public ui::TableFiles {
public:
    /// Why no file may come to a path, such as that of the ledger itself.
    using Guard = std::function<Result<void>(const QString& path)>;

    CsvFiles() = default;
    explicit CsvFiles(Guard guard)
        : m_guard(std::move(guard)) {}

    /// Where a table's file comes to lie: "jobs" becomes jobs.csv.
    [[nodiscard]] static QString path(const QString& folder, const std::string& table);

    [[nodiscard]] Result<bool> write(const QString& folder, const std::vector<desk::LedgerTable>& tables,
                                     Currency currency, const GoOn& goOn) const override;

private:
    Guard m_guard;
};

} // namespace rw::app
