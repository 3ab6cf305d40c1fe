// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/counter/to_be_strung_sheet.h"

#include "ui/presenter/shift.h"
#include "ui/presenter/to_be_strung_presenter.h"
#include "ui/text/sentences.h"
#include "ui/widgets/margin_note.h"

#include <QKeyEvent>
#include <QVBoxLayout>

namespace rw::ui {

ToBeStrungSheet::ToBeStrungSheet(ToBeStrungPresenter& jobs, Shift& shift, QWidget* parent)
    : QWidget(parent)
    , m_jobs(jobs)
    , m_shift(shift)
    , m_list(new JobList(tr("To be strung"),
                         tr("↑ ↓ choose   ·   W wait   ·   G go on   ·   X withdraw   ·   Esc back"), this))
    , m_sheet(new Sheet(this))
    , m_whatFor(new QLineEdit(m_sheet))
    , m_withdraw(new QPushButton(tr("Withdraw"), m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_list, 1);
    layout->addWidget(m_sheet);
    m_whatFor->setAccessibleName(tr("What it waits for"));
    m_whatFor->setPlaceholderText(tr("a call back, a string that is on its way"));
    m_withdraw->setDefault(true);
    m_whatForLine = m_sheet->addLine(tr("Waits &for"), m_whatFor);
    m_withdrawLine = m_sheet->addLine(QString(), m_withdraw);

    connect(m_list, &JobList::typed, this, &ToBeStrungSheet::act);
    connect(m_list, &JobList::moved, this, [this] { ask(Asking::Nothing); });
    connect(m_withdraw, &QPushButton::clicked, this, [this] {
        if (const auto job = m_list->chosen()) {
            m_jobs.withdraw(*job);
        }
    });
    connect(&m_jobs, &ToBeStrungPresenter::linesChanged, this, &ToBeStrungSheet::showLines);
    connect(&m_jobs, &ToBeStrungPresenter::done, this, &ToBeStrungSheet::backToTheList);
    connect(&m_jobs, &ToBeStrungPresenter::refused, this, [this](const Refusal& why) {
        if (m_asking == Asking::Nothing) {
            Q_EMIT said(sentenceFor(why));
        } else {
            (m_asking == Asking::Withdraw ? m_withdrawLine : m_whatForLine).note->setProblem(sentenceFor(why));
        }
    });
    showLines();
    ask(Asking::Nothing);
}

void ToBeStrungSheet::enter(const std::optional<CustomerId>& person) {
    m_list->begin(person);
    showLines();
    m_jobs.refresh();
    backToTheList();
}

void ToBeStrungSheet::showLines() {
    m_list->setLines(m_jobs.lines(), m_shift.now(), m_shift.zone(),
                     m_jobs.isLoaded() ? tr("Nothing waits to be strung.") : QString());
}

void ToBeStrungSheet::backToTheList() {
    ask(Asking::Nothing);
    list()->setFocus(Qt::OtherFocusReason);
}

void ToBeStrungSheet::ask(Asking asking) {
    m_asking = asking;
    const bool whatFor = asking == Asking::WhatFor;
    const bool withdraw = asking == Asking::Withdraw;
    m_sheet->setVisible(whatFor || withdraw);
    m_whatFor->setVisible(whatFor);
    m_sheet->setLineVisible(m_whatForLine, whatFor);
    m_withdraw->setVisible(withdraw);
    m_sheet->setLineVisible(m_withdrawLine, withdraw);
    m_whatForLine.note->clearAll();
    m_withdrawLine.note->clearAll();
    if (whatFor) {
        m_whatFor->clear();
        m_whatForLine.note->setNote(tr("Enter lets it wait, Esc goes back"));
        m_whatFor->setFocus(Qt::OtherFocusReason);
    } else if (withdraw) {
        m_withdraw->setText(tr("Withdraw %1").arg(m_list->chosenLine()->number));
        m_withdrawLine.note->setNote(
            tr("it will not be strung, and the string promised to it is free again. Enter withdraws it, Esc keeps it"));
        m_withdraw->setFocus(Qt::OtherFocusReason);
    }
}

void ToBeStrungSheet::act(int key) {
    switch (key) {
    case Qt::Key_W:
        ask(Asking::WhatFor);
        return;
    case Qt::Key_X:
        ask(Asking::Withdraw);
        return;
    case Qt::Key_G:
        m_jobs.resume(*m_list->chosen());
        return;
    default:
        return;
    }
}

void ToBeStrungSheet::keyPressEvent(QKeyEvent* event) {
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && !event->isAutoRepeat() && m_asking == Asking::WhatFor && m_list->chosen()) {
        m_jobs.letWait(*m_list->chosen(), m_whatFor->text());
    } else if (event->key() == Qt::Key_Escape && m_asking == Asking::Nothing) {
        Q_EMIT left();
    } else if (event->key() == Qt::Key_Escape) {
        backToTheList();
    } else if (!isEnter) {
        QWidget::keyPressEvent(event);
    }
}

} // namespace rw::ui
