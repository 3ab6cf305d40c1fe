// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/typed_tag.h"

#include <QKeyEvent>

#include <utility>

namespace rw::ui {

namespace {
constexpr qsizetype kMostDigits = 18; ///< what a job's number can have

bool isDigit(const QKeyEvent& key) {
    return key.key() >= Qt::Key_0 && key.key() <= Qt::Key_9 &&
           (key.modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier;
}
bool isEnter(const QKeyEvent& key) { return key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter; }
bool isModifier(const QKeyEvent& key) {
    return key.key() == Qt::Key_Shift || key.key() == Qt::Key_Control || key.key() == Qt::Key_Alt;
}
} // namespace

bool TypedTag::isNext(const QKeyEvent& key) const {
    return isDigit(key) ||
           (!m_digits.isEmpty() && (isEnter(key) || key.key() == Qt::Key_Backspace || key.key() == Qt::Key_Escape));
}

bool TypedTag::take(const QKeyEvent& key) {
    if (!isNext(key)) {
        if (!isModifier(key)) {
            m_digits.clear();
        }
        return false;
    }
    if (isDigit(key)) {
        if (m_digits.size() < kMostDigits) {
            m_digits += QChar(key.key());
        }
    } else if (key.key() == Qt::Key_Backspace) {
        m_digits.chop(1);
    } else {
        const QString digits = std::exchange(m_digits, QString());
        if (isEnter(key)) {
            m_finished = digits.toLongLong();
        }
    }
    return true;
}

std::optional<std::int64_t> TypedTag::finished() { return std::exchange(m_finished, std::nullopt); }

} // namespace rw::ui
