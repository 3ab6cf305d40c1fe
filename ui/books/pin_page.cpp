// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/pin_page.h"

#include "ui/books/page_heading.h"
#include "ui/presenter/owner_presenter.h"
#include "ui/text/sentences.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/pin_sheet.h"

#include <QVBoxLayout>

namespace rw::ui {

PinPage::PinPage(OwnerPresenter& owner, QWidget* parent)
    : BooksPage(parent)
    , m_owner(owner)
    , m_words(pageWords(this))
    , m_sheet(new Sheet(this))
    , m_current(makePinLine(tr("The PIN as it is now"), m_sheet))
    , m_pin(makePinLine(tr("The new PIN"), m_sheet))
    , m_again(makePinLine(tr("The new PIN again"), m_sheet)) {
    m_currentLine = m_sheet->addLine(tr("PIN now"), m_current);
    m_pinLine = m_sheet->addLine(tr("New PIN"), m_pin);
    m_againLine = m_sheet->addLine(tr("Again"), m_again);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    layout->addWidget(pageHeading(name(), this));
    layout->addWidget(m_words);
    layout->addWidget(m_sheet);
    layout->addStretch(1);
    for (auto* line : {m_current, m_pin, m_again}) {
        connect(line, &QLineEdit::textEdited, this, &PinPage::clearProblems);
    }
    addCommand(tr("&Keep it"), {QKeySequence(Qt::Key_Return), QKeySequence(Qt::Key_Enter)}, [this] { keep(); });
    m_withoutKey = addCommand(tr("&Do without"), {QKeySequence(Qt::CTRL | Qt::Key_Delete)}, [this] { doWithout(); });

    connect(&owner, &OwnerPresenter::changed, this, &PinPage::showState);
    connect(&owner, &OwnerPresenter::kept, this, [this] {
        clear();
        Q_EMIT said(m_owner.hasPin() ? tr("The PIN is kept. It is asked for from now on.")
                                     : tr("There is no PIN any more; nothing is hidden."));
        if (isVisible()) {
            enter();
        }
    });
    connect(&owner, &OwnerPresenter::wrongPin, this, [this] {
        if (isVisible()) {
            m_currentLine.note->setProblem(tr("This is not the owner's PIN."));
            m_current->setFocus(Qt::OtherFocusReason);
            m_current->selectAll();
        }
    });
    connect(&owner, &OwnerPresenter::refused, this, [this](const Refusal& why) {
        m_pinLine.note->setProblem(sentenceFor(why));
        if (isVisible()) {
            m_pin->setFocus(Qt::OtherFocusReason);
        }
    });
    showState();
}

void PinPage::enter() { (m_owner.hasPin() ? m_current : m_pin)->setFocus(Qt::OtherFocusReason); }

void PinPage::refresh() { m_owner.refresh(); }

void PinPage::leave() { clear(); }

void PinPage::showState() {
    const bool has = m_owner.hasPin();
    m_words->setText(has ? tr("What the shop paid for its string, what jobs cost and what is left of them is shown to "
                              "whoever gives this PIN, until it is hidden again. Nobody can look a PIN up that was "
                              "forgotten.")
                         : tr("Everybody at this window sees what the shop paid for its string and what is left of a "
                              "job. With a PIN, only who gives it does."));
    m_current->setVisible(has);
    m_sheet->setLineVisible(m_currentLine, has);
    m_pinLine.note->setNote(tr("4 characters or more"));
    m_againLine.note->setNote(tr("Enter keeps it"));
    m_withoutKey->setEnabled(has);
    Q_EMIT keysChanged();
}

void PinPage::clear() {
    for (auto* line : {m_current, m_pin, m_again}) {
        line->clear();
    }
    clearProblems();
}

void PinPage::clearProblems() {
    for (const auto& line : {m_currentLine, m_pinLine, m_againLine}) {
        line.note->setProblem({});
    }
}

void PinPage::keep() {
    clearProblems();
    if (m_pin->text() != m_again->text()) {
        m_againLine.note->setProblem(tr("This is not the same as the line above."));
        m_again->setFocus(Qt::OtherFocusReason);
        m_again->selectAll();
        return;
    }
    m_owner.change(m_current->text(), m_pin->text());
}

void PinPage::doWithout() {
    clearProblems();
    m_owner.change(m_current->text(), std::nullopt);
}

QString PinPage::problem() const {
    for (const auto& line : {m_currentLine, m_pinLine, m_againLine}) {
        if (!line.note->problem().isEmpty()) {
            return line.note->problem();
        }
    }
    return {};
}

} // namespace rw::ui
