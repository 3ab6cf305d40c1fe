// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/machine_choice.h"

#include "ui/text/bench_words.h"

#include <QSignalBlocker>

namespace rw::ui {

MachineChoice::MachineChoice(Shift& shift, QWidget* parent)
    : QObject(parent)
    , m_shift(shift)
    , m_line(new Choice(parent)) {
    m_line->setAccessibleName(tr("Machine"));
    connect(m_line, &QComboBox::currentIndexChanged, this, [this] {
        if (const qint64 id = m_line->currentData().toLongLong(); id != 0) {
            m_shift.setMachine(MachineId::of(id));
        }
    });
    connect(&shift, &Shift::shopChanged, this, &MachineChoice::fill);
    connect(&shift, &Shift::machineChanged, this, &MachineChoice::fill);
    fill();
}

void MachineChoice::fill() {
    {
        const QSignalBlocker quiet(m_line);
        m_line->clear();
        if (m_shift.hasShop()) {
            for (const auto& machine : m_shift.shop().machines) {
                m_line->addItem(machineText(machine), qint64{machine.id->value()});
            }
        }
        if (m_shift.machine()) {
            m_line->setCurrentIndex(m_line->findData(qint64{m_shift.machine()->value()}));
        }
    }
    Q_EMIT shown();
}

void MachineChoice::turnToNext() {
    if (hasOther()) {
        m_line->setCurrentIndex((m_line->currentIndex() + 1) % m_line->count());
    }
}

} // namespace rw::ui
