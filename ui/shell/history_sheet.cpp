// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/history_sheet.h"

#include "ui/shell/history_delegate.h"
#include "ui/text/sentences.h"
#include "ui/widgets/look.h"

#include <QKeyEvent>
#include <QVBoxLayout>

#include <algorithm>

namespace rw::ui {

HistorySheet::HistorySheet(DeskRunner& runner, Shift& shift, QWidget* parent)
    : QWidget(parent)
    , m_shift(shift)
    , m_presenter(std::make_unique<HistoryPresenter>(runner, shift))
    , m_title(new QLabel(this))
    , m_empty(new QLabel(this))
    , m_list(new QListView(this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(24, 16, 24, 16);
    layout->addWidget(m_title);
    layout->addWidget(m_empty);
    layout->addWidget(m_list, 1);
    m_title->setFont(largeFont(*this, 1.5));
    m_empty->setWordWrap(true);
    m_list->setModel(&m_history);
    m_list->setItemDelegate(new HistoryDelegate(m_list));
    m_list->setAccessibleName(tr("History"));
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    connect(m_presenter.get(), &HistoryPresenter::entriesChanged, this, &HistorySheet::showEntries);
}

void HistorySheet::show(const HistoryOf& of) {
    m_title->setText(tr("History: %1").arg(of.name));
    m_presenter->show(of);
    m_list->setFocus(Qt::OtherFocusReason);
}

void HistorySheet::showEntries() {
    const int row = std::max(0, m_list->currentIndex().row()); // read again, it stays where somebody looks
    m_history.setZone(m_shift.zone());
    m_history.setRows(m_presenter->entries());
    m_empty->setText(m_presenter->refusal()
                         ? QStringLiteral("✕ ") + sentenceFor(*m_presenter->refusal())
                         : tr("Nothing was strung yet. What is logged at the counter is kept here."));
    m_empty->setVisible(m_presenter->isLoaded() && m_presenter->entries().empty());
    if (const int rows = m_history.rowCount(); rows > 0) {
        m_list->setCurrentIndex(m_history.index(std::min(row, rows - 1), 0));
    }
}

void HistorySheet::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT left();
    } else {
        QWidget::keyPressEvent(event);
    }
}

void HistorySheet::paintEvent(QPaintEvent*) { paintPaper(*this); }

} // namespace rw::ui
