// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stockroom/take_off_strip.h"

#include "ui/text/stockroom_words.h"
#include "ui/text/words.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/refused_line.h"

#include <QVBoxLayout>

namespace rw::ui {

TakeOffStrip::TakeOffStrip(QWidget* parent)
    : QWidget(parent)
    , m_sheet(new Sheet(this))
    , m_how(new Choice(m_sheet))
    , m_why(new QLineEdit(m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    m_how->addItem(movementWord(MovementReason::ThrownAway), static_cast<int>(desk::LotLeaves::ThrownAway));
    m_how->addItem(movementWord(MovementReason::Returned), static_cast<int>(desk::LotLeaves::Returned));
    m_how->setAccessibleName(tr("Where it goes"));
    m_why->setAccessibleName(tr("Why, in words"));
    m_howLine = m_sheet->addLine(tr("It is"), m_how);
    m_whyLine = m_sheet->addLine(tr("Why"), m_why);
    m_sheet->addStretch();
}

void TakeOffStrip::start(const Lot& lot, bool tooShort) {
    m_lot = lot.id;
    // What somebody else owns goes back to them.
    const auto usual = lot.owner ? desk::LotLeaves::Returned : desk::LotLeaves::ThrownAway;
    m_how->setCurrentIndex(m_how->findData(static_cast<int>(usual)));
    m_why->setText(tooShort && !lot.owner ? tooShortToKeepText() : QString());
    m_howLine.note->clearAll();
    m_whyLine.note->clearAll();
    m_howLine.note->setNote(takeOffHintText(lot));
    m_whyLine.note->setNote(tr("frayed, wrong colour, fetched by its owner: a few words"));
    m_why->setFocus(Qt::OtherFocusReason);
    m_why->selectAll();
}

desk::LotLeaves TakeOffStrip::how() const { return static_cast<desk::LotLeaves>(m_how->currentData().toInt()); }

void TakeOffStrip::showRefusal(const Refusal& why) {
    m_whyLine.note->setProblem({});
    showBeside(why, {{"reason", m_why, m_whyLine.note}}, m_howLine.note);
}

} // namespace rw::ui
