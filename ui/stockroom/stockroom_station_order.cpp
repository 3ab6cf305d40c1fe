// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/order_presenter.h"
#include "ui/presenter/owner_presenter.h"
#include "ui/presenter/stockroom_presenter.h"
#include "ui/stockroom/life_page.h"
#include "ui/stockroom/order_page.h"
#include "ui/stockroom/shelf_view.h"
#include "ui/stockroom/stockroom_station.h"
#include "ui/text/order_words.h"
#include "ui/text/stockroom_words.h"

#include <QClipboard>
#include <QGuiApplication>

// What will become of the strings, and what to order.
namespace rw::ui {

void StockroomStation::connectOrder() {
    auto* order = m_order.get();
    connect(order, &OrderPresenter::draftsChanged, this, [this] {
        m_orderPage->show(m_order->drafts(), m_order->isLoaded());
        enableKeys();
    });
    connect(order, &OrderPresenter::saved, this,
            [this](const QString& folder) { Q_EMIT said(orderSavedText(folder)); });
    connect(order, &OrderPresenter::notSaved, this, &StockroomStation::said);
}

bool StockroomStation::isShopsString() const {
    const QModelIndex current = m_view->currentIndex();
    return current.isValid() && m_shelf.stringAt(current.row()).ahead.has_value();
}

void StockroomStation::lookAhead() {
    if (!isShopsString()) {
        return;
    }
    const QModelIndex current = m_view->currentIndex();
    const bool there = current.column() == 0 && !m_shelf.stringAt(current.row()).lots.empty();
    m_view->setCurrentIndex(m_shelf.index(current.row(), there ? 1 : 0)); // pressed again it goes back to the reels
}

void StockroomStation::openOrder() {
    m_order->refresh();
    open(m_orderPage);
    m_orderPage->enter();
}

void StockroomStation::copy() {
    const bool order = opened() == m_orderPage;
    QGuiApplication::clipboard()->setText(order ? orderLetterText(m_order->drafts()) : m_lifePage->statement());
    Q_EMIT said(order ? orderCopiedText() : statementCopiedText());
}

void StockroomStation::saveOrder() {
    const QString folder = m_outside.folders.chooseFolder(tr("Where to save the order"));
    if (!folder.isEmpty()) {
        m_order->save(folder, m_owner.mayShow());
    }
}

} // namespace rw::ui
