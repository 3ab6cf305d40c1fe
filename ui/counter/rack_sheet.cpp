// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/counter/rack_sheet.h"

#include "ui/presenter/rack_presenter.h"
#include "ui/text/format.h"
#include "ui/text/intake_words.h"
#include "ui/text/sentences.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/look.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/money_edit.h"
#include "ui/widgets/row_delegate.h"

#include <QKeyEvent>
#include <QVBoxLayout>

#include <algorithm>

namespace rw::ui {

RackSheet::RackSheet(RackPresenter& rack, Shift& shift, QWidget* parent)
    : QWidget(parent)
    , m_rack(rack)
    , m_shift(shift)
    , m_title(new QLabel(tr("The rack"), this))
    , m_empty(new QLabel(this))
    , m_list(new QListView(this))
    , m_sheet(new Sheet(this))
    , m_paid(new MoneyEdit(Currency::pounds(), m_sheet))
    , m_way(new Choice(m_sheet))
    , m_takenBy(new QLineEdit(m_sheet))
    , m_handOver(new QPushButton(tr("Hand over"), m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    m_title->setFont(largeFont(*this, 1.5));
    layout->addWidget(m_title);
    layout->addWidget(m_empty);
    layout->addWidget(m_list, 1);
    layout->addWidget(m_sheet);
    layout->addStretch();

    m_list->setModel(&m_lines);
    m_list->setItemDelegate(new RowDelegate(m_list));
    m_list->setAccessibleName(tr("The rack"));
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_list->installEventFilter(this);
    m_empty->setWordWrap(true);
    m_empty->setTextFormat(Qt::PlainText);
    m_paid->setAccessibleName(tr("Paid now"));
    m_way->setAccessibleName(tr("How it is paid"));
    m_way->addItem(tr("cash"), QStringLiteral("cash"));
    m_way->addItem(tr("card"), QStringLiteral("card"));
    m_way->addItem(tr("not paid yet"), QString());
    m_takenBy->setPlaceholderText(tr("the customer"));
    m_takenBy->setMaxLength(200);
    m_handOver->setDefault(true);

    m_paidLine = m_sheet->addLine(tr("&Paid now"), {m_paid, m_way});
    m_takenLine = m_sheet->addLine(tr("&Taken by"), m_takenBy);
    m_sheet->addLine(QString(), m_handOver);
    m_paidLine.note->watch(m_paid);

    connect(m_list, &QListView::activated, this, [this] { openCurrent(); });
    connect(m_way, &QComboBox::currentIndexChanged, this,
            [this] { m_paid->setEnabled(!m_way->currentData().toString().isEmpty()); });
    connect(m_handOver, &QPushButton::clicked, this, [this] { handOver(); });
    connect(&m_rack, &RackPresenter::linesChanged, this, &RackSheet::showLines);
    connect(&m_rack, &RackPresenter::openedChanged, this, &RackSheet::showOpened);
    connect(&m_rack, &RackPresenter::refused, this,
            [this](const Refusal& why) { m_takenLine.note->setProblem(sentenceFor(why)); });
    showLines();
    showOpened();
}

void RackSheet::enter(const QString& person) {
    m_person = person;
    m_rack.close();
    m_rack.refresh();
    m_list->setFocus(Qt::OtherFocusReason);
    showLines();
}

bool RackSheet::isOpen() const { return m_rack.opened().has_value(); }

void RackSheet::showLines() {
    m_lines.setNow(m_shift.now(), m_shift.zone());
    m_lines.setRows(m_rack.lines());
    const bool empty = m_rack.lines().empty();
    m_empty->setVisible(empty);
    m_empty->setText(m_rack.isLoaded()
                         ? tr("Nothing hangs on the rack. A racket comes here when the bench has finished it.")
                         : QString());
    m_list->setVisible(!empty);
    if (!empty) {
        const auto& lines = m_rack.lines();
        const auto theirs =
            std::ranges::find_if(lines, [&](const auto& line) { return fromUtf8(line.customer) == m_person; });
        const int row = theirs == lines.end() ? 0 : static_cast<int>(theirs - lines.begin());
        m_list->setCurrentIndex(m_lines.index(row, 0));
    }
}

void RackSheet::showOpened() {
    const bool open = isOpen();
    m_sheet->setVisible(open);
    m_paidLine.note->clearAll();
    m_takenLine.note->clearAll();
    if (!open) {
        return;
    }
    const Job& job = *m_rack.opened();
    m_paid->setCurrency(job.total.currency());
    m_paid->setValue(*m_rack.owed());
    m_way->setCurrentIndex(0);
    m_takenBy->clear();
    m_paidLine.note->setNote(chargesText(job.charges) + tr("\ntotal %1").arg(moneyText(job.total)));
    m_takenLine.note->setNote(tr("look at the tag and the mark, not only at the name"));
    m_paid->setFocus(Qt::OtherFocusReason);
    m_paid->selectAll();
}

const desk::JobLine* RackSheet::current() const {
    const QModelIndex index = m_list->currentIndex();
    return index.isValid() ? &m_lines.at(index.row()) : nullptr;
}

void RackSheet::openCurrent() {
    if (const auto* line = current()) {
        m_rack.open(line->id);
    }
}

void RackSheet::handOver() {
    const QString way = m_way->currentData().toString();
    std::optional<Money> payment;
    if (!way.isEmpty()) {
        if (!m_paidLine.note->showProblems()) {
            m_paid->setFocus(Qt::OtherFocusReason);
            return;
        }
        payment = m_paid->readable();
        if (payment && payment->minor() == 0) {
            payment.reset();
        }
    }
    m_rack.handOver(payment, way, m_takenBy->text());
}

bool RackSheet::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_list && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Return || key == Qt::Key_Enter) {
            openCurrent();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void RackSheet::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (isOpen()) {
            handOver();
        }
        return;
    case Qt::Key_Escape:
        if (isOpen()) {
            m_rack.close();
            m_list->setFocus(Qt::OtherFocusReason);
        } else {
            Q_EMIT left();
        }
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace rw::ui
