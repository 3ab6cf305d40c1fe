// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/counter/rack_sheet.h"

#include "ui/presenter/rack_presenter.h"
#include "ui/text/counter_words.h"
#include "ui/text/format.h"
#include "ui/text/intake_words.h"
#include "ui/text/sentences.h"
#include "ui/text/tag_words.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/money_edit.h"

#include <QKeyEvent>
#include <QVBoxLayout>

#include <algorithm>
#include <map>
#include <utility>

namespace rw::ui {

namespace {
const QString kOnAccount = QStringLiteral("on account");
}

RackSheet::RackSheet(RackPresenter& rack, Shift& shift, QWidget* parent)
    : QWidget(parent)
    , m_rack(rack)
    , m_shift(shift)
    , m_list(new JobList(QString(), QString(), this))
    , m_sheet(new Sheet(this))
    , m_paid(new MoneyEdit(Currency::pounds(), m_sheet))
    , m_way(new Choice(m_sheet))
    , m_takenBy(new QLineEdit(m_sheet))
    , m_handOver(new QPushButton(tr("Hand over"), m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    layout->addWidget(m_list, 1);
    layout->addWidget(m_sheet);
    layout->addStretch();

    m_paid->setAccessibleName(tr("Paid now"));
    m_way->setAccessibleName(tr("How it is paid"));
    m_way->addItem(tr("cash"), QStringLiteral("cash"));
    m_way->addItem(tr("card"), QStringLiteral("card"));
    m_way->addItem(tr("on account"), kOnAccount);
    m_way->addItem(tr("not paid yet"), QString());
    m_takenBy->setPlaceholderText(tr("the customer"));
    m_handOver->setDefault(true);

    m_paidLine = m_sheet->addLine(tr("&Paid now"), {m_paid, m_way});
    m_takenLine = m_sheet->addLine(tr("&Taken by"), m_takenBy);
    m_sheet->addLine(QString(), m_handOver);
    m_paidLine.note->watch(m_paid);

    connect(m_list, &JobList::entered, &m_rack, &RackPresenter::open);
    // What is open is what the list stands at, or nothing is.
    connect(m_list, &JobList::moved, this, [this] {
        if (isOpen() && m_list->chosen() && m_list->chosen() != m_rack.opened()->id) {
            m_rack.close();
        }
    });
    connect(m_list, &JobList::typed, this, [this](int key) {
        if (!isUnpaid() && (key == Qt::Key_T || key == Qt::Key_M)) {
            m_rack.tell(*m_list->chosen(), key == Qt::Key_T ? QStringLiteral("phone") : QStringLiteral("message"));
        }
    });
    connect(m_list, &JobList::tagNotHere, this,
            [this](std::int64_t number) { Q_EMIT said(notInThisListText(number)); });
    connect(m_way, &QComboBox::currentIndexChanged, this, [this] {
        m_paid->setEnabled(isPaidNow());
        showPayment();
    });
    connect(m_paid, &MoneyEdit::valueChanged, this, &RackSheet::showPayment);
    connect(m_handOver, &QPushButton::clicked, this, &RackSheet::act);
    connect(&m_rack, &RackPresenter::linesChanged, this, &RackSheet::showLines);
    connect(&m_rack, &RackPresenter::openedChanged, this, &RackSheet::showOpened);
    // The next racket is somebody else's, perhaps: Enter must not open it, let alone hand it over.
    const auto chooseAnew = [this] {
        m_list->takeKeyboard();
        m_list->chooseNone();
    };
    connect(&m_rack, &RackPresenter::handedOver, this, chooseAnew);
    connect(&m_rack, &RackPresenter::paid, this, chooseAnew);
    connect(&m_rack, &RackPresenter::gaveBack, this, chooseAnew);
    connect(&m_rack, &RackPresenter::broughtBack, this, [this] { m_list->takeKeyboard(); });
    connect(&m_rack, &RackPresenter::refused, this,
            [this](const Refusal& why) { m_takenLine.note->setProblem(sentenceFor(why)); });
    showLines();
    showOpened();
}

void RackSheet::enter(const std::optional<CustomerId>& person) {
    m_rack.close();
    m_list->begin(person, JobList::WithoutPerson::None);
    showLines();
    m_rack.refresh();
    m_list->takeKeyboard();
}

void RackSheet::enterAt(JobId job) {
    enter(std::nullopt);
    m_list->beginAt(job);
}

bool RackSheet::isOpen() const { return m_rack.opened().has_value(); }

bool RackSheet::isUnpaid() const { return m_rack.shows() == RackPresenter::Shows::Unpaid; }

bool RackSheet::isGivingBack() const { return isUnpaid() && isOpen() && m_rack.owed()->minor() < 0; }

void RackSheet::showLines() {
    if (!isUnpaid()) {
        m_list->setTitle(tr("The rack"),
                         tr("↑ ↓ choose   ·   Enter opens, Enter again hands over   ·   T told by phone   ·   "
                            "M told by message   ·   Esc back"));
        m_list->setLines(m_rack.lines(), m_shift.now(), m_shift.zone(),
                         m_rack.isLoaded() ? emptyRackText() : QString());
        return;
    }
    m_list->setTitle(tr("Went home unpaid, and to give back"),
                     tr("↑ ↓ choose   ·   Enter opens, Enter again takes the payment or gives it back   ·   Esc back"));
    std::map<JobId, JobRemark> remarks;
    for (const desk::UnpaidJob& unpaid : m_rack.unpaid()) {
        remarks.insert_or_assign(unpaid.job.id,
                                 JobRemark{wentHomeMark(unpaid, m_shift.now(), m_shift.zone()), owedMark(unpaid.owed)});
    }
    for (const desk::ToGiveBack& back : m_rack.toGiveBack()) {
        remarks.insert_or_assign(back.job.id, JobRemark{QString(), toGiveBackMark(back)});
    }
    m_list->setLines(m_rack.lines(), m_shift.now(), m_shift.zone(), m_rack.isLoaded() ? nothingUnpaidText() : QString(),
                     std::move(remarks));
}

void RackSheet::showOpened() {
    const bool open = isOpen();
    m_sheet->setVisible(open);
    m_takenBy->setVisible(open && !isUnpaid());
    m_takenLine.label->setVisible(open && !isUnpaid());
    m_paidLine.note->clearAll();
    m_takenLine.note->clearAll();
    if (!open) {
        return;
    }
    const Job& job = *m_rack.opened();
    const Money owed = *m_rack.owed();
    const bool givesBack = isGivingBack();
    const bool nothingOwed = owed.minor() <= 0;
    m_paidLine.label->setText(givesBack ? tr("&Given back now") : tr("&Paid now"));
    m_paid->setAccessibleName(givesBack ? tr("Given back now") : tr("Paid now"));
    m_way->setAccessibleName(givesBack ? tr("How it is given back") : tr("How it is paid"));
    m_paid->setCurrency(job.total.currency());
    m_paid->setMayBeBlank(nothingOwed && !givesBack);
    m_paid->setValue(givesBack ? std::optional(-owed) : nothingOwed ? std::nullopt : std::optional(owed));
    m_way->setCurrentIndex(0);
    m_takenBy->clear();
    m_handOver->setText(givesBack    ? tr("Give back for %1").arg(job.number)
                        : isUnpaid() ? tr("Take the payment for %1").arg(job.number)
                                     : tr("Hand over %1").arg(job.number));
    m_takenLine.note->setNote(isUnpaid() ? QString() : tr("look at the tag and the mark, not only at the name"));
    showPayment();
    m_paid->setFocus(Qt::OtherFocusReason);
    m_paid->selectAll();
}

bool RackSheet::isPaidNow() const {
    const QString way = m_way->currentData().toString();
    return !way.isEmpty() && way != kOnAccount;
}

std::optional<Money> RackSheet::paying() const {
    return isPaidNow() && !m_paid->isBlank() ? m_paid->readable()
                                             : std::optional(Money::zero(m_rack.owed()->currency()));
}

void RackSheet::showPayment() {
    m_surplusShown = false;
    if (!isOpen()) {
        return;
    }
    const Job& job = *m_rack.opened();
    const Money owed = *m_rack.owed();
    if (job.state == JobState::Withdrawn) {
        m_paidLine.note->setNote(tr("withdrawn, %1 is paid").arg(moneyText(-owed)));
    } else {
        QString words = chargesText(job.charges) + tr("\ntotal %1").arg(moneyText(job.total));
        if (owed != job.total) {
            words += tr(", %1 of it is paid").arg(moneyText(job.total - owed));
        }
        m_paidLine.note->setNote(words);
    }
    const auto money = paying();
    if (isGivingBack()) {
        m_paidLine.note->setWarning(money ? giveBackText(-owed, *money) : QString());
        return;
    }
    m_paidLine.note->setWarning(money ? paymentText(owed, *money) : QString());
}

void RackSheet::handOver() {
    if (!m_paid->isEnabled()) {
        m_rack.handOver(std::nullopt, {}, m_takenBy->text(), m_way->currentData().toString() == kOnAccount);
        return;
    }
    if (!m_paidLine.note->showProblems()) {
        m_paid->setFocus(Qt::OtherFocusReason);
        return;
    }
    const Money payment = *paying();
    if (surplusMustBeSaid(payment)) {
        return;
    }
    m_rack.handOver(payment.minor() == 0 ? std::nullopt : std::optional(payment), m_way->currentData().toString(),
                    m_takenBy->text());
}

bool RackSheet::surplusMustBeSaid(const Money& payment) {
    const bool isSurplus = payment.minor() > std::max<std::int64_t>(0, m_rack.owed()->minor());
    return isSurplus && !std::exchange(m_surplusShown, true); // it stands in the margin; the next Enter takes it
}

void RackSheet::takePayment() {
    if (!isPaidNow()) {
        m_way->setFocus(Qt::OtherFocusReason); // it went home unpaid already: that is nothing new
        return;
    }
    if (!m_paidLine.note->showProblems()) {
        m_paid->setFocus(Qt::OtherFocusReason);
        return;
    }
    const Money payment = *paying();
    if (!surplusMustBeSaid(payment)) {
        m_rack.takePayment(payment, m_way->currentData().toString());
    }
}

void RackSheet::giveBack() {
    if (!isPaidNow()) {
        m_way->setFocus(Qt::OtherFocusReason); // it is still theirs: that is nothing new
        return;
    }
    if (!m_paidLine.note->showProblems()) {
        m_paid->setFocus(Qt::OtherFocusReason);
        return;
    }
    m_rack.giveBack(*paying(), m_way->currentData().toString());
}

void RackSheet::act() {
    if (isGivingBack()) {
        giveBack();
    } else if (isUnpaid()) {
        takePayment();
    } else {
        handOver();
    }
}

void RackSheet::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (isOpen() && !event->isAutoRepeat()) {
            act();
        }
        return;
    case Qt::Key_Escape:
        if (isOpen()) {
            m_rack.close();
            m_list->takeKeyboard();
        } else {
            Q_EMIT left();
        }
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace rw::ui
