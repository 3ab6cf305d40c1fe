// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/scan_watch.h"

#include <QKeyEvent>

namespace rw::ui {

void ScanWatch::see(const QKeyEvent& key) {
    const bool isQuick = key.timestamp() - m_last <= kLongestGap;
    m_last = key.timestamp();
    m_scanned.clear();
    if (key.key() >= Qt::Key_0 && key.key() <= Qt::Key_9) {
        if (!isQuick) {
            m_digits.clear();
        }
        m_digits += key.text();
        return;
    }
    if ((key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter) && isQuick) {
        m_scanned = m_digits;
    }
    m_digits.clear();
}

} // namespace rw::ui
