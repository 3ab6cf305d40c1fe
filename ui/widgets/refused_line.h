// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/refusal.h"

#include <QWidget>

#include <initializer_list>
#include <string_view>

namespace rw::ui {

class MarginNote;

/// Where on a sheet a refusal by the ledger belongs: `what` is its argument "what" or "key".
struct RefusedLine {
    std::string_view what;
    QWidget* edit;
    MarginNote* note;
};

/// Says it beside the line that it speaks of, with the keyboard there; beside `otherwise` when it speaks of none.
void showBeside(const Refusal& why, std::initializer_list<RefusedLine> lines, MarginNote* otherwise);

} // namespace rw::ui
