// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/port/folder_chooser.h"
#include "ui/port/slip_printer.h"
#include "ui/port/table_files.h"

namespace rw::ui {

/// What the window reaches beyond the ledger. Whoever makes a window keeps these alive as long as it.
struct Outside {
    FolderChooser& folders;
    const TableFiles& tables;
    SlipPrinter& printer;
};

} // namespace rw::ui
