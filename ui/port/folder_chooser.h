// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace rw::ui {

/// Lets somebody choose a folder.
class FolderChooser {
public:
    virtual ~FolderChooser() = default;
    /// The path of the folder; "" when none was chosen. Returns when somebody has decided.
    [[nodiscard]] virtual QString chooseFolder(const QString& title) = 0;
};

} // namespace rw::ui
