// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/counter/counter_station.h"

#include "ui/counter/intake_sheet.h"
#include "ui/counter/none_sheet.h"
#include "ui/counter/outcome_strip.h"
#include "ui/counter/rack_sheet.h"
#include "ui/counter/string_choice.h"
#include "ui/counter/to_be_strung_sheet.h"
#include "ui/presenter/asked_for_none_presenter.h"
#include "ui/presenter/intake_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/rack_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/presenter/to_be_strung_presenter.h"
#include "ui/text/counter_words.h"
#include "ui/text/format.h"
#include "ui/text/intake_words.h"
#include "ui/text/sentences.h"
#include "ui/text/words.h"

#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace rw::ui {

CounterStation::CounterStation(DeskRunner& runner, Shift& shift, std::chrono::milliseconds pause, QWidget* parent)
    : Station(parent)
    , m_shift(shift)
    , m_person(std::make_unique<PersonPresenter>(runner, shift, kNoPause))
    , m_racket(std::make_unique<RacketPresenter>(runner, shift, pause))
    , m_intake(std::make_unique<IntakePresenter>(runner, shift, pause))
    , m_rack(std::make_unique<RackPresenter>(runner, shift))
    , m_toBeStrung(std::make_unique<ToBeStrungPresenter>(runner, shift))
    , m_askedForNone(std::make_unique<AskedForNonePresenter>(runner, shift))
    , m_pages(new QStackedWidget(this))
    , m_intakeSheet(new IntakeSheet(*m_person, *m_racket, *m_intake, shift))
    , m_rackSheet(new RackSheet(*m_rack, shift))
    , m_toBeStrungSheet(new ToBeStrungSheet(*m_toBeStrung, shift))
    , m_noneSheet(new NoneSheet(*m_askedForNone)) {
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
    m_pages->addWidget(m_toBeStrungSheet);
    m_pages->addWidget(m_noneSheet);
    makeKeys();

    connect(m_intakeSheet, &IntakeSheet::tagPicked, this, &CounterStation::openTag);
    connect(m_rackSheet, &RackSheet::said, this, &CounterStation::said);
    connect(m_rackSheet, &RackSheet::left, this, &CounterStation::showIntake);
    connect(m_toBeStrungSheet, &ToBeStrungSheet::left, this, &CounterStation::showIntake);
    connect(m_toBeStrungSheet, &ToBeStrungSheet::said, this, &CounterStation::said);
    connect(m_noneSheet, &NoneSheet::left, this, &CounterStation::showIntake);
    connect(m_askedForNone.get(), &AskedForNonePresenter::wroteDown, this,
            [this](const StringArticle& string) { Q_EMIT said(askedForNoneText(string)); });
    connect(m_toBeStrung.get(), &ToBeStrungPresenter::done, this,
            [this](const Job& job) { Q_EMIT said(jobCourseText(job)); });
    connect(m_toBeStrung.get(), &ToBeStrungPresenter::withdrawn, this,
            [this](const Job& job, const Money& paid) { Q_EMIT said(withdrawnText(job, paid)); });
    connect(m_toBeStrung.get(), &ToBeStrungPresenter::agreed, this,
            [this](std::int64_t number, const Consent& consent) { Q_EMIT said(agreedText(number, consent)); });
    connect(m_toBeStrung.get(), &ToBeStrungPresenter::askedChanged, this, [this](const Job& job, bool notAgreed) {
        Q_EMIT said(withNotAgreed(askedChangedText(job), job.asked, notAgreed));
    });
    connect(m_person.get(), &PersonPresenter::removed, this,
            [this](const QString& name) { Q_EMIT said(removedText(name)); });
    connect(m_rack.get(), &RackPresenter::broughtBack, this,
            [this](const Job& job) { Q_EMIT said(broughtBackText(job)); });
    connect(m_rack.get(), &RackPresenter::paid, this,
            [this](const desk::PaymentTaken& taken) { Q_EMIT said(paidText(taken)); });
    connect(m_rack.get(), &RackPresenter::gaveBack, this,
            [this](const desk::GivenBack& given) { Q_EMIT said(gaveBackText(given)); });
    connect(m_rack.get(), &RackPresenter::told, this, [this](const Job& job) { Q_EMIT said(toldText(job)); });
    connect(m_rack.get(), &RackPresenter::notDone, this,
            [this](const Refusal& why) { Q_EMIT said(sentenceFor(why)); });
    connect(m_intake.get(), &IntakePresenter::logged, this, [this](const LoggedIntake& done) {
        m_logged = done.job.id;
        const QString words = loggedText(done.job, fromUtf8(done.customer.name),
                                         racketName(done.racket.frame.name, done.racket.racket.mark), m_shift.now(),
                                         m_shift.zone());
        Q_EMIT said(withNotAgreed(words, done.job.asked, done.notAgreed));
        if (done.isOnTheCounter) {
            m_intakeSheet->startAfresh();
        }
    });
    connect(m_intake.get(), &IntakePresenter::logRefused, this, [this](const Refusal& why, bool isOnTheCounter) {
        if (!isOnTheCounter) {
            Q_EMIT said(sentenceFor(why));
        }
    });
    connect(m_rack.get(), &RackPresenter::handedOver, this,
            [this](const desk::HandedOver& done) { Q_EMIT said(handedOverText(done, m_shift.now(), m_shift.zone())); });
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
    m_intakeKeys << addKey(tr("Wh&y this length"), {QKeySequence(Qt::Key_F4)}, [this] {
        auto* outcome = m_intakeSheet->outcome();
        outcome->setWhyShown(!outcome->isWhyShown());
        if (auto* scroll = qobject_cast<QScrollArea*>(m_pages->widget(Intake)); outcome->isWhyShown()) {
            QMetaObject::invokeMethod(
                scroll, [scroll, outcome] { scroll->ensureWidgetVisible(outcome->reasons()); }, Qt::QueuedConnection);
        }
    });
    addKey(tr("&History"), {QKeySequence(Qt::Key_F6)}, [this] { wantHistory(true); });
    addKey(tr("Of this &person"), {QKeySequence(Qt::SHIFT | Qt::Key_F6)}, [this] { wantHistory(false); });
    addKey(tr("The &rack"), {QKeySequence(Qt::Key_F8)}, [this] { showRack(); });
    addKey(tr("&Unpaid"), {QKeySequence(Qt::Key_F7)}, [this] { showUnpaid(); });
    addKey(tr("&To be strung"), {QKeySequence(Qt::Key_F9)}, [this] { showToBeStrung(); });
    addKey(tr("Asked for, ha&d none"), {QKeySequence(Qt::Key_F3)}, [this] { showAskedForNone(); });
    m_rackKeys = {addCommand(tr("Bring &back the last"), {QKeySequence(Qt::CTRL | Qt::Key_Z)}, [this] {
        if (!m_rack->bringBack()) {
            Q_EMIT said(nothingToBringBackText());
        }
    })};
    addKey(tr("&New sheet"), {QKeySequence(Qt::CTRL | Qt::Key_N)}, [this] {
        showIntake();
        m_intakeSheet->startAfresh();
    });
    m_intakeKeys << addKey(tr("Re&move person …"), {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Delete)},
                           [this] { m_intakeSheet->askRemoval(); });
    showPage(Intake);
}

