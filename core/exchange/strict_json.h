// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QJsonObject>

#include <string>
#include <string_view>

namespace rw::exchange {

/// The object that this text is. Stricter than the parser underneath: the text must be UTF-8 JSON of at most 1 MB with
/// an object at the top and nothing behind it, and no key may stand twice in one object (of two values, which one was
/// meant?).
/// Refusals: FileUnreadable {file: "the input", reason}; WrongType {key: "the input", expected} for JSON that is no
/// object; ImpossibleValue {key, text, expected} for a key given twice, and for a number too large to hold.
[[nodiscard]] Result<QJsonObject> parseStrictObject(std::string_view utf8);

/// "hoop" and "lengthMm" are "hoop.lengthMm"; nothing and "hoop" are "hoop".
[[nodiscard]] std::string keyPath(std::string_view object, std::string_view key);

} // namespace rw::exchange
