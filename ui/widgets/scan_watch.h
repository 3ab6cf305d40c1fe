// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QKeyEvent;

namespace rw::ui {

/// Tells a scanner from a person: it types a tag's digits and Enter without a pause, as a keyboard would. Scanners send
/// a key in 1 to 20 ms and people need 80 ms and more (common practice).
class ScanWatch {
public:
    static constexpr unsigned long long kLongestGap = 35; ///< milliseconds from one key to the next

    /// Every key that is pressed, in its order.
    void see(const QKeyEvent& key);
    /// The digits that came right before the Enter that was seen last, all of them in one go; "" when they did not.
    [[nodiscard]] const QString& scanned() const { return m_scanned; }

private:
    QString m_digits;
    QString m_scanned;
    unsigned long long m_last = 0; ///< when the key before was pressed
};

} // namespace rw::ui
