// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/counter/new_frame_form.h"

#include "ui/text/words.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/pattern_edit.h"

#include <QHBoxLayout>
#include <QKeyEvent>

namespace rw::ui {

NewFrameForm::NewFrameForm(QWidget* parent)
    : QWidget(parent)
    , m_name(new QLineEdit(this))
    , m_sport(new Choice(this))
    , m_pattern(new PatternEdit(this))
    , m_mark(new QLineEdit(this)) {
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(14);
    layout->addWidget(m_name, 5);
    layout->addWidget(m_sport, 3);
    layout->addWidget(m_pattern, 2);
    layout->addWidget(m_mark, 1);
    m_name->setAccessibleName(tr("Frame"));
    m_name->setPlaceholderText(tr("as it is written on the frame"));
    m_sport->setAccessibleName(tr("Sport"));
    m_pattern->setAccessibleName(tr("Pattern"));
    m_mark->setAccessibleName(tr("Mark of this racket"));
    m_mark->setPlaceholderText(tr("mark"));
    for (const Sport sport : {Sport::Tennis, Sport::Squash, Sport::Badminton}) {
        m_sport->addItem(sportWord(sport), static_cast<int>(sport));
    }
    setFocusProxy(m_name);
}

void NewFrameForm::start(const QString& name, const QString& mark) {
    m_name->setText(name);
    m_sport->setCurrentIndex(0);
    m_pattern->clear();
    m_mark->setText(mark);
    (name.isEmpty() ? static_cast<QWidget*>(m_name) : m_sport)->setFocus(Qt::OtherFocusReason);
}

void NewFrameForm::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter: {
        const auto pattern = m_pattern->value();
        if (!pattern) {
            Q_EMIT incomplete();
            m_pattern->setFocus(Qt::OtherFocusReason);
            return;
        }
        FrameModel frame;
        frame.name = m_name->text().trimmed().toStdString();
        frame.sport = static_cast<Sport>(m_sport->currentData().toInt());
        frame.pattern = *pattern;
        Q_EMIT wanted(frame, m_mark->text().trimmed());
        return;
    }
    case Qt::Key_Escape:
        Q_EMIT dropped();
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace rw::ui
