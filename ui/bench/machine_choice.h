// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/presenter/shift.h"
#include "ui/widgets/choice.h"

#include <QObject>

namespace rw::ui {

/// The line on which somebody chooses the machine they work at, with its dial and its reach.
class MachineChoice final : public QObject {
    Q_OBJECT

public:
    MachineChoice(Shift& shift, QWidget* parent);

    [[nodiscard]] Choice* line() const { return m_line; }
    [[nodiscard]] bool hasOther() const { return m_line->count() > 1; }
    void turnToNext();

Q_SIGNALS:
    void shown(); ///< what is offered or chosen has changed

private:
    void fill();

    Shift& m_shift;
    Choice* m_line;
};

} // namespace rw::ui
