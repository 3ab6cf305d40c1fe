// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/port/folder_chooser.h"

namespace rw::ui {

/// The desktop's own dialog, over the window that is active; it begins where the last one ended.
class QtFolderChooser final : public FolderChooser {
public:
    [[nodiscard]] QString chooseFolder(const QString& title) override;

private:
    QString m_last;
};

} // namespace rw::ui
