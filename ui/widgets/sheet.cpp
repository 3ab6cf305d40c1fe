// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/sheet.h"

#include "ui/widgets/look.h"
#include "ui/widgets/margin_note.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>

#include <algorithm>

namespace rw::ui {

namespace {
constexpr int kLabelColumn = 0;
constexpr int kWriteColumn = 1;
constexpr int kGutterColumn = 2; ///< the margin rule stands in it
constexpr int kMarginColumn = 3;
constexpr int kGutter = 36;
} // namespace

Sheet::Sheet(QWidget* parent)
    : QWidget(parent)
    , m_grid(new QGridLayout(this)) {
    m_grid->setContentsMargins(28, 18, 24, 14);
    m_grid->setHorizontalSpacing(10);
    m_grid->setVerticalSpacing(7);
    m_grid->setColumnMinimumWidth(kLabelColumn, 84);
    m_grid->setColumnMinimumWidth(kGutterColumn, kGutter);
    m_grid->setColumnStretch(kWriteColumn, 11);
    m_grid->setColumnStretch(kMarginColumn, 10);
}

QLabel* Sheet::addLabel(const QString& label, QWidget* buddy) {
    auto* words = new QLabel(label, this);
    // A label's letter goes to whatever takes the keyboard in the end.
    while (buddy->focusProxy() != nullptr) {
        buddy = buddy->focusProxy();
    }
    words->setBuddy(buddy);
    words->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    quieten(*words);
    m_grid->addWidget(words, m_row, kLabelColumn);
    return words;
}

Sheet::Line Sheet::addLine(const QString& label, QWidget* editor) {
    if (editor->accessibleName().isEmpty() && !label.isEmpty()) {
        QString name = label;
        editor->setAccessibleName(name.remove(QLatin1Char('&')));
    }
    Line line{addLabel(label, editor), new MarginNote(this)};
    // A button is as wide as its words, not as a line to write on.
    const bool isButton = qobject_cast<QPushButton*>(editor) != nullptr;
    m_grid->addWidget(editor, m_row, kWriteColumn, isButton ? Qt::AlignLeft : Qt::Alignment());
    m_grid->addWidget(line.note, m_row, kMarginColumn);
    m_notes << line.note;
    ++m_row;
    return line;
}

void Sheet::setTight() {
    m_grid->setContentsMargins(28, 8, 24, 6);
    m_grid->setVerticalSpacing(2);
}

Sheet::Line Sheet::addLine(const QString& label, const QList<QWidget*>& parts) {
    auto* row = new QHBoxLayout;
    row->setSpacing(14);
    for (auto* part : parts) {
        row->addWidget(part, part->sizePolicy().horizontalStretch());
    }
    Line line{addLabel(label, parts.front()), new MarginNote(this)};
    m_grid->addLayout(row, m_row, kWriteColumn);
    m_grid->addWidget(line.note, m_row, kMarginColumn);
    m_notes << line.note;
    ++m_row;
    return line;
}

void Sheet::addHeading(const QString& words) {
    auto* heading = new QLabel(words, this);
    heading->setFont(largeFont(*this, 1.5));
    m_grid->addWidget(heading, m_row, kLabelColumn, 1, 2);
    ++m_row;
}

void Sheet::addAcross(QWidget* widget) {
    m_grid->addWidget(widget, m_row, kLabelColumn, 1, 4);
    m_across = widget;
    ++m_row;
}

void Sheet::addStretch() {
    m_grid->setRowStretch(m_row, 1);
    ++m_row;
}

void Sheet::setLineVisible(const Line& line, bool visible) {
    line.label->setVisible(visible);
    line.note->setVisible(visible);
}

void Sheet::paintEvent(QPaintEvent*) {
    paintPaper(*this);
    // The margin rule, as on ruled paper.
    const auto shown =
        std::find_if(m_notes.begin(), m_notes.end(), [](const MarginNote* note) { return note->isVisible(); });
    if (shown != m_notes.end()) {
        const int x = (*shown)->x() - m_grid->horizontalSpacing() - kGutter / 2;
        QPainter painter(this);
        painter.setPen(QPen(programPalette().accent, 1));
        const int foot = m_across != nullptr ? m_across->y() - m_grid->verticalSpacing() : height() - 1;
        painter.drawLine(x, 1, x, foot - 1);
    }
}

} // namespace rw::ui
