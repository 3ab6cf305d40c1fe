// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/counter/to_be_strung_sheet.h"

#include "core/frames/marked_range.h"
#include "ui/presenter/shift.h"
#include "ui/presenter/to_be_strung_presenter.h"
#include "ui/text/counter_words.h"
#include "ui/text/sentences.h"
#include "ui/text/tag_words.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/tension_edit.h"

#include <QKeyEvent>
#include <QVBoxLayout>

namespace rw::ui {

ToBeStrungSheet::ToBeStrungSheet(ToBeStrungPresenter& jobs, Shift& shift, QWidget* parent)
    : QWidget(parent)
    , m_jobs(jobs)
    , m_shift(shift)
    , m_list(
          new JobList(tr("To be strung"),
                      tr("↑ ↓ choose   ·   W wait   ·   G go on   ·   T tensions   ·   A agreed   ·   X withdraw   ·   "
                         "Esc back"),
                      this))
    , m_sheet(new Sheet(this))
    , m_whatFor(new QLineEdit(m_sheet))
    , m_withdraw(new QPushButton(tr("Withdraw"), m_sheet))
    , m_agreedBy(new QLineEdit(m_sheet))
    , m_mains(new TensionEdit(m_sheet))
    , m_crosses(new TensionEdit(m_sheet)) {
    build();
    connect(m_list, &JobList::typed, this, &ToBeStrungSheet::act);
    connect(m_list, &JobList::moved, this, [this] { ask(Asking::Nothing); });
    connect(m_list, &JobList::tagNotHere, this,
            [this](std::int64_t number) { Q_EMIT said(notInThisListText(number)); });
    connect(m_withdraw, &QPushButton::clicked, this, [this] {
        if (const auto job = m_list->chosen()) {
            m_jobs.withdraw(*job);
        }
    });
    connect(&m_jobs, &ToBeStrungPresenter::linesChanged, this, &ToBeStrungSheet::showLines);
    connect(&m_jobs, &ToBeStrungPresenter::done, this, &ToBeStrungSheet::backToTheList);
    connect(&m_jobs, &ToBeStrungPresenter::withdrawn, this, &ToBeStrungSheet::backToTheList);
    connect(&m_jobs, &ToBeStrungPresenter::agreed, this, &ToBeStrungSheet::backToTheList);
    connect(&m_jobs, &ToBeStrungPresenter::askedChanged, this, &ToBeStrungSheet::backToTheList);
    connect(&m_jobs, &ToBeStrungPresenter::askedDiffers, this, &ToBeStrungSheet::showTheirs);
    connect(&m_jobs, &ToBeStrungPresenter::refused, this, &ToBeStrungSheet::showRefusal);
    showLines();
    ask(Asking::Nothing);
}

void ToBeStrungSheet::build() {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_list, 1);
    layout->addWidget(m_sheet);
    m_whatFor->setAccessibleName(tr("What it waits for"));
    m_whatFor->setPlaceholderText(tr("a call back, a string that is on its way"));
    m_withdraw->setDefault(true);
    m_agreedBy->setAccessibleName(tr("Who agrees"));
    m_agreedBy->setPlaceholderText(tr("the customer"));
    m_mains->setAccessibleName(tr("Tension of the mains"));
    m_crosses->setAccessibleName(tr("Tension of the crosses"));
    m_whatForLine = m_sheet->addLine(tr("Waits &for"), m_whatFor);
    m_withdrawLine = m_sheet->addLine(QString(), m_withdraw);
    m_agreedLine = m_sheet->addLine(tr("&Agreed by"), m_agreedBy);
    m_tensionLine = m_sheet->addLine(tr("&Tensions"), {m_mains, m_crosses});
    m_tensionLine.note->watch(m_mains);
    m_tensionLine.note->watch(m_crosses);
}

void ToBeStrungSheet::enter(const std::optional<CustomerId>& person) {
    m_list->begin(person);
    showLines();
    m_jobs.refresh();
    backToTheList();
}

void ToBeStrungSheet::enterAt(JobId job) {
    enter(std::nullopt);
    m_list->beginAt(job);
}

void ToBeStrungSheet::showLines() {
    m_list->setLines(m_jobs.lines(), m_shift.now(), m_shift.zone(),
                     m_jobs.isLoaded() ? nothingToBeStrungText() : QString());
}

void ToBeStrungSheet::showRefusal(const Refusal& why) {
    switch (m_asking) {
    case Asking::Nothing:
        Q_EMIT said(sentenceFor(why));
        return;
    case Asking::WhatFor:
        m_whatForLine.note->setProblem(sentenceFor(why));
        return;
    case Asking::Withdraw:
        m_withdrawLine.note->setProblem(sentenceFor(why));
        return;
    case Asking::Agreed:
        m_agreedLine.note->setProblem(sentenceFor(why));
        return;
    case Asking::Tensions:
        m_tensionLine.note->setProblem(sentenceFor(why));
        return;
    }
}

void ToBeStrungSheet::backToTheList() {
    ask(Asking::Nothing);
    m_list->takeKeyboard();
}

