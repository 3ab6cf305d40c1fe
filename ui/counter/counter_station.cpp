// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/counter/counter_station.h"

#include "ui/counter/intake_sheet.h"
#include "ui/counter/rack_sheet.h"
#include "ui/presenter/intake_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/rack_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/text/format.h"
#include "ui/text/intake_words.h"
#include "ui/text/words.h"

#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace rw::ui {

CounterStation::CounterStation(DeskRunner& runner, Shift& shift, std::chrono::milliseconds pause, QWidget* parent)
    : Station(parent)
    , m_shift(shift)
    , m_person(std::make_unique<PersonPresenter>(runner, shift, pause))
    , m_racket(std::make_unique<RacketPresenter>(runner, shift, pause))
    , m_intake(std::make_unique<IntakePresenter>(runner, shift, pause))
    , m_rack(std::make_unique<RackPresenter>(runner, shift))
    , m_pages(new QStackedWidget(this))
    , m_intakeSheet(new IntakeSheet(*m_person, *m_racket, *m_intake, shift))
    , m_rackSheet(new RackSheet(*m_rack, shift)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_pages);
    // A small screen scrolls the sheet rather than squeezing it.
    auto* scroll = new QScrollArea(m_pages);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(m_intakeSheet);
    m_pages->addWidget(scroll);
    m_pages->addWidget(m_rackSheet);
    makeKeys();

    connect(m_rackSheet, &RackSheet::left, this, &CounterStation::showIntake);
    connect(m_intake.get(), &IntakePresenter::logged, this, [this](const Job& job) {
        const auto& person = m_person->picked();
        const auto& racket = m_racket->picked();
        Q_EMIT said(loggedText(job, person ? fromUtf8(person->customer.name) : QString(),
                               racket ? racketName(racket->frame.name, racket->racket.mark) : QString(), m_shift.now(),
                               m_shift.zone()));
        m_intakeSheet->startAfresh();
    });
    connect(m_rack.get(), &RackPresenter::handedOver, this,
            [this](const Job& job, const Money& owed, const std::optional<Money>& paid) {
                Q_EMIT said(handedOverText(job, owed, paid));
                m_rackSheet->list()->setFocus(Qt::OtherFocusReason);
            });
}

CounterStation::~CounterStation() = default;

void CounterStation::makeKeys() {
    m_intakeKeys = {
        addCommand(tr("&Log it"), {QKeySequence(Qt::CTRL | Qt::Key_Return), QKeySequence(Qt::CTRL | Qt::Key_Enter)},
                   [this] { m_intakeSheet->log(); }),
        addKey(tr("&As last time"), {QKeySequence(Qt::Key_F5)}, [this] { m_intakeSheet->repeatLast(false); }),
        addKey(tr("As &strung then"), {QKeySequence(Qt::SHIFT | Qt::Key_F5)},
               [this] { m_intakeSheet->repeatLast(true); }),
    };
    addKey(tr("&History"), {QKeySequence(Qt::Key_F6)}, [this] { wantHistory(true); });
    addKey(tr("Of this &person"), {QKeySequence(Qt::SHIFT | Qt::Key_F6)}, [this] { wantHistory(false); });
    addKey(tr("The &rack"), {QKeySequence(Qt::Key_F8)}, [this] { showRack(); });
    addKey(tr("&New sheet"), {QKeySequence(Qt::CTRL | Qt::Key_N)}, [this] {
        showIntake();
        m_intakeSheet->startAfresh();
    });
}

void CounterStation::enter() {
    refresh();
    if (m_pages->currentIndex() == 0) {
        m_intakeSheet->enter();
    } else {
        m_rackSheet->list()->setFocus(Qt::OtherFocusReason);
    }
}

void CounterStation::refresh() {
    m_person->refresh();
    m_intake->refresh();
    m_rack->refresh();
}

void CounterStation::showPage(QWidget* sheet) {
    m_pages->setCurrentIndex(sheet == m_rackSheet ? 1 : 0);
    for (auto* key : m_intakeKeys) {
        key->setEnabled(sheet == m_intakeSheet);
    }
    Q_EMIT keysChanged();
}

void CounterStation::showRack() {
    showPage(m_rackSheet);
    const auto& person = m_person->picked();
    m_rackSheet->enter(person ? fromUtf8(person->customer.name) : QString());
}

void CounterStation::showIntake() {
    showPage(m_intakeSheet);
    m_intakeSheet->enter();
}

void CounterStation::wantHistory(bool ofRacket) {
    const auto& person = m_person->picked();
    const auto& racket = m_racket->picked();
    const auto* hanging = m_pages->currentWidget() == m_rackSheet ? m_rackSheet->current() : nullptr;
    if (ofRacket && hanging != nullptr) {
        Q_EMIT historyWanted({hanging->id, racketName(hanging->frame, hanging->mark)});
    } else if (ofRacket && racket) {
        Q_EMIT historyWanted({*racket->racket.id, racketName(racket->frame.name, racket->racket.mark)});
    } else if (person) {
        Q_EMIT historyWanted({*person->customer.id, fromUtf8(person->customer.name)});
    } else {
        Q_EMIT said(tr("History is that of a person or a racket: find one first."));
    }
}

} // namespace rw::ui
