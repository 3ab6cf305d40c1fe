// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/value_edit.h"

#include <QFocusEvent>

namespace rw::ui {

ValueEdit::ValueEdit(QWidget* parent)
    : QLineEdit(parent) {
    // Nobody types a longer value; what is pasted by mistake must not become a sentence's argument as a whole.
    setMaxLength(200);
    connect(this, &QLineEdit::textEdited, this, &ValueEdit::valueChanged);
}

std::optional<Refusal> ValueEdit::problem() const {
    if (isBlank()) {
        return m_mayBeBlank ? std::nullopt : std::optional(missing());
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
    if (!isBlank() && !problemWith()) {
        writeOut();
    }
    Q_EMIT left();
}

} // namespace rw::ui
