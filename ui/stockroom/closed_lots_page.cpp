// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stockroom/closed_lots_page.h"

#include "ui/text/stockroom_words.h"
#include "ui/widgets/look.h"
#include "ui/widgets/row_delegate.h"

#include <QItemSelectionModel>
#include <QVBoxLayout>

#include <algorithm>

namespace rw::ui {

ClosedLotsPage::ClosedLotsPage(QWidget* parent)
    : QWidget(parent)
    , m_title(new QLabel(this))
    , m_empty(new QLabel(this))
    , m_list(new QListView(this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    layout->addWidget(m_title);
    layout->addWidget(m_empty);
    layout->addWidget(m_list, 1);
    layout->addStretch();
    m_title->setFont(largeFont(*this, 1.5));
    m_empty->setWordWrap(true);
    m_list->setModel(&m_lots);
    m_list->setItemDelegate(new RowDelegate(m_list));
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    for (QWidget* place : QList<QWidget*>{this, m_list}) {
        place->setAccessibleName(tr("Lots that are gone")); // until the string is known
    }
    setFocusPolicy(Qt::ClickFocus); // while there is no list the keys around it work all the same
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, &ClosedLotsPage::moved);
}

void ClosedLotsPage::start(const QString& string) {
    m_title->setText(closedLotsTitle(string));
    m_list->setAccessibleName(m_title->text());
    setAccessibleName(m_title->text());
    m_lots.setRows({});
    m_empty->clear();
    m_list->hide();
    setFocus(Qt::OtherFocusReason);
}

void ClosedLotsPage::show(const std::vector<desk::ClosedLot>& lots, const QTimeZone& zone) {
    const auto before = chosen();
    const bool keyboardHere = hasFocus() || m_list->hasFocus();
    m_lots.setZone(zone);
    m_lots.setRows(lots);
    m_empty->setText(lots.empty() ? nothingClosedText() : QString());
    m_empty->setVisible(lots.empty());
    m_list->setVisible(!lots.empty());
    if (!lots.empty()) {
        m_list->setCurrentIndex(m_lots.index(before ? std::max(0, m_lots.rowOf(*before)) : 0, 0));
    }
    if (keyboardHere) {
        enter();
    }
    Q_EMIT moved();
}

void ClosedLotsPage::enter() {
    QWidget* const place = m_list->isHidden() ? static_cast<QWidget*>(this) : m_list;
    place->setFocus(Qt::OtherFocusReason);
}

std::optional<LotId> ClosedLotsPage::chosen() const {
    const QModelIndex current = m_list->currentIndex();
    return current.isValid() ? m_lots.at(current.row()).lot.id : std::nullopt;
}

} // namespace rw::ui
