// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/counter/intake_sheet.h"

#include "ui/counter/new_frame_form.h"
#include "ui/counter/new_person_form.h"
#include "ui/counter/outcome_strip.h"
#include "ui/counter/string_choice.h"
#include "ui/presenter/intake_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/text/format.h"
#include "ui/text/sentences.h"
#include "ui/text/words.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/discount_edit.h"
#include "ui/widgets/finder.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/moment_edit.h"
#include "ui/widgets/pattern_edit.h"
#include "ui/widgets/tension_edit.h"

#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace rw::ui {

IntakeSheet::IntakeSheet(PersonPresenter& person, RacketPresenter& racket, IntakePresenter& intake, Shift& shift,
                         QWidget* parent)
    : QWidget(parent)
    , m_person(person)
    , m_racket(racket)
    , m_intake(intake)
    , m_shift(shift)
    , m_sheet(new Sheet(this))
    , m_personFinder(new Finder(&m_people, m_sheet))
    , m_newPerson(new NewPersonForm(m_sheet))
    , m_remove(new QPushButton(m_sheet))
    , m_racketFinder(new Finder(&m_rackets, m_sheet))
    , m_newFrame(new NewFrameForm(m_sheet))
    , m_mains(new StringChoice(StringChoice::First::Blank, tr("Mains"), m_sheet))
    , m_crosses(new StringChoice(StringChoice::First::Alike, tr("Crosses"), m_sheet))
    , m_mainsTension(new TensionEdit(m_sheet))
    , m_crossesTension(new TensionEdit(m_sheet))
    , m_agreed(new QCheckBox(tr("agrees"), m_sheet))
    , m_agreedBy(new QLineEdit(m_sheet))
    , m_method(new Choice(m_sheet))
    , m_side(new Choice(m_sheet))
    , m_rush(new QCheckBox(tr("rush"), m_sheet))
    , m_extrasRow(new QWidget(m_sheet))
    , m_mustBy(new MomentEdit([this] { return MomentEdit::Calendar{m_shift.now(), m_shift.hours()}; }, m_sheet))
    , m_discount(new DiscountEdit(Currency::pounds(), m_sheet))
    , m_reason(new QLineEdit(m_sheet))
    , m_cameWith(new QLineEdit(m_sheet))
    , m_remarks(new QLineEdit(m_sheet))
    , m_note(new QLineEdit(m_sheet))
    , m_outcome(new OutcomeStrip(m_sheet)) {
    build();
    connectPerson();
    connectRacket();
    connectForm();
    fillExtras();
    connect(&m_shift, &Shift::shopChanged, this, [this] { fillExtras(); });
    connect(&m_shift, &Shift::staffChanged, this, &IntakeSheet::showPreview);
    showNewPerson(false);
    showRemoval(false);
    showNewFrame(false);
    personPicked();
    racketPicked();
}

