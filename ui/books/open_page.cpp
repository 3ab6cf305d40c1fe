// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/open_page.h"

#include "ui/books/page_heading.h"
#include "ui/books/pay_sheet.h"
#include "ui/books/tell_sheet.h"
#include "ui/presenter/open_matters_presenter.h"
#include "ui/text/books_words.h"
#include "ui/text/counter_words.h"
#include "ui/text/format.h"
#include "ui/text/sentences.h"
#include "ui/widgets/row_delegate.h"

#include <QVBoxLayout>

#include <algorithm>

namespace rw::ui {

namespace {
constexpr int kAroundNote = 36; ///< the paper above and below what stands in a margin
} // namespace

OpenPage::OpenPage(DeskRunner& runner, Shift& shift, QWidget* parent)
    : BooksPage(parent)
    , m_shift(shift)
    , m_presenter(std::make_unique<OpenMattersPresenter>(runner, shift))
    , m_words(pageWords(this))
    , m_list(new QListView(this))
    , m_sheets(new QStackedWidget(this))
    , m_tell(new TellSheet(m_sheets))
    , m_pay(new PaySheet(m_sheets)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    layout->addWidget(pageHeading(name(), this));
    layout->addWidget(m_words);
    layout->addWidget(m_list, 1);
    layout->addWidget(m_sheets);
    layout->addStretch();
    m_list->setModel(&m_matters);
    m_list->setItemDelegate(new RowDelegate(m_list));
    m_list->setAccessibleName(name());
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_sheets->addWidget(m_tell);
    m_sheets->addWidget(m_pay);
    m_sheets->setMinimumHeight(4 * fontMetrics().lineSpacing() + kAroundNote); // a warning and a note of two lines
    m_sheets->hide();
    makeKeys();

    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, &OpenPage::enableKeys);
    auto* presenter = m_presenter.get();
    connect(presenter, &OpenMattersPresenter::mattersChanged, this, &OpenPage::showMatters);
    connect(presenter, &OpenMattersPresenter::told, this, [this](const Job& job) {
        back();
        Q_EMIT said(toldText(job));
    });
    connect(presenter, &OpenMattersPresenter::paid, this, [this](const desk::PaymentTaken& taken) {
        back();
        Q_EMIT said(paymentTakenText(taken));
    });
    connect(presenter, &OpenMattersPresenter::gaveBack, this, [this](const desk::GivenBack& given) {
        back();
        Q_EMIT said(gaveBackText(given));
    });
    connect(presenter, &OpenMattersPresenter::refused, this, [this](const Refusal& why) {
        if (!isSheetOpen()) {
            Q_EMIT said(sentenceFor(why));
        } else if (m_sheets->currentWidget() == m_tell) {
            m_tell->showRefusal(why);
        } else {
            m_pay->showRefusal(why);
        }
    });
    showMatters();
}

OpenPage::~OpenPage() = default;

void OpenPage::makeKeys() {
    const QList<QKeySequence> enter{QKeySequence(Qt::Key_Return), QKeySequence(Qt::Key_Enter)};
    m_tellKey = addKey(tr("The customer was &told"), {QKeySequence(Qt::Key_T)}, [this] { openTell(); });
    m_payKey = addKey(tr("Take a &payment"), {QKeySequence(Qt::Key_P)}, [this] { openPay(); });
    m_historyKey = addKey(tr("&History of the customer"), enter, [this] {
        if (const auto* matter = current()) {
            Q_EMIT historyWanted({matter->job.customerId, fromUtf8(matter->job.customer)});
        }
    });
    m_confirmKey = addCommand(tr("C&onfirm"), enter, [this] { confirm(); });
}

void OpenPage::refresh() { m_presenter->open(); }

void OpenPage::leave() { m_presenter->close(); }

void OpenPage::enter() {
    if (isSheetOpen()) {
        m_sheets->currentWidget()->setFocus(Qt::OtherFocusReason);
    } else if (m_matters.rowCount() > 0) {
        m_list->setFocus(Qt::OtherFocusReason);
    } else {
        setFocus(Qt::OtherFocusReason);
    }
}

bool OpenPage::back() {
    if (!isSheetOpen()) {
        return false;
    }
    showSheet(nullptr);
    enter();
    return true;
}

void OpenPage::showMatters() {
    const auto* before = current();
    const auto chosen = before != nullptr ? std::optional(before->job.id) : std::nullopt;
    const int row = std::max(0, m_list->currentIndex().row());
    m_matters.setNow(m_shift.now());
    m_matters.setRows(m_presenter->matters());
    const int rows = m_matters.rowCount();
    if (rows > 0) {
        const int found = chosen ? m_matters.rowOf(*chosen) : -1;
        m_list->setCurrentIndex(m_matters.index(found < 0 ? std::min(row, rows - 1) : found, 0));
    }
    const bool keyboardHere = m_list->hasFocus() || hasFocus();
    m_list->setVisible(rows > 0);
    m_words->setText(openMattersText(m_presenter->matters()));
    m_words->setVisible(m_presenter->isLoaded());
    if (keyboardHere) {
        enter();
    }
    enableKeys();
}

const desk::OpenMatter* OpenPage::current() const {
    const QModelIndex index = m_list->currentIndex();
    return index.isValid() ? &m_matters.at(index.row()) : nullptr;
}

void OpenPage::openTell() {
    if (const auto* matter = current(); matter != nullptr && m_tellKey->isEnabled()) {
        showSheet(m_tell);
        m_tell->start(*matter);
    }
}

void OpenPage::openPay() {
    if (const auto* matter = current(); matter != nullptr && m_payKey->isEnabled()) {
        showSheet(m_pay);
        m_pay->start(*matter);
    }
}

bool OpenPage::isSheetOpen() const { return !m_sheets->isHidden(); }

void OpenPage::showSheet(QWidget* sheet) {
    if (sheet != nullptr) {
        m_sheets->setCurrentWidget(sheet);
    }
    m_sheets->setVisible(sheet != nullptr);
    // What is written belongs to the job that it was begun on.
    m_list->setEnabled(sheet == nullptr);
    enableKeys();
}

void OpenPage::enableKeys() {
    const bool writing = isSheetOpen();
    const auto* matter = current();
    m_confirmKey->setEnabled(writing);
    m_historyKey->setEnabled(!writing && matter != nullptr);
    m_tellKey->setEnabled(!writing && matter != nullptr && matter->job.state == JobState::Strung);
    m_payKey->setEnabled(!writing && matter != nullptr);
    m_payKey->setText(matter != nullptr && matter->owed().minor() < 0 ? tr("Give back what was &paid")
                                                                      : tr("Take a &payment"));
    Q_EMIT keysChanged();
}

void OpenPage::confirm() {
    if (m_sheets->currentWidget() == m_tell) {
        m_presenter->tell(m_tell->job(), m_tell->how());
    } else if (const auto payment = m_pay->payment()) {
        if (m_pay->givesBack()) {
            m_presenter->giveBack(*payment);
        } else {
            m_presenter->pay(*payment);
        }
    }
}

} // namespace rw::ui
