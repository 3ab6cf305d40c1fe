// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench/finish_strip.h"

#include "core/desk/unusual.h"
#include "ui/text/bench_words.h"
#include "ui/text/format.h"
#include "ui/text/sentences.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/tension_edit.h"

#include <QVBoxLayout>

namespace rw::ui {

FinishStrip::FinishStrip(QWidget* parent)
    : QWidget(parent)
    , m_sheet(new Sheet(this))
    , m_mains(new TensionEdit(m_sheet))
    , m_crosses(new TensionEdit(m_sheet))
    , m_tails(new QLineEdit(m_sheet))
    , m_words(new QLineEdit(m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    m_sheet->setTight();
    m_mains->setAccessibleName(tr("Mains as strung"));
    m_crosses->setAccessibleName(tr("Crosses as strung"));
    m_words->setMaxLength(2000);
    m_words->setPlaceholderText(tr("words to keep"));
    m_tails->setMaxLength(80);
    m_line = m_sheet->addLine(tr("Strung"), {m_mains, m_crosses});
    // On one line: there is no room for a third.
    m_tails->setAccessibleName(tr("Tails"));
    m_words->setAccessibleName(tr("Note"));
    m_tailsLine = m_sheet->addLine(tr("Tails, note"), {m_tails, m_words});
    m_line.note->watch(m_mains);
    m_line.note->watch(m_crosses);
    setTabOrder(m_mains, m_crosses);
    setTabOrder(m_crosses, m_tails);
    setTabOrder(m_tails, m_words);
    connect(m_tails, &QLineEdit::textEdited, this, [this] { m_tailsLine.note->setProblem({}); });
}

void FinishStrip::start(const desk::JobCard& card) {
    m_job = card.job.id;
    m_asked = card.job.asked;
    m_askedAbout.reset();
    m_line.note->clearAll();
    m_mains->setValue(card.mains ? card.mains->nearest() : card.job.asked.mains);
    m_crosses->setValue(card.crosses ? card.crosses->nearest() : card.job.asked.crosses);
    m_words->clear();
    m_method = card.job.method;
    m_headLength = Length::roundedUp(card.plan.headLengthMm);
    m_tails->clear();
    m_tails->setPlaceholderText(tailsHintText(m_method));
    m_tailsLine.note->clearAll();
    m_tailsLine.note->setNote(tailsNoteText());
    const QString asked = tr("asked %1").arg(tensionPairText(card.job.asked));
    m_line.note->setNote(card.machine
                             ? tr("%1; the dial of %2. Enter finishes.").arg(asked, fromUtf8(card.machine->name))
                             : tr("%1. Enter finishes.").arg(asked));
    m_mains->setFocus(Qt::OtherFocusReason);
    m_mains->selectAll();
}

std::optional<TensionPair> FinishStrip::strung() {
    for (auto* edit : {m_mains, m_crosses}) {
        if (edit->problem()) {
            m_line.note->sendBackTo(edit);
            return std::nullopt;
        }
    }
    const TensionPair pair{*m_mains->readable(), *m_crosses->readable()};
    if (desk::isFarFromAsked(pair, *m_asked) && m_askedAbout != pair) {
        m_askedAbout = pair;
        m_line.note->setNote({}); // there is room for one of the two
        m_line.note->setWarning(farStrungText(pair, *m_asked));
        return std::nullopt;
    }
    return pair;
}

std::optional<std::vector<TailsOf>> FinishStrip::tails() {
    auto tails = tailsFromText(m_tails->text().trimmed().toStdString(), m_method, m_headLength);
    if (!tails) {
        m_tailsLine.note->setProblem(sentenceFor(tails.error()));
        m_tails->setFocus(Qt::OtherFocusReason);
        return std::nullopt;
    }
    return *std::move(tails);
}

void FinishStrip::showRefusal(const Refusal& why) { m_line.note->setProblem(sentenceFor(why)); }

} // namespace rw::ui
