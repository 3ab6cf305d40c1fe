// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/port/ledger.h"

#include <QString>

#include <functional>
#include <vector>

class QWidget;

namespace rw::ui {
class MainWindow;
}

namespace rw::desktop {

/// One picture: what somebody did in the window before it was taken.
struct Scene {
    QString name;
    bool stocked;                                                ///< with the invented shop; else on a new ledger
    std::function<QWidget*(ui::MainWindow&)> play;               ///< gives the window that is drawn
    std::function<Result<void>(desk::Transaction&)> before = {}; ///< what another station did, if anything
};

[[nodiscard]] std::vector<Scene> scenes();

} // namespace rw::desktop
