// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace rw {

/// Whether bytes that came from outside are text that both engines can keep: well-formed UTF-8 (RFC 3629: shortest
/// form, no surrogates, nothing above U+10FFFF) without U+0000.
[[nodiscard]] bool isReadableText(std::string_view bytes);

/// Readable text without the characters that turn the direction of writing: one of them in a name would turn the line
/// around that it stands in. Source: Unicode, PropList.txt, Bidi_Control.
[[nodiscard]] std::string withoutBidiControls(std::string_view text);

} // namespace rw
