// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/port/table_files.h"

namespace rw::ui {

/// Tables as CSV (core/exchange): "jobs" becomes jobs.csv.
class CsvFiles final : public TableFiles {
public:
    [[nodiscard]] Result<void> write(const QString& folder, const desk::LedgerTable& table,
                                     Currency currency) const override;
};

} // namespace rw::ui
