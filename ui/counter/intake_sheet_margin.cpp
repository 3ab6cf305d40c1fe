// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/counter/intake_sheet.h"

#include "core/desk/lookups.h"
#include "core/frames/usual_pull.h"
#include "ui/counter/outcome_strip.h"
#include "ui/counter/string_choice.h"
#include "ui/model/history_model.h"
#include "ui/presenter/intake_presenter.h"
#include "ui/presenter/person_presenter.h"
#include "ui/presenter/racket_presenter.h"
#include "ui/text/counter_words.h"
#include "ui/text/format.h"
#include "ui/text/intake_words.h"
#include "ui/text/job_words.h"
#include "ui/text/plan_words.h"
#include "ui/text/sentences.h"
#include "ui/text/stock_words.h"
#include "ui/widgets/discount_edit.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/moment_edit.h"

#include <QSignalBlocker>

// What the margin of the sheet says, and its foot.
namespace rw::ui {

void IntakeSheet::showLastTime(const desk::RacketSummary& racket) {
    const auto& last = racket.lastJob;
    if (!last) {
        m_racketLine.note->setNote(tr("never strung here"));
        return;
    }
    std::vector<StringArticle> strings;
    for (const auto& piece : last->pieces) {
        if (const auto* article = m_shift.article(piece.article)) {
            strings.push_back(*article);
        }
    }
    const QString machine = last->strung ? m_shift.machineName(last->strung->machine) : QString();
    QString words = lastTimeText(*last, stringNames(strings), machine, m_shift.zone());
    if (!last->note.empty()) {
        words += tr("\n“%1”").arg(fromUtf8(last->note));
    }
    m_racketLine.note->setNote(words + tr("\nF5 repeats it"));
}

void IntakeSheet::showInTheShop() {
    const auto& picked = m_person.picked();
    if (!picked) {
        m_personLine.note->setNote(tr("who brings it, or whose is it"));
        return;
    }
    QStringList lines;
    QStringList contacts;
    for (const auto& contact : picked->customer.contacts) {
        contacts << fromUtf8(contact.text);
    }
    if (!contacts.isEmpty()) {
        lines << contacts.join(QStringLiteral(" · "));
    }
    if (m_person.account()) {
        lines << accountText(*m_person.account());
    }
    lines.removeAll(QString());
    for (const auto& entry : m_person.inTheShop()) {
        lines << inTheShopText(entry, m_shift.now(), m_shift.zone());
    }
    m_personLine.note->setNote(lines.join(QLatin1Char('\n')));
}

void IntakeSheet::showNote() {
    m_noteLine.note->setProblem(tooLongText(m_note->text(), desk::kLongestNote, "note"));
    if (!m_racket.picked()) {
        m_noteLine.note->setNote({});
        return;
    }
    const bool carriedOver = !m_note->text().isEmpty() && !m_note->isModified();
    m_noteLine.note->setNote(carriedOver ? tr("from last time: change it or clear it. Enter logs it")
                                         : tr("Enter logs it, Ctrl+Enter from anywhere"));
}

void IntakeSheet::showStock() {
    // The shelf says nothing about string that the customer brings.
    const auto words = [](const StringChoice& choice) {
        const auto* string = choice.string();
        const bool offTheShelf = string != nullptr && choice.source() == PieceSource::ShopLot;
        return offTheShelf ? holdingText(string->holding) : QString();
    };
    m_mainsLine.note->setNote(words(*m_mains));
    m_crossesLine.note->setNote(m_crosses->article() ? words(*m_crosses) : QString());
}

void IntakeSheet::showOwnSets() {
    m_mainsLine.note->setWarning({});
    m_crossesLine.note->setWarning({});
    showStock();
    if (!m_intake.preview()) {
        return;
    }
    for (const auto& set : m_intake.preview()->ownSets) {
        auto* note = (set.first == PieceRole::Crosses ? m_crossesLine : m_mainsLine).note;
        if (set.verdict == length::PacketVerdict::Enough) {
            note->setNote(ownSetText(set));
        } else {
            note->setWarning(ownSetText(set));
        }
    }
}

void IntakeSheet::showNeeded() {
    QStringList needed;
    if (!m_person.picked()) {
        needed << tr("a person");
    }
    for (const Lacking lacking : m_intake.lacking()) {
        switch (lacking) {
        case Lacking::Racket:
            needed << tr("a racket");
            break;
        case Lacking::Strings:
            needed << tr("a string");
            break;
        case Lacking::Tensions:
            needed << (m_intake.form().mainsTension     ? tr("the tension of the crosses")
                       : m_intake.form().crossesTension ? tr("the tension of the mains")
                                                        : tr("two tensions"));
            break;
        }
    }
    m_outcome->setStillNeeded(stillNeededText(needed));
}

void IntakeSheet::showTensions() {
    // The pair is read back as it was understood: "-2 lb" and "52,5" become what will stand on the card.
    const IntakeForm& form = m_intake.form();
    QStringList words;
    QString warning;
    if (form.mainsTension && form.crossesTension) {
        const TensionPair pair{*form.mainsTension, *form.crossesTension};
        words << tensionPairText(pair);
        warning = m_intake.preview() ? aboveMarkedText(*m_intake.preview(), pair) : QString();
    }
    if (const auto& racket = m_racket.picked()) {
        for (const auto& pull : {form.mainsTension, form.crossesTension}) {
            if (pull && warning.isEmpty() && !isUsualPull(*pull, racket->frame.sport)) {
                warning = unusualPullText(*pull, racket->frame.sport);
            }
        }
        if (form.mainsTension && form.mainsTension != form.crossesTension &&
            form.crossesTension == m_intake.crossesOfOne(*form.mainsTension)) {
            words << crossesHigherText(m_shift.shop().badmintonCrosses);
        }
        if (!m_intake.preview() || !m_intake.preview()->aboveMarked) { // the warning names the mark
            words << markedText(racket->frame.marked);
        }
    }
    words.removeAll(QString());
    m_tensionLine.note->setNote(words.join(QStringLiteral("; ")));
    m_tensionLine.note->setWarning(warning);
}

void IntakeSheet::showAgreed() {
    const bool above = m_intake.preview() && m_intake.preview()->aboveMarked;
    m_agreed->setVisible(above);
    m_agreedBy->setVisible(above);
    m_sheet->setLineVisible(m_agreedLine, above);
    const QSignalBlocker quiet(m_agreed);
    m_agreed->setChecked(m_intake.form().agreed); // a yes to other tensions was taken back
    m_agreedBy->setEnabled(m_agreed->isChecked());
    m_agreedLine.note->setProblem(tooLongText(m_agreedBy->text(), desk::kLongestName, "name"));
    m_agreedLine.note->setNote(m_agreed->isChecked() ? QString() : askYesText(m_intake.wordsForTheYes()));
}

void IntakeSheet::showTerms() {
    const bool discounted = !m_discount->isBlank();
    m_reason->setVisible(discounted);
    const QString tooLong =
        discounted ? tooLongText(m_reason->text(), desk::kLongestName, "reason") : QString();
    if (!tooLong.isEmpty()) {
        m_termsLine.note->setProblem(tooLong);
    } else if (!m_mustBy->problem() && !m_discount->problem()) {
        m_termsLine.note->setProblem({});
    }
    QStringList warnings;
    QString note;
    const auto mustBy = m_mustBy->readable();
    if (mustBy && m_intake.preview()) {
        const QString words = mustByText(*m_intake.preview(), *mustBy, m_shift.now(), m_shift.zone());
        if (m_intake.preview()->afterMustBy) {
            warnings << words;
        } else {
            note = words;
        }
    }
    if (discounted && m_reason->text().trimmed().isEmpty()) {
        warnings << askReasonText();
    }
    m_termsLine.note->setWarning(warnings.join(QStringLiteral("\n▲ ")));
    m_termsLine.note->setNote(note);
}

void IntakeSheet::showInspection() {
    QString problem = tooLongText(m_cameWith->text(), desk::kLongestNote, "came with");
    if (problem.isEmpty()) {
        problem = tooLongText(m_remarks->text(), desk::kLongestNote, "remarks");
    }
    m_inspectionLine.note->setProblem(problem);
}

void IntakeSheet::showShortSide() {
    const auto& preview = m_intake.preview();
    if (!preview || !preview->shortSide) {
        m_methodLine.note->clearAll();
        return;
    }
    const auto& side = *preview->shortSide;
    m_methodLine.note->setNote(
        tr("short side %1: %2\n%3").arg(shortSideWhere(side), shortSideHowLong(side), sideFromText(side)));
    m_methodLine.note->setWarning(side.againstChoice ? tr("the frame's side stands") : QString());
}

void IntakeSheet::showPreview() {
    showNeeded();
    showTensions();
    showAgreed();
    showTerms();
    showOwnSets();
    showShortSide();
    const auto& preview = m_intake.preview();
    if (!preview) {
        m_outcome->showNothing(m_intake.refusal() ? sentenceFor(*m_intake.refusal()) : QString());
        return;
    }
    m_outcome->show(*preview, m_shift.now(), m_shift.zone());
    m_outcome->setThinking(m_intake.isThinking());
}

} // namespace rw::ui
