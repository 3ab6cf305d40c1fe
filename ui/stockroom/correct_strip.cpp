// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stockroom/correct_strip.h"

#include "ui/text/stockroom_words.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/refused_line.h"

#include <QVBoxLayout>

namespace rw::ui {

CorrectStrip::CorrectStrip(QWidget* parent)
    : QWidget(parent)
    , m_sheet(new Sheet(this))
    , m_measured(new LengthEdit(m_sheet))
    , m_why(new QLineEdit(m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    m_measured->setMayBeZero(true);
    m_line = m_sheet->addLine(tr("Really there"), m_measured);
    m_line.note->watch(m_measured);
    m_why->setAccessibleName(tr("Why, in words"));
    m_whyLine = m_sheet->addLine(tr("Why"), m_why);
    m_sheet->addStretch();
}

void CorrectStrip::start(const Lot& lot) {
    m_lot = lot.id;
    m_measured->setValue(std::nullopt);
    m_why->clear();
    m_line.note->clearAll();
    m_line.note->setNote(correctHintText(lot));
    m_whyLine.note->clearAll();
    m_whyLine.note->setNote(tr("if you like: what the tape showed, what was not booked"));
    m_measured->setFocus(Qt::OtherFocusReason);
}

std::optional<Length> CorrectStrip::measured() {
    if (m_measured->problem()) {
        m_line.note->sendBackTo(m_measured);
        return std::nullopt;
    }
    return m_measured->readable();
}

void CorrectStrip::showRefusal(const Refusal& why) {
    showBeside(why, {{"reason", m_why, m_whyLine.note}}, m_line.note);
}

} // namespace rw::ui
