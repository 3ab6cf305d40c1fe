// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <cstdint>
#include <optional>

class QKeyEvent;

namespace rw::ui {

/// The number of a tag, typed by a scanner or by hand where there is no line to type it in: digits, and Enter.
class TypedTag {
public:
    /// Whether the key belongs to a number: a digit begins one or goes on with it, and while one stands Enter ends it,
    /// Backspace takes a digit off and Esc drops it. Any other key drops it too, and means what it means.
    [[nodiscard]] bool take(const QKeyEvent& key);
    [[nodiscard]] bool isNext(const QKeyEvent& key) const; ///< what take() would say

    [[nodiscard]] const QString& digits() const { return m_digits; }
    /// The number that the last key ended, once.
    [[nodiscard]] std::optional<std::int64_t> finished();

private:
    QString m_digits;
    std::optional<std::int64_t> m_finished;
};

} // namespace rw::ui
