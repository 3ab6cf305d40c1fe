// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/pay_sheet.h"

#include "ui/model/job_line_model.h"
#include "ui/presenter/request_key.h"
#include "ui/text/counter_words.h"
#include "ui/text/format.h"
#include "ui/text/intake_words.h"
#include "ui/text/sentences.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/money_edit.h"

#include <QVBoxLayout>

#include <algorithm>

namespace rw::ui {

PaySheet::PaySheet(QWidget* parent)
    : QWidget(parent)
    , m_sheet(new Sheet(this))
    , m_amount(new MoneyEdit(Currency::pounds(), m_sheet))
    , m_way(new Choice(m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    m_amount->setAccessibleName(tr("Paid now"));
    m_way->setAccessibleName(tr("How it is paid"));
    m_way->addItem(tr("cash"), QStringLiteral("cash"));
    m_way->addItem(tr("card"), QStringLiteral("card"));
    m_way->addItem(tr("transfer"), QStringLiteral("transfer"));
    m_line = m_sheet->addLine(tr("Paid"), {m_amount, m_way});
    m_line.note->watch(m_amount);
    setFocusProxy(m_amount);
    connect(m_amount, &MoneyEdit::valueChanged, this, &PaySheet::showLeft);
}

void PaySheet::start(const desk::OpenMatter& matter) {
    m_matter = matter;
    m_requestKey = newRequestKey();
    m_line.note->clearAll();
    const Money owed = matter.owed();
    m_line.label->setText(givesBack() ? tr("Given back") : tr("Paid"));
    m_amount->setAccessibleName(givesBack() ? tr("Given back now") : tr("Paid now"));
    m_way->setAccessibleName(givesBack() ? tr("How it is given back") : tr("How it is paid"));
    m_amount->setCurrency(matter.total.currency());
    m_amount->setValue(givesBack() ? std::optional(-owed) : owed.minor() > 0 ? std::optional(owed) : std::nullopt);
    const QString whose = tr("%1 of %2").arg(jobLineTitle(matter.job), fromUtf8(matter.job.customer));
    m_line.note->setNote(givesBack()
                             ? tr("%1: %2 is theirs. Enter gives it back, Esc goes back").arg(whose, moneyText(-owed))
                             : tr("%1: %2 of %3 is paid. Enter takes it, Esc goes back")
                                   .arg(whose, moneyText(matter.paid), moneyText(matter.total)));
    showLeft();
    m_amount->setFocus(Qt::OtherFocusReason);
    m_amount->selectAll();
}

void PaySheet::showLeft() {
    m_surplusShown = false;
    const auto amount = m_amount->readable();
    if (!m_matter || !amount) {
        m_line.note->setWarning({});
    } else if (givesBack()) {
        m_line.note->setWarning(giveBackText(-m_matter->owed(), *amount));
    } else {
        m_line.note->setWarning(paymentText(m_matter->owed(), *amount));
    }
}

std::optional<OpenMattersPresenter::Payment> PaySheet::payment() {
    m_line.note->setProblem({});
    if (m_amount->problem()) {
        m_line.note->sendBackTo(m_amount);
        return std::nullopt;
    }
    const Money amount = *m_amount->readable();
    if (!givesBack() && amount.minor() > std::max<std::int64_t>(0, m_matter->owed().minor()) && !m_surplusShown) {
        m_surplusShown = true; // it stands in the margin; the next Enter takes it
        return std::nullopt;
    }
    return OpenMattersPresenter::Payment{m_matter->job.id, amount, m_way->currentData().toString(), m_requestKey};
}

void PaySheet::showRefusal(const Refusal& why) { m_line.note->setProblem(sentenceFor(why)); }

QString PaySheet::margin() const { return m_line.note->text(); }

} // namespace rw::ui
