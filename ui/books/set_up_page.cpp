// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/set_up_page.h"

#include "ui/books/page_heading.h"
#include "ui/widgets/row_delegate.h"

#include <QApplication>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace rw::ui {

SetUpPage::SetUpPage(const QString& heading, const QString& listName, QWidget* parent)
    : BooksPage(parent)
    , m_heading(pageHeading(heading, this))
    , m_words(pageWords(this))
    , m_above(new QVBoxLayout)
    , m_list(new QListView(this))
    , m_sheets(new QStackedWidget(this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    layout->addWidget(m_heading);
    layout->addWidget(m_words);
    layout->addLayout(m_above);
    layout->addWidget(m_list, 1);
    layout->addWidget(m_sheets);
    layout->addStretch();
    m_list->setModel(&m_rows);
    m_list->setItemDelegate(new RowDelegate(m_list));
    m_list->setAccessibleName(listName);
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_sheets->hide();
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, [this] { enableKeys(); });
}

QList<QKeySequence> SetUpPage::enterKeys() { return {QKeySequence(Qt::Key_Return), QKeySequence(Qt::Key_Enter)}; }

void SetUpPage::addSheet(QWidget* sheet) { m_sheets->addWidget(sheet); }

void SetUpPage::addTallSheet(QWidget* sheet) {
    m_tall << sheet;
    addSheet(sheet);
}

void SetUpPage::addAboveList(QWidget* widget) { m_above->addWidget(widget); }

QWidget* SetUpPage::sheet() const { return m_sheets->isHidden() ? nullptr : m_sheets->currentWidget(); }

void SetUpPage::openSheet(QWidget* sheet) {
    m_sheets->setCurrentWidget(sheet);
    // A sheet that is not in view takes no room.
    for (int i = 0; i < m_sheets->count(); ++i) {
        const auto policy = m_sheets->widget(i) == sheet ? QSizePolicy::Preferred : QSizePolicy::Ignored;
        m_sheets->widget(i)->setSizePolicy(QSizePolicy::Preferred, policy);
    }
    m_sheets->show();
    // What is written belongs to the row that it was begun on.
    m_list->setEnabled(false);
    m_list->setVisible(!m_tall.contains(sheet) && m_rows.rowCount() > 0);
    // The row that is changed stays in view once the sheet has taken its room.
    QMetaObject::invokeMethod(this, [this] { m_list->scrollTo(m_list->currentIndex()); }, Qt::QueuedConnection);
    enableKeys();
}

void SetUpPage::closeSheet() {
    const bool keyboardHere = hasKeyboard();
    m_list->setEnabled(true);
    m_list->setVisible(m_rows.rowCount() > 0);
    m_sheets->hide();
    if (keyboardHere) {
        enter();
    }
    enableKeys();
}

bool SetUpPage::hasKeyboard() const { return hasFocus() || isAncestorOf(QApplication::focusWidget()); }

QWidget* SetUpPage::whereWorkBegins() { return m_list->isHidden() ? static_cast<QWidget*>(this) : m_list; }

void SetUpPage::enter() {
    QWidget* open = sheet();
    (open != nullptr ? open : whereWorkBegins())->setFocus(Qt::OtherFocusReason);
}

bool SetUpPage::back() {
    if (sheet() == nullptr) {
        return false;
    }
    closeSheet();
    enter();
    return true;
}

void SetUpPage::showRows(std::vector<WordsRow> rows, const QString& words, int row) {
    const bool keyboardHere = m_list->hasFocus() || hasFocus();
    const int before = row >= 0 ? row : std::max(0, currentRow());
    m_rows.setRows(std::move(rows));
    setCurrentRow(before);
    m_list->setVisible(m_rows.rowCount() > 0 && !m_tall.contains(sheet()));
    m_words->setText(words);
    m_words->setVisible(!words.isEmpty());
    if (keyboardHere && sheet() == nullptr) {
        enter();
    }
    enableKeys();
}

void SetUpPage::setHeading(const QString& words) { m_heading->setText(words); }

int SetUpPage::currentRow() const { return m_list->currentIndex().isValid() ? m_list->currentIndex().row() : -1; }

void SetUpPage::setCurrentRow(int row) {
    if (m_rows.rowCount() > 0) {
        m_list->setCurrentIndex(m_rows.index(std::min(row, m_rows.rowCount() - 1), 0));
    }
}

} // namespace rw::ui
