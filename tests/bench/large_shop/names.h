// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace rw::large {

/// `count` invented words that can be names, each once, the same for the same seed. One in twenty bears an accent.
[[nodiscard]] std::vector<std::string> inventedNames(std::size_t count, unsigned seed);

} // namespace rw::large
