// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>

#include <cstdint>

namespace rw::ui {

/// A job's number as a QR code (ISO/IEC 18004) that holds its digits and nothing else, so that a scanner types what
/// somebody would. At the highest level of error correction: a tag is bent and scuffed, and a number of up to 17 digits
/// needs no larger symbol for it.
class TagCode {
public:
    static constexpr int kQuietZone = 4; ///< modules that stay white on every side (ISO/IEC 18004)

    explicit TagCode(std::int64_t number); ///< at least 0

    [[nodiscard]] int modules() const { return m_modules; } ///< on a side, without the quiet zone
    [[nodiscard]] bool isDark(int column, int row) const { return m_dark[row * m_modules + column] != 0; }

private:
    int m_modules = 0;
    QByteArray m_dark; ///< row by row, a byte a module
};

} // namespace rw::ui
