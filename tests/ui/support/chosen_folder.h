// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/port/folder_chooser.h"

namespace rw::ui::test {

/// Somebody who always chooses the same folder; "" chooses none.
class ChosenFolder final : public FolderChooser {
public:
    [[nodiscard]] QString chooseFolder(const QString&) override {
        ++asked;
        return folder;
    }

    QString folder;
    int asked = 0;
};

} // namespace rw::ui::test
