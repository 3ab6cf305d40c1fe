// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/counter/intake_sheet.h"

#include "core/desk/lookups.h"
#include "ui/counter/new_frame_form.h"
#include "ui/counter/new_person_form.h"
#include "ui/counter/string_choice.h"
#include "ui/presenter/intake_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/text/counter_words.h"
#include "ui/text/format.h"
#include "ui/text/intake_words.h"
#include "ui/text/sentences.h"
#include "ui/text/words.h"
#include "ui/widgets/discount_edit.h"
#include "ui/widgets/finder.h"
#include "ui/widgets/length_edit.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/moment_edit.h"
#include "ui/widgets/pattern_edit.h"
#include "ui/widgets/tension_edit.h"

#include <QKeyEvent>

#include <algorithm>
#include <utility>

// How the sheet goes on from line to line.
namespace rw::ui {

void IntakeSheet::connectPerson() {
    connect(m_personFinder, &Finder::typed, this, [this](const QString& text) {
        m_repeatWhenPicked.reset();
        m_person.setText(text);
        m_personFinder->setReady(m_person.text().isEmpty() || m_person.isSearched());
        m_personLine.note->setProblem(tooLongText(text, desk::kLongestName, "name"));
    });
    connect(m_personFinder, &Finder::hurried, &m_person, &PersonPresenter::hurry);
    connect(&m_person, &PersonPresenter::foundChanged, this, [this] {
        m_people.setFound(m_person.found(), m_person.text(), m_person.tagged());
        m_personFinder->setScannedRow(m_people.taggedRow());
        m_personFinder->setReady(m_person.text().isEmpty() || m_person.isSearched());
    });
    connect(m_personFinder, &Finder::picked, this, [this](int row) {
        const PeopleRow chosen = m_people.at(row);
        if (chosen.tagged) {
            const auto& before = m_person.picked();
            m_personFinder->setPicked(before ? fromUtf8(before->customer.name) : QString());
            m_person.setText({});
            Q_EMIT tagPicked(*chosen.tagged);
        } else if (chosen.person) {
            m_person.pick(*chosen.person);
        } else {
            showNewPerson(true);
            m_newPerson->start(m_person.newPersonFromText());
        }
    });
    connect(m_newPerson, &NewPersonForm::wanted, &m_person, &PersonPresenter::add);
    connect(m_newPerson, &NewPersonForm::dropped, this, [this] {
        showNewPerson(false);
        m_personFinder->setFocus(Qt::OtherFocusReason);
    });
    connect(&m_person, &PersonPresenter::addRefused, this,
            [this](const Refusal& why) { m_newPersonLine.note->setProblem(sentenceFor(why)); });
    connect(m_remove, &QPushButton::clicked, &m_person, &PersonPresenter::remove);
    connect(&m_person, &PersonPresenter::removeRefused, this,
            [this](const Refusal& why) { m_removeLine.note->setProblem(sentenceFor(why)); });
    connect(&m_person, &PersonPresenter::pickedChanged, this, &IntakeSheet::personPicked);
    connect(&m_person, &PersonPresenter::inTheShopChanged, this, &IntakeSheet::showInTheShop);
}

void IntakeSheet::takeIn(const desk::TaggedJob& tagged) {
    m_person.pick(tagged.person);
    m_racket.pick({tagged.racket(), tagged.racket().frame});
}

void IntakeSheet::showNewPerson(bool shown) {
    m_newPerson->setVisible(shown);
    m_sheet->setLineVisible(m_newPersonLine, shown);
    m_newPersonLine.note->setProblem({});
    m_newPersonLine.note->setNote(tr("Enter adds, Esc goes back"));
}

void IntakeSheet::showRemoval(bool shown) {
    m_remove->setVisible(shown);
    m_sheet->setLineVisible(m_removeLine, shown);
    m_removeLine.note->clearAll();
    m_removeLine.note->setNote(askRemovalText());
}

void IntakeSheet::askRemoval() {
    const auto& picked = m_person.picked();
    if (!picked) {
        m_personLine.note->setProblem(nobodyToRemoveText());
        m_personFinder->setFocus(Qt::OtherFocusReason);
        return;
    }
    m_remove->setText(tr("Remove %1").arg(fromUtf8(picked->customer.name)));
    showRemoval(true);
    m_remove->setFocus(Qt::OtherFocusReason);
}

void IntakeSheet::personPicked() {
    const auto& picked = m_person.picked();
    const bool sameAsBefore = picked && m_racket.person() && picked->customer.id == m_racket.person()->customer.id;
    if (picked) {
        showNewPerson(false);
    }
    if (!sameAsBefore) {
        showRemoval(false);
    }
    m_personFinder->setPicked(picked ? fromUtf8(picked->customer.name) : QString());
    m_personLine.note->setProblem({});
    m_intake.setOwnLots(picked ? picked->lots : std::vector<Lot>());
    m_racket.setPerson(picked);
    m_racketFinder->setEnabled(picked.has_value());
    if (!sameAsBefore && !m_racket.picked()) {
        racketPicked(); // nothing that stood there without a racket is the next person's
    }
    showInTheShop();
    showPreview();
    if (picked && !sameAsBefore) {
        enter();
    }
    if (const auto asStrung = std::exchange(m_repeatWhenPicked, std::nullopt); asStrung && picked) {
        repeatLast(*asStrung);
    }
}

void IntakeSheet::connectRacket() {
    connect(m_racketFinder, &Finder::typed, this, [this](const QString& text) {
        m_racket.setText(text);
        m_racketLine.note->setProblem(tooLongText(text, desk::kLongestFrameName, "frame"));
    });
    connect(m_racketFinder, &Finder::hurried, &m_racket, &RacketPresenter::hurry);
    connect(&m_racket, &RacketPresenter::choicesChanged, this, [this] {
        std::vector<RacketRow> rows;
        for (const auto& choice : m_racket.choices()) {
            rows.push_back(choice.own ? RacketRow{choice.own, std::nullopt, {}}
                                      : RacketRow{std::nullopt, choice.frame, {}});
        }
        if (m_racket.person()) {
            rows.push_back({std::nullopt, std::nullopt, m_racket.text()});
        }
        m_rackets.setNow(m_shift.now(), m_shift.zone());
        m_rackets.setRows(std::move(rows));
        m_racketFinder->setReady(m_racket.isSearched());
    });
    connect(m_racketFinder, &Finder::picked, this, [this](int row) {
        const RacketRow chosen = m_rackets.at(row);
        if (chosen.own) {
            m_racket.pick({chosen.own, chosen.own->frame});
        } else if (chosen.known) {
            m_racket.pick({std::nullopt, *chosen.known});
        } else {
            showNewFrame(true);
            m_newFrame->start(chosen.typed, QString::fromStdString(m_racket.nextMark(chosen.typed.toStdString())));
        }
    });
    connect(m_newFrame, &NewFrameForm::wanted, this,
            [this](const FrameModel& frame, const QString& mark) { m_racket.addNew(frame, mark.toStdString()); });
    connect(m_newFrame, &NewFrameForm::incomplete, this, [this] {
        if (m_newFrame->pattern()->isBlank()) {
            m_newFrameLine.note->setProblem(sentenceFor(*m_newFrame->pattern()->problem()));
        } else {
            m_newFrameLine.note->showProblems();
        }
    });
    connect(m_newFrame, &NewFrameForm::dropped, this, [this] {
        showNewFrame(false);
        m_racketFinder->setFocus(Qt::OtherFocusReason);
    });
    connect(&m_racket, &RacketPresenter::addRefused, this, [this](const Refusal& why) {
        (m_newFrame->isVisible() ? m_newFrameLine : m_racketLine).note->setProblem(sentenceFor(why));
    });
    connect(&m_racket, &RacketPresenter::pickedChanged, this, &IntakeSheet::racketPicked);
}

void IntakeSheet::showNewFrame(bool shown) {
    m_newFrame->setVisible(shown);
    m_sheet->setLineVisible(m_newFrameLine, shown);
    m_newFrameLine.note->clearAll();
    m_newFrameLine.note->setNote(tr("name, sport, mains × crosses, mark. Enter adds, Esc goes back"));
}

QString IntakeSheet::racketTitle() const {
    const auto& picked = m_racket.picked();
    return picked ? racketName(picked->frame.name, picked->racket.mark) : QString();
}

void IntakeSheet::racketPicked() {
    const auto& picked = m_racket.picked();
    if (picked) {
        showNewFrame(false);
    }
    m_saidToBeHere.reset();
    m_racketFinder->setPicked(racketTitle());
    m_intake.setRacket(picked);
    m_racketLine.note->clearAll();
    const bool canGoOn = picked.has_value();
    for (QWidget* part : QList<QWidget*>{m_mains, m_crosses, m_mainsTension, m_crossesTension, m_agreed,
                                         m_agreedBy, m_method, m_side, m_rush, m_extrasRow, m_mustBy, m_discount,
                                         m_reason, m_cameWith, m_remarks, m_note}) {
        part->setEnabled(canGoOn);
    }
    if (!picked) {
        m_racketLine.note->setNote(m_person.picked() ? tr("which racket is it") : QString());
        return;
    }
    showLastTime(*picked);
    m_mains->setFocus(Qt::OtherFocusReason);
}

void IntakeSheet::takeOverForm() {
    const IntakeForm& form = m_intake.form();
    m_filling = true;
    m_mains->setChosen(form.mains, form.mainsSource, form.mainsLot);
    m_crosses->setMains(form.mains, form.mainsSource);
    m_crosses->setChosen(form.crosses, form.crossesSource, form.crossesLot);
    for (auto* edit : {m_mainsTension, m_crossesTension}) {
        edit->setDefaultUnit(m_shift.usualUnit());
    }
    m_mainsTension->setValue(form.mainsTension);
    m_crossesTension->setValue(form.crossesTension);
    m_method->setCurrentIndex(form.method ? m_method->findData(static_cast<int>(*form.method)) : 0);
    m_side->setCurrentIndex(form.shortSide ? m_side->findData(static_cast<int>(*form.shortSide)) : 0);
    m_rush->setChecked(form.rush);
    m_agreed->setChecked(form.agreed);
    m_agreedBy->setText(form.agreedBy);
    m_mustBy->setValue(form.mustBy);
    m_discount->setValue(form.discount);
    m_reason->setText(form.discount ? fromUtf8(form.discount->reason) : QString());
    m_cameWith->setText(form.cameWith);
    m_remarks->setText(form.remarks);
    showExtras();
    m_note->setText(form.note);
    m_filling = false;
    showNote();
    m_tensionLine.note->clearAll();
    m_termsLine.note->clearAll();
    showInspection();
    showStock();
}

std::optional<Discount> IntakeSheet::typedDiscount() const {
    auto discount = m_discount->readable();
    if (discount) {
        discount->reason = m_reason->text().trimmed().toStdString();
    }
    return discount;
}

void IntakeSheet::formEdited() {
    if (m_filling) {
        return;
    }
    IntakeForm form;
    form.mains = m_mains->article();
    form.mainsSource = m_mains->source();
    form.mainsLot = m_mains->lot();
    form.mainsSetLength = m_mains->setLength()->readable();
    form.crosses = m_crosses->article();
    form.crossesSource = m_crosses->source();
    form.crossesLot = m_crosses->lot();
    form.crossesSetLength = m_crosses->setLength()->readable();
    form.mainsTension = m_mainsTension->readable();
    form.crossesTension = m_crossesTension->readable();
    if (const int method = m_method->currentData().toInt(); method >= 0) {
        form.method = static_cast<Method>(method);
    }
    if (const int side = m_side->currentData().toInt(); side >= 0) {
        form.shortSide = static_cast<Side>(side);
    }
    form.rush = m_rush->isChecked();
    for (auto* extra : m_extras) {
        if (extra->value() > 0) {
            form.extras.emplace_back(extra->accessibleName().toStdString(), extra->value());
        }
    }
    form.note = m_note->text();
    form.agreed = m_agreed->isChecked();
    form.agreedBy = m_agreedBy->text();
    form.mustBy = m_mustBy->readable();
    form.discount = typedDiscount();
    form.cameWith = m_cameWith->text();
    form.remarks = m_remarks->text();
    m_intake.setForm(form);
}

void IntakeSheet::keyPressEvent(QKeyEvent* event) {
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->key() == Qt::Key_Escape && m_remove->isVisible()) {
        showRemoval(false);
        enter();
    } else if (!isEnter || event->isAutoRepeat()) {
        QWidget::keyPressEvent(event);
    } else if (m_note->hasFocus()) {
        log();
    } else if (m_racket.picked()) {
        focusNextChild();
    }
}

