// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/value_edit.h"

#include <QFocusEvent>

namespace rw::ui {

namespace {
constexpr qsizetype kLongestValue = 200; ///< nobody types a longer one; something was pasted by mistake
}

ValueEdit::ValueEdit(QWidget* parent)
    : QLineEdit(parent) {
    connect(this, &QLineEdit::textEdited, this, &ValueEdit::valueChanged);
}

std::optional<Refusal> ValueEdit::problem() const {
    if (isBlank()) {
        return m_mayBeBlank ? std::nullopt : std::optional(missing());
    }
    if (text().size() > kLongestValue) {
        return Refusal(Code::TooLong, {{"what", missing().text("what")},
                                       {"length", std::int64_t{text().size()}},
                                       {"most", std::int64_t{kLongestValue}}});
    }
    return problemWith();
}

void ValueEdit::focusInEvent(QFocusEvent* event) {
    QLineEdit::focusInEvent(event);
    // Whoever comes here by keyboard wants to type over what stands there.
    if (event->reason() != Qt::MouseFocusReason && event->reason() != Qt::ActiveWindowFocusReason &&
        event->reason() != Qt::PopupFocusReason) {
        selectAll();
    }
}

void ValueEdit::focusOutEvent(QFocusEvent* event) {
    QLineEdit::focusOutEvent(event);
    if (event->reason() == Qt::PopupFocusReason || event->reason() == Qt::ActiveWindowFocusReason) {
        return;
    }
    if (!isBlank() && !problem()) {
        writeOut();
    }
    Q_EMIT left();
}

} // namespace rw::ui
