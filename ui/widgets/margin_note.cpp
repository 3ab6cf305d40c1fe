// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/margin_note.h"

#include "ui/text/sentences.h"
#include "ui/widgets/value_edit.h"

#include <QStringList>

namespace rw::ui {

MarginNote::MarginNote(QWidget* parent)
    : QLabel(parent) {
    setWordWrap(true);
    setTextFormat(Qt::PlainText);
    setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    setMinimumWidth(80);
}

void MarginNote::setNote(const QString& words) {
    m_note = words;
    write();
}

void MarginNote::setWarning(const QString& words) {
    m_warning = words;
    write();
}

void MarginNote::setProblem(const QString& words) {
    m_problem = words;
    write();
}

void MarginNote::sendBackTo(ValueEdit* editor) {
    setProblem(sentenceFor(*editor->problem()));
    editor->setFocus(Qt::OtherFocusReason);
}

void MarginNote::clearAll() {
    m_note.clear();
    m_warning.clear();
    m_problem.clear();
    m_complaining = nullptr;
    write();
}

void MarginNote::write() {
    if (!m_problem.isEmpty()) {
        setText(QStringLiteral("✕ ") + m_problem);
    } else {
        QStringList lines;
        if (!m_warning.isEmpty()) {
            lines << QStringLiteral("▲ ") + m_warning;
        }
        if (!m_note.isEmpty()) {
            lines << m_note;
        }
        setText(lines.join(QLatin1Char('\n')));
    }
    QFont font = this->font();
    font.setBold(!m_problem.isEmpty());
    setFont(font);
}

void MarginNote::watch(ValueEdit* editor) {
    m_watched << editor;
    connect(editor, &ValueEdit::left, this, [this, editor] { check(editor, !editor->isBlank()); });
    connect(editor, &ValueEdit::valueChanged, this, [this, editor] { check(editor, false); });
}

void MarginNote::check(ValueEdit* editor, bool mayComplain) {
    const auto problem = editor->problem();
    if (problem && mayComplain) {
        m_complaining = editor;
        const QString words = sentenceFor(*problem);
        editor->setAccessibleDescription(words);
        setProblem(words);
    } else if (m_complaining == editor) {
        m_complaining = nullptr;
        editor->setAccessibleDescription({});
        setProblem({});
    }
}

bool MarginNote::showProblems() {
    for (auto* editor : m_watched) {
        if (editor->problem()) {
            check(editor, true);
            return false;
        }
    }
    return true;
}

} // namespace rw::ui