bool IntakeSheet::isComplete() {
    const auto sendTo = [](QWidget* part) {
        part->setFocus(Qt::OtherFocusReason);
        return false;
    };
    if (!m_person.picked()) {
        return sendTo(m_personFinder);
    }
    if (!m_racket.picked()) {
        return sendTo(m_racketFinder);
    }
    if (!m_mains->article()) {
        return sendTo(m_mains);
    }
    if (!m_tensionLine.note->showProblems()) {
        return sendTo(m_mainsTension->problem() ? m_mainsTension : m_crossesTension);
    }
    for (auto* choice : {m_mains, m_crosses}) {
        if (!(choice == m_mains ? m_mainsLine : m_crossesLine).note->showProblems()) {
            return sendTo(choice->setLength());
        }
    }
    if (!m_termsLine.note->showProblems()) {
        return m_mustBy->problem() ? sendTo(m_mustBy) : sendTo(m_discount);
    }
    if (!m_discount->isBlank() && m_reason->text().trimmed().isEmpty()) {
        m_termsLine.note->setProblem(sentenceFor(Refusal(Code::Missing, {{"what", "reason"}})));
        return sendTo(m_reason);
    }
    const std::pair<const Sheet::Line*, QLineEdit*> words[] = {
        {&m_agreedLine, m_agreedBy}, {&m_termsLine, m_reason}, {&m_inspectionLine, m_cameWith}, {&m_noteLine, m_note}};
    for (const auto& [line, edit] : words) {
        if (!line->note->problem().isEmpty()) {
            return sendTo(edit);
        }
    }
    return true;
}

void IntakeSheet::log() {
    if (!isComplete()) {
        return;
    }
    const auto& here = m_person.inTheShop();
    const auto entry = std::ranges::find(here, *m_racket.picked()->racket.id,
                                         [](const desk::HistoryEntry& each) { return each.job.racket; });
    if (entry != here.end() && m_saidToBeHere != entry->job.racket) {
        m_saidToBeHere = entry->job.racket; // the next time it is meant
        m_racketLine.note->setWarning(hereAlreadyText(inTheShopText(*entry, m_shift.now(), m_shift.zone())));
        return;
    }
    m_intake.log();
}

} // namespace rw::ui
