// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace rw::ui {

class SlipPrinter;

/// What the window reaches of the world beside the ledger. All of it outlives the window.
struct Outside {
    SlipPrinter& printer;
};

} // namespace rw::ui