void ToBeStrungSheet::ask(Asking asking) {
    m_asking = asking;
    m_sheet->setVisible(asking != Asking::Nothing);
    const auto show = [this](Sheet::Line& line, std::initializer_list<QWidget*> parts, bool shown) {
        for (auto* part : parts) {
            part->setVisible(shown);
        }
        m_sheet->setLineVisible(line, shown);
        line.note->clearAll();
    };
    show(m_whatForLine, {m_whatFor}, asking == Asking::WhatFor);
    show(m_withdrawLine, {m_withdraw}, asking == Asking::Withdraw);
    show(m_agreedLine, {m_agreedBy}, asking == Asking::Agreed);
    show(m_tensionLine, {m_mains, m_crosses}, asking == Asking::Tensions);
}

void ToBeStrungSheet::askWhatFor() {
    ask(Asking::WhatFor);
    m_whatFor->clear();
    m_whatForLine.note->setNote(tr("Enter lets it wait, Esc goes back"));
    m_whatFor->setFocus(Qt::OtherFocusReason);
}

void ToBeStrungSheet::askWithdraw() {
    ask(Asking::Withdraw);
    m_withdraw->setText(tr("Withdraw %1").arg(chosen()->number));
    m_withdrawLine.note->setNote(
        tr("it will not be strung, and the string promised to it is free again. Enter withdraws it, Esc keeps it"));
    m_withdraw->setFocus(Qt::OtherFocusReason);
}

void ToBeStrungSheet::askAgreed() {
    const desk::JobLine& line = *chosen();
    const auto above = aboveMarked({.lowest = std::nullopt, .highest = line.highestMarked}, line.asked);
    if (!above || !line.notAgreed) {
        Q_EMIT said(nothingToAgreeText(line, above.has_value()));
        return;
    }
    ask(Asking::Agreed);
    m_agreedBy->clear();
    m_agreedLine.note->setWarning(aboveText(*above));
    m_agreedLine.note->setNote(readOutText(aboveMarkedWords(m_shift.shop().aboveMarkedWords)));
    m_agreedBy->setFocus(Qt::OtherFocusReason);
}

void ToBeStrungSheet::askTensions() {
    m_seen = chosen()->asked;
    ask(Asking::Tensions);
    m_mains->setValue(m_seen->mains);
    m_crosses->setValue(m_seen->crosses);
    m_tensionLine.note->setNote(tr("mains, then crosses; “-2” takes two off. Enter changes them, Esc leaves them"));
    m_mains->setFocus(Qt::OtherFocusReason);
}

void ToBeStrungSheet::changeTensions() {
    if (!m_tensionLine.note->showProblems()) {
        (m_mains->problem() ? m_mains : m_crosses)->setFocus(Qt::OtherFocusReason);
        return;
    }
    m_jobs.changeAsked(*m_list->chosen(), *m_seen, {*m_mains->readable(), *m_crosses->readable()});
}

void ToBeStrungSheet::showTheirs(const Job& job) {
    const bool stillAsked = m_asking == Asking::Tensions && m_list->chosen() == job.id;
    const auto mains = m_mains->readable();
    const auto crosses = m_crosses->readable();
    if (stillAsked && mains && crosses) {
        m_seen = job.asked; // whoever presses Enter now has seen it
        m_tensionLine.note->setWarning(tensionsDifferText({*mains, *crosses}, job.asked));
        m_crosses->setFocus(Qt::OtherFocusReason);
    }
}

void ToBeStrungSheet::act(int key) {
    switch (key) {
    case Qt::Key_W:
        askWhatFor();
        return;
    case Qt::Key_X:
        askWithdraw();
        return;
    case Qt::Key_G:
        m_jobs.resume(*m_list->chosen());
        return;
    case Qt::Key_A:
        askAgreed();
        return;
    case Qt::Key_T:
        askTensions();
        return;
    default:
        return;
    }
}

void ToBeStrungSheet::answer() {
    const auto job = m_list->chosen();
    if (!job) {
        return;
    }
    if (m_asking == Asking::WhatFor) {
        m_jobs.letWait(*job, m_whatFor->text());
    } else if (m_asking == Asking::Agreed) {
        m_jobs.agree(*job, m_agreedBy->text(), aboveMarkedWords(m_shift.shop().aboveMarkedWords));
    } else if (m_asking == Asking::Tensions && m_mains->hasFocus()) {
        m_crosses->setFocus(Qt::TabFocusReason);
    } else if (m_asking == Asking::Tensions) {
        changeTensions();
    }
}

void ToBeStrungSheet::keyPressEvent(QKeyEvent* event) {
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && !event->isAutoRepeat()) {
        answer();
    } else if (event->key() == Qt::Key_Escape && m_asking == Asking::Nothing) {
        Q_EMIT left();
    } else if (event->key() == Qt::Key_Escape) {
        backToTheList();
    } else if (!isEnter) {
        QWidget::keyPressEvent(event);
    }
}

} // namespace rw::ui