void CounterStation::enter() {
    refresh();
    if (m_pages->currentIndex() == Intake) {
        m_intakeSheet->enter();
    } else if (m_pages->currentIndex() == Rack) {
        m_rackSheet->takeKeyboard();
    } else if (m_pages->currentIndex() == ToBeStrung) {
        m_toBeStrungSheet->takeKeyboard();
    } else {
        m_noneSheet->takeKeyboard();
    }
}

void CounterStation::refresh() {
    m_person->refresh();
    m_intake->refresh();
    m_rack->refresh();
    m_toBeStrung->refresh();
    if (m_pages->currentIndex() == AskedForNone) {
        m_askedForNone->refresh();
    }
}

void CounterStation::showPage(Page page) {
    m_pages->setCurrentIndex(page);
    for (auto* key : m_intakeKeys) {
        key->setEnabled(page == Intake);
    }
    for (auto* key : m_rackKeys) {
        key->setEnabled(page == Rack);
    }
    Q_EMIT keysChanged();
}

void CounterStation::showRack() {
    m_rack->show(RackPresenter::Shows::Rack);
    showPage(Rack);
    m_rackSheet->enter(pickedPerson());
}

void CounterStation::openTag(const desk::TaggedJob& tagged) {
    if (!tagged.isInTheShop()) {
        m_intakeSheet->takeIn(tagged); // the label on the frame, of a racket that comes in again
    } else if (tagged.job.state == JobState::Strung) {
        m_rack->show(RackPresenter::Shows::Rack);
        showPage(Rack);
        m_rackSheet->enterAt(*tagged.job.id);
    } else {
        showPage(ToBeStrung);
        m_toBeStrungSheet->enterAt(*tagged.job.id);
    }
}

void CounterStation::showUnpaid() {
    m_rack->show(RackPresenter::Shows::Unpaid);
    showPage(Rack);
    m_rackSheet->enter(pickedPerson());
}

void CounterStation::showToBeStrung() {
    showPage(ToBeStrung);
    m_toBeStrungSheet->enter(pickedPerson());
}

void CounterStation::showAskedForNone() {
    showPage(AskedForNone);
    m_noneSheet->enter(m_intakeSheet->mains()->article());
}

std::optional<CustomerId> CounterStation::pickedPerson() const {
    const auto& person = m_person->picked();
    return person ? person->customer.id : std::nullopt;
}

const desk::JobLine* CounterStation::chosenLine() const {
    return m_pages->currentIndex() == Rack         ? m_rackSheet->chosen()
           : m_pages->currentIndex() == ToBeStrung ? m_toBeStrungSheet->chosen()
                                                   : nullptr;
}

std::optional<JobId> CounterStation::paperJob() const {
    const auto* chosen = chosenLine();
    return chosen != nullptr ? std::optional(chosen->id) : m_logged;
}

void CounterStation::showIntake() {
    showPage(Intake);
    m_intakeSheet->enter();
}

void CounterStation::wantHistory(bool ofRacket) {
    const auto& person = m_person->picked();
    const auto& racket = m_racket->picked();
    const auto* chosen = chosenLine();
    if (ofRacket && chosen != nullptr) {
        Q_EMIT historyWanted({chosen->id, racketName(chosen->frame, chosen->mark)});
    } else if (ofRacket && racket) {
        Q_EMIT historyWanted({*racket->racket.id, racketName(racket->frame.name, racket->racket.mark)});
    } else if (person) {
        Q_EMIT historyWanted({*person->customer.id, fromUtf8(person->customer.name)});
    } else {
        Q_EMIT said(historyOfWhatText());
    }
}

} // namespace rw::ui
