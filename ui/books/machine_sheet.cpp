// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/machine_sheet.h"

#include "ui/text/format.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/measure_edits.h"
#include "ui/widgets/refused_line.h"

#include <QVBoxLayout>

namespace rw::ui {

MachineSheet::MachineSheet(QWidget* parent)
    : QWidget(parent)
    , m_sheet(new Sheet(this))
    , m_name(new QLineEdit(m_sheet))
    , m_unit(new Choice(m_sheet))
    , m_step(new StepEdit(m_sheet))
    , m_reach(new LengthEdit(m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    m_sheet->setTight();
    m_unit->setAccessibleName(tr("Unit of its dial"));
    for (const TensionUnit unit : {TensionUnit::Pound, TensionUnit::Kilogram}) {
        m_unit->addItem(tr("dial in %1").arg(fromUtf8(unitText(unit))), static_cast<int>(unit));
    }
    m_step->setAccessibleName(tr("Step of its dial"));
    m_reach->setMayBeZero(true);
    m_nameLine = m_sheet->addLine(tr("&Name"), m_name);
    m_dialLine = m_sheet->addLine(tr("&Dial"), {m_unit, m_step});
    m_reachLine = m_sheet->addLine(tr("R&each"), m_reach);
    m_dialLine.note->watch(m_step);
    m_reachLine.note->watch(m_reach);
    setFocusProxy(m_name);
}

void MachineSheet::start(const desk::Machine& machine) {
    m_machine = machine;
    m_name->setText(fromUtf8(machine.name));
    m_unit->setCurrentIndex(m_unit->findData(static_cast<int>(machine.unit)));
    m_step->setValue(machine.stepHundredths);
    m_reach->setValue(machine.reach);
    for (const auto& line : {m_nameLine, m_dialLine, m_reachLine}) {
        line.note->clearAll();
    }
    m_nameLine.note->setNote(tr("as it is called at the bench"));
    m_dialLine.note->setNote(tr("the card shows its settings in this unit and these steps"));
    m_reachLine.note->setNote(tr("from the frame to where it grips the string; cuts count on the longest"));
    m_name->setFocus(Qt::OtherFocusReason);
    m_name->selectAll();
}

std::optional<desk::Machine> MachineSheet::machine() {
    m_nameLine.note->setProblem({});
    if (m_step->problem()) {
        m_dialLine.note->sendBackTo(m_step);
        return std::nullopt;
    }
    if (m_reach->problem()) {
        m_reachLine.note->sendBackTo(m_reach);
        return std::nullopt;
    }
    desk::Machine machine = *m_machine;
    machine.name = m_name->text().toStdString();
    machine.unit = static_cast<TensionUnit>(m_unit->currentData().toInt());
    machine.stepHundredths = *m_step->readable();
    machine.reach = *m_reach->readable();
    return machine;
}

void MachineSheet::showRefusal(const Refusal& why) {
    showBeside(
        why,
        {{"name", m_name, m_nameLine.note}, {"step", m_step, m_dialLine.note}, {"reach", m_reach, m_reachLine.note}},
        m_nameLine.note);
}

} // namespace rw::ui
