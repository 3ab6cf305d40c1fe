// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/port/slip_printer.h"
#include "ui/widgets/sheet.h"

#include <QComboBox>
#include <QWidget>

#include <array>

namespace rw::ui {

/// Which printer and which paper serve each slip at this station. What is chosen is kept at once.
class PaperSheet final : public QWidget {
    Q_OBJECT

public:
    explicit PaperSheet(SlipPrinter& printer, QWidget* parent = nullptr);

    void enter(); ///< looks for the printers again
    [[nodiscard]] QComboBox* printerOf(Slip slip) const { return line(slip).printer; }
    [[nodiscard]] QComboBox* paperOf(Slip slip) const { return line(slip).paper; }

Q_SIGNALS:
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Line {
        QComboBox* printer;
        QComboBox* paper;
        Sheet::Line sheet;
    };
    [[nodiscard]] const Line& line(Slip slip) const { return m_lines.at(static_cast<std::size_t>(slip)); }
    Line makeLine(Slip slip);
    void fill(Slip slip);
    void keep(Slip slip);
    void explain(Slip slip);

    SlipPrinter& m_printer;
    Sheet* m_sheet;
    std::array<Line, kSlips.size()> m_lines;
    bool m_filling = false;
};

} // namespace rw::ui