void IntakeSheet::build() {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    m_sheet->setTight(); // the price and the promise stay in view at its foot

    m_personFinder->setNames(tr("Person"), tr("a piece of a name, or the last digits of a phone number"));
    m_racketFinder->setNames(tr("Racket"), tr("a piece of the frame's name"));
    m_racketFinder->setOpensWhenEntered(true);
    m_mainsTension->setAccessibleName(tr("Tension of the mains"));
    m_crossesTension->setAccessibleName(tr("Tension of the crosses"));
    m_crossesTension->setMayBeBlank(false);
    m_agreed->setAccessibleName(tr("Agrees to the pull above the marked maximum"));
    m_agreedBy->setAccessibleName(tr("Who agrees"));
    m_agreedBy->setPlaceholderText(tr("the customer"));
    m_method->setAccessibleName(tr("Method"));
    m_method->addItem(tr("method as usual"), -1);
    m_method->addItem(methodWord(Method::TwoPiece), static_cast<int>(Method::TwoPiece));
    m_method->addItem(methodWord(Method::OnePiece), static_cast<int>(Method::OnePiece));
    m_side->setAccessibleName(tr("Short side"));
    m_side->addItem(tr("short side as usual"), -1);
    m_side->addItem(tr("short side left"), static_cast<int>(Side::Left));
    m_side->addItem(tr("short side right"), static_cast<int>(Side::Right));
    m_mustBy->setAccessibleName(tr("Must have it by"));
    m_mustBy->setPlaceholderText(tr("must have it by"));
    m_mustBy->setMayBeBlank(true);
    m_discount->setAccessibleName(tr("Discount"));
    m_discount->setPlaceholderText(tr("discount, 10 % or 3"));
    m_discount->setMayBeBlank(true);
    m_reason->setAccessibleName(tr("Reason of the discount"));
    m_reason->setPlaceholderText(tr("why"));
    m_cameWith->setAccessibleName(tr("Came with"));
    m_cameWith->setPlaceholderText(tr("cover, grip, other string"));
    m_remarks->setAccessibleName(tr("Seen on the racket"));
    m_remarks->setPlaceholderText(tr("seen: cracks, worn grommets"));
    m_note->setAccessibleName(tr("Note for the bench"));
    m_note->setPlaceholderText(tr("words for the bench"));

    m_personLine = m_sheet->addLine(tr("&Person"), m_personFinder);
    m_newPersonLine = m_sheet->addLine(QString(), m_newPerson);
    m_remove->setDefault(true);
    m_removeLine = m_sheet->addLine(QString(), m_remove);
    m_racketLine = m_sheet->addLine(tr("&Racket"), m_racketFinder);
    m_newFrameLine = m_sheet->addLine(QString(), m_newFrame);
    m_mainsLine = m_sheet->addLine(tr("&Mains"), m_mains);
    m_crossesLine = m_sheet->addLine(tr("&Crosses"), m_crosses);
    m_tensionLine = m_sheet->addLine(tr("&Tensions"), {m_mainsTension, m_crossesTension});
    m_agreedLine = m_sheet->addLine(tr("&Above"), {m_agreed, m_agreedBy});
    m_methodLine = m_sheet->addLine(tr("Meth&od"), {m_method, m_side});
    m_sheet->addLine(tr("Extras"), {m_rush, m_extrasRow});
    m_termsLine = m_sheet->addLine(tr("Terms"), {m_mustBy, m_discount, m_reason});
    m_inspectionLine = m_sheet->addLine(tr("Came &with"), {m_cameWith, m_remarks});
    m_noteLine = m_sheet->addLine(tr("&Note"), m_note);
    m_sheet->addStretch();
    m_sheet->addAcross(m_outcome);

    m_mainsLine.note->watch(m_mains->setLength());
    m_crossesLine.note->watch(m_crosses->setLength());
    m_tensionLine.note->watch(m_mainsTension);
    m_tensionLine.note->watch(m_crossesTension);
    m_termsLine.note->watch(m_mustBy);
    m_termsLine.note->watch(m_discount);
    m_newFrameLine.note->watch(m_newFrame->pattern());
    auto* extras = new QHBoxLayout(m_extrasRow);
    extras->setContentsMargins(0, 0, 0, 0);
}

void IntakeSheet::fillExtras() {
    qDeleteAll(m_extras);
    m_extras.clear();
    if (m_shift.hasShop()) {
        m_discount->setCurrency(m_shift.shop().currency);
        for (const auto& line : m_shift.shop().extras) {
            auto* count = new QSpinBox(m_extrasRow);
            count->setRange(0, 999);
            count->setPrefix(fromUtf8(line.label) + QStringLiteral(" × "));
            count->setAccessibleName(fromUtf8(line.label));
            connect(count, &QSpinBox::valueChanged, this, [this] { formEdited(); });
            m_extrasRow->layout()->addWidget(count);
            m_extras << count;
        }
    }
    showExtras();
    orderTabs();
}

void IntakeSheet::showExtras() {
    const auto& wanted = m_intake.form().extras;
    for (auto* extra : m_extras) {
        const QSignalBlocker quiet(extra);
        const auto named =
            std::ranges::find(wanted, extra->accessibleName().toStdString(), &std::pair<std::string, int>::first);
        extra->setValue(named == wanted.end() ? 0 : named->second);
    }
}

void IntakeSheet::orderTabs() {
    QList<QWidget*> order{m_personFinder->line(),
                          m_newPerson->name(),
                          m_newPerson->phone(),
                          m_remove,
                          m_racketFinder->line(),
                          m_newFrame->name(),
                          m_newFrame->sport(),
                          m_newFrame->pattern(),
                          m_newFrame->mark(),
                          m_mains->strings(),
                          m_mains->sources(),
                          m_mains->setLength(),
                          m_crosses->strings(),
                          m_crosses->sources(),
                          m_crosses->setLength(),
                          m_mainsTension,
                          m_crossesTension,
                          m_agreed,
                          m_agreedBy,
                          m_method,
                          m_side,
                          m_rush};
    for (auto* extra : m_extras) {
        order << extra;
    }
    order << m_mustBy << m_discount << m_reason << m_cameWith << m_remarks << m_note << m_outcome->logButton();
    for (qsizetype i = 1; i < order.size(); ++i) {
        setTabOrder(order[i - 1], order[i]);
    }
}

