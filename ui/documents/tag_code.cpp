// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/documents/tag_code.h"

#include <qrencode.h>

#include <cassert>
#include <memory>
#include <new>
#include <string>

namespace rw::ui {

namespace {
constexpr int kSmallestThatFits = 0; ///< the version, as libqrencode asks for it
constexpr unsigned char kDark = 1;   ///< the bit of a module that says its colour
} // namespace

TagCode::TagCode(std::int64_t number) {
    assert(number >= 0);
    const std::unique_ptr<QRcode, decltype(&QRcode_free)> code(
        QRcode_encodeString(std::to_string(number).c_str(), kSmallestThatFits, QR_ECLEVEL_H, QR_MODE_8, 1),
        &QRcode_free);
    if (!code) {
        throw std::bad_alloc(); // at most 19 digits always fit
    }
    m_modules = code->width;
    for (int i = 0; i < m_modules * m_modules; ++i) {
        m_dark.append(static_cast<char>(code->data[i] & kDark));
    }
}

} // namespace rw::ui
