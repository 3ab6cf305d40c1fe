// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stockroom/correct_strip.h"

#include "ui/text/format.h"
#include "ui/text/sentences.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/margin_note.h"

#include <QVBoxLayout>

namespace rw::ui {

CorrectStrip::CorrectStrip(QWidget* parent)
    : QWidget(parent)
    , m_sheet(new Sheet(this))
    , m_measured(new LengthEdit(m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    m_measured->setMayBeZero(true);
    m_line = m_sheet->addLine(tr("Really there"), m_measured);
    m_line.note->watch(m_measured);
}

void CorrectStrip::start(const Lot& lot) {
    m_lot = lot.id;
    m_measured->setValue(std::nullopt);
    m_line.note->clearAll();
    m_line.note->setNote(
        tr("%1 holds %2 by the book. Enter corrects it, Esc goes back.").arg(fromUtf8(lot.tag), heldText(lot.length)));
    m_measured->setFocus(Qt::OtherFocusReason);
}

std::optional<Length> CorrectStrip::measured() {
    if (m_measured->problem()) {
        m_line.note->sendBackTo(m_measured);
        return std::nullopt;
    }
    return m_measured->readable();
}

void CorrectStrip::showRefusal(const Refusal& why) { m_line.note->setProblem(sentenceFor(why)); }

} // namespace rw::ui