void IntakeSheet::connectForm() {
    for (auto* choice : {m_mains, m_crosses}) {
        connect(choice, &StringChoice::chosen, this, [this] {
            m_crosses->setMains(m_mains->article(), m_mains->source());
            showStock();
            formEdited();
        });
    }
    for (auto* edit : {m_mainsTension, m_crossesTension}) {
        connect(edit, &TensionEdit::valueChanged, this, [this] { formEdited(); });
    }
    // Most people want one number: the crosses start as the shop understands it, in the unit that was just said.
    connect(m_mainsTension, &TensionEdit::left, this, [this] {
        const auto mains = m_mainsTension->readable();
        if (mains && m_crossesTension->isBlank()) {
            m_crossesTension->setValue(m_intake.crossesOfOne(*mains));
            formEdited();
        } else if (mains) {
            m_crossesTension->setDefaultUnit(mains->unit());
        }
    });
    connect(m_method, &QComboBox::currentIndexChanged, this, [this] { formEdited(); });
    connect(m_side, &QComboBox::currentIndexChanged, this, [this] { formEdited(); });
    connect(m_rush, &QCheckBox::toggled, this, [this] { formEdited(); });
    for (ValueEdit* edit : QList<ValueEdit*>{m_mustBy, m_discount}) {
        connect(edit, &ValueEdit::valueChanged, this, [this] { formEdited(); });
    }
    for (auto* line : {m_reason, m_cameWith, m_remarks}) {
        connect(line, &QLineEdit::textEdited, this, [this] {
            formEdited();
            showInspection();
        });
    }
    connect(m_agreed, &QCheckBox::toggled, this, [this] {
        formEdited();
        showAgreed();
    });
    connect(m_agreedBy, &QLineEdit::textEdited, this, [this] {
        formEdited();
        showAgreed();
    });
    connect(m_note, &QLineEdit::textEdited, this, [this] {
        showNote();
        formEdited();
    });
    connect(m_outcome->logButton(), &QPushButton::clicked, this, [this] { log(); });
    connect(&m_intake, &IntakePresenter::formReplaced, this, &IntakeSheet::takeOverForm);
    connect(&m_intake, &IntakePresenter::stringsChanged, this, [this] {
        for (auto* choice : {m_mains, m_crosses}) {
            choice->setOwnLots(m_intake.ownLots());
        }
        m_mains->setStrings(m_intake.strings());
        m_crosses->setStrings(m_intake.strings());
        m_crosses->setMains(m_mains->article(), m_mains->source());
        showStock();
    });
    connect(&m_intake, &IntakePresenter::previewChanged, this, &IntakeSheet::showPreview);
    connect(&m_intake, &IntakePresenter::logRefused, this, [this](const Refusal& why, bool isOnTheCounter) {
        if (isOnTheCounter) {
            m_outcome->setStillNeeded(sentenceFor(why));
        }
    });
}

void IntakeSheet::enter() {
    if (!m_personFinder->hasPicked()) {
        m_personFinder->setFocus(Qt::OtherFocusReason);
    } else if (!m_racketFinder->hasPicked()) {
        m_racketFinder->setFocus(Qt::OtherFocusReason);
    } else {
        m_mains->setFocus(Qt::OtherFocusReason);
    }
}

void IntakeSheet::startAfresh() {
    showNewPerson(false);
    showRemoval(false);
    showNewFrame(false);
    m_newPerson->clear();
    m_person.clear();
    m_personFinder->setFocus(Qt::OtherFocusReason);
}

void IntakeSheet::pickHighlighted() {
    const auto racket = m_racketFinder->highlighted();
    const auto person = m_personFinder->highlighted();
    if (racket && m_rackets.at(*racket).own) {
        m_racketFinder->pickHighlighted();
    } else if (person && m_people.at(*person).person) {
        m_personFinder->pickHighlighted(); // and their only racket with them
    }
}

void IntakeSheet::repeatLast(bool asStrung) {
    pickHighlighted();
    if (m_person.isPicking()) {
        m_repeatWhenPicked = asStrung;
        return;
    }
    if (!m_person.picked()) {
        m_personLine.note->setProblem(tr("first the person, then the racket whose last job is repeated"));
        m_personFinder->setFocus(Qt::OtherFocusReason);
        return;
    }
    if (!m_racket.picked()) {
        m_racketFinder->setFocus(Qt::OtherFocusReason);
        m_racketLine.note->setProblem(tr("which racket? F5 repeats the one that is marked"));
        return;
    }
    const auto which = asStrung ? IntakePresenter::Repeat::AsStrung : IntakePresenter::Repeat::AsAsked;
    if (!m_intake.canRepeat(which)) {
        m_racketLine.note->setProblem(
            asStrung ? tr("nothing was ever strung on this racket here")
                     : tr("there is no last time for this racket: choose its string and tensions"));
        return;
    }
    m_intake.repeatLast(which);
    m_mainsTension->setFocus(Qt::OtherFocusReason);
}

} // namespace rw::ui
