// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/pin_sheet.h"

#include "ui/text/sentences.h"
#include "ui/widgets/margin_note.h"

#include <QVBoxLayout>

namespace rw::ui {

QLineEdit* makePinLine(const QString& accessibleName, QWidget* parent) {
    auto* line = new QLineEdit(parent);
    line->setEchoMode(QLineEdit::Password);
    line->setAccessibleName(accessibleName);
    line->setMaximumWidth(260);
    return line;
}

PinSheet::PinSheet(QWidget* parent)
    : QWidget(parent)
    , m_sheet(new Sheet(this))
    , m_pin(makePinLine(tr("The owner's PIN"), m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    m_line = m_sheet->addLine(tr("PIN"), m_pin);
    setFocusProxy(m_pin);
    connect(m_pin, &QLineEdit::textEdited, this, [this] { m_line.note->setProblem({}); });
}

void PinSheet::start() {
    m_pin->clear();
    m_line.note->clearAll();
    m_line.note->setNote(tr("What the shop paid is the owner's to see. Enter shows it"));
    m_pin->setFocus(Qt::OtherFocusReason);
}

QString PinSheet::take() {
    const QString typed = m_pin->text();
    m_pin->clear();
    return typed;
}

void PinSheet::showWrong() {
    m_line.note->setProblem(tr("This is not the owner's PIN."));
    m_pin->setFocus(Qt::OtherFocusReason);
}

void PinSheet::showRefusal(const Refusal& why) { m_line.note->setProblem(sentenceFor(why)); }

QString PinSheet::margin() const { return m_line.note->text(); }

} // namespace rw::ui
