// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace rw::ui {

/// From now on a label that bears an accessible name ("Price", "What happened") has what stands in it as its
/// description, unless somebody gave it another: by the name alone nobody who listens would ever hear it. Once a
/// program.
void letLabelsBeRead();

} // namespace rw::ui
