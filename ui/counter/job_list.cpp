// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/counter/job_list.h"

#include "ui/text/tag_words.h"
#include "ui/widgets/look.h"
#include "ui/widgets/row_delegate.h"

#include <QItemSelectionModel>
#include <QKeyEvent>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace rw::ui {

JobList::JobList(const QString& title, const QString& keys, QWidget* parent)
    : QWidget(parent)
    , m_title(new QLabel(this))
    , m_keys(new QLabel(this))
    , m_empty(new QLabel(this))
    , m_list(new QListView(this)) {
    m_title->setFont(largeFont(*this, 1.5));
    m_keys->setForegroundRole(QPalette::PlaceholderText);
    m_keys->setWordWrap(true);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    layout->addWidget(m_title);
    layout->addWidget(m_keys);
    layout->addWidget(m_empty);
    layout->addWidget(m_list, 1);
    setFocusProxy(m_list);

    m_lines.setShowsPhones(true);
    m_list->setModel(&m_lines);
    m_list->setItemDelegate(new RowDelegate(m_list));
    setTitle(title, keys);
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_list->installEventFilter(this);
    m_empty->setWordWrap(true);
    m_empty->setTextFormat(Qt::PlainText);
    m_empty->hide();
    connect(m_list, &QListView::activated, this, &JobList::enter);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, &JobList::tellOfAMove);
}

void JobList::setTitle(const QString& title, const QString& keys) {
    m_title->setText(title);
    m_keyWords = keys;
    m_keys->setText(keys);
    m_list->setAccessibleName(title);
}

void JobList::begin(const std::optional<CustomerId>& person, WithoutPerson without) {
    m_person = person;
    m_beginJob.reset();
    m_without = without;
    m_beginning = true;
}

void JobList::beginAt(JobId job) {
    m_beginJob = job;
    m_beginning = true;
    if (!m_lines.rows().empty()) {
        const int row = rowToBeginWith();
        m_list->setCurrentIndex(row < 0 ? QModelIndex() : m_lines.index(row, 0));
    }
}

void JobList::setLines(const std::vector<desk::JobLine>& lines, Instant now, const QTimeZone& zone,
                       const QString& whenEmpty, std::map<JobId, JobRemark> remarks) {
    const auto before = chosen();
    m_lines.setNow(now, zone);
    m_lines.setRemarks(std::move(remarks));
    m_lines.setRows(lines);
    const bool hadKeyboard = m_list->hasFocus() || m_empty->hasFocus();
    m_empty->setText(whenEmpty);
    m_empty->setVisible(lines.empty());
    m_list->setVisible(!lines.empty());
    if (hadKeyboard) {
        takeKeyboard();
    }
    const int row = m_beginning ? rowToBeginWith() : before ? m_lines.rowOf(*before) : -1;
    m_list->setCurrentIndex(row < 0 ? QModelIndex() : m_lines.index(row, 0));
    tellOfAMove(); // a line that went away with the old lines is no change of the list's
}

void JobList::takeKeyboard() {
    QWidget* const place = m_list->isHidden() ? static_cast<QWidget*>(m_empty) : m_list;
    place->setFocus(Qt::OtherFocusReason);
}

void JobList::tellOfAMove() {
    if (const auto now = chosen(); now != m_told) {
        m_told = now;
        Q_EMIT moved();
    }
}

void JobList::chooseNone() {
    m_beginning = false;
    m_list->clearSelection();
    m_list->setCurrentIndex({});
}

int JobList::rowToBeginWith() const {
    const auto& lines = m_lines.rows();
    if (m_beginJob) {
        return m_lines.rowOf(*m_beginJob);
    }
    if (lines.empty() || !m_person) {
        return lines.empty() || m_without == WithoutPerson::None ? -1 : 0;
    }
    const auto theirs = std::ranges::find(lines, *m_person, &desk::JobLine::customerId);
    return theirs == lines.end() ? -1 : static_cast<int>(theirs - lines.begin());
}

const desk::JobLine* JobList::chosenLine() const {
    // The list may have a current line that nobody chose: where the keyboard came in.
    const QModelIndexList selected = m_list->selectionModel()->selectedIndexes();
    return selected.isEmpty() ? nullptr : &m_lines.at(selected.front().row());
}

std::optional<JobId> JobList::chosen() const {
    const auto* line = chosenLine();
    return line == nullptr ? std::nullopt : std::optional(line->id);
}

void JobList::enter() {
    if (const auto job = chosen()) {
        m_beginning = false;
        Q_EMIT entered(*job);
    }
}

void JobList::chooseTag(std::int64_t number) {
    const auto& lines = m_lines.rows();
    const auto line = std::ranges::find(lines, number, &desk::JobLine::number);
    if (line == lines.end()) {
        chooseNone(); // Enter must not act on the one before
        Q_EMIT tagNotHere(number);
        return;
    }
    m_list->setCurrentIndex(m_lines.index(static_cast<int>(line - lines.begin()), 0));
}

bool JobList::takeTag(const QKeyEvent& key) {
    const bool isTags = m_tag.take(key);
    m_keys->setText(m_tag.digits().isEmpty() ? m_keyWords : tagTypedText(m_tag.digits()));
    if (const auto number = m_tag.finished()) {
        chooseTag(*number);
    }
    return isTags;
}

bool JobList::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_list && event->type() == QEvent::Resize) {
        // A question below takes room from the list: what it is about stays in view.
        QMetaObject::invokeMethod(
            this, [this] { m_list->scrollTo(m_list->currentIndex()); }, Qt::QueuedConnection);
    }
    if (watched != m_list || event->type() != QEvent::KeyPress) {
        return QWidget::eventFilter(watched, event);
    }
    const auto* key = static_cast<QKeyEvent*>(event);
    m_beginning = false;
    if (takeTag(*key)) {
        return true;
    }
    if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
        if (!key->isAutoRepeat()) {
            enter();
        }
        return true;
    }
    const bool letter = key->key() >= Qt::Key_A && key->key() <= Qt::Key_Z && key->modifiers() == Qt::NoModifier;
    if (letter && !key->isAutoRepeat() && chosenLine() != nullptr) {
        Q_EMIT typed(key->key());
    }
    return letter || QWidget::eventFilter(watched, event);
}

} // namespace rw::ui
