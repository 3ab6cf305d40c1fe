// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/paper_sheet.h"

#include "ui/text/paper_words.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/margin_note.h"

#include <QKeyEvent>
#include <QVBoxLayout>

namespace rw::ui {

PaperSheet::PaperSheet(SlipPrinter& printer, QWidget* parent)
    : QWidget(parent)
    , m_printer(printer)
    , m_sheet(new Sheet(this))
    , m_lines{} {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    m_sheet->addHeading(tr("Printers and paper at this station"));
    for (const Slip slip : kSlips) {
        m_lines.at(static_cast<std::size_t>(slip)) = makeLine(slip);
    }
    m_sheet->addStretch();
}

PaperSheet::Line PaperSheet::makeLine(Slip slip) {
    Line made{new Choice(m_sheet), new Choice(m_sheet), {}};
    const QString what = slipWord(slip);
    made.printer->setAccessibleName(tr("Printer for the %1").arg(what));
    made.paper->setAccessibleName(tr("Paper for the %1").arg(what));
    for (const PaperSize size : kPaperSizes) {
        made.paper->addItem(paperSizeWord(size), static_cast<int>(size));
    }
    QString label = what;
    label[0] = label[0].toUpper();
    made.sheet = m_sheet->addLine(label, QList<QWidget*>{made.printer, made.paper});
    for (auto* choice : {made.printer, made.paper}) {
        connect(choice, &QComboBox::currentIndexChanged, this, [this, slip] { keep(slip); });
    }
    return made;
}

void PaperSheet::enter() {
    for (const Slip slip : kSlips) {
        fill(slip);
    }
    printerOf(Slip::Tag)->setFocus(Qt::OtherFocusReason);
}

void PaperSheet::fill(Slip slip) {
    m_filling = true;
    const SlipChoice kept = m_printer.choice(slip);
    auto* printers = printerOf(slip);
    printers->clear();
    printers->addItem(tr("none: keep a PDF"), QString());
    for (const QString& name : m_printer.printers()) {
        printers->addItem(name, name);
    }
    if (printers->findData(kept.printer) < 0) {
        printers->addItem(tr("%1 (not there)").arg(kept.printer), kept.printer);
    }
    printers->setCurrentIndex(printers->findData(kept.printer));
    paperOf(slip)->setCurrentIndex(paperOf(slip)->findData(static_cast<int>(kept.paper)));
    m_filling = false;
    explain(slip);
}

void PaperSheet::keep(Slip slip) {
    if (!m_filling) {
        m_printer.choose(slip, {printerOf(slip)->currentData().toString(),
                                static_cast<PaperSize>(paperOf(slip)->currentData().toInt())});
        explain(slip);
    }
}

void PaperSheet::explain(Slip slip) {
    const SlipChoice kept = m_printer.choice(slip);
    const bool toFile = kept.printer.isEmpty() || !m_printer.printers().contains(kept.printer);
    line(slip).sheet.note->setNote(toFile ? pdfFolderText(m_printer.folder()) : QString());
}

void PaperSheet::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT left();
    } else {
        QWidget::keyPressEvent(event);
    }
}

} // namespace rw::ui
