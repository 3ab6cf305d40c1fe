// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace rw {

/// Whether bytes that came from outside are text that both engines can keep: well-formed UTF-8 (RFC 3629: shortest
/// form, no surrogates, nothing above U+10FFFF) without U+0000.
[[nodiscard]] bool isReadableText(std::string_view bytes);

} // namespace rw
