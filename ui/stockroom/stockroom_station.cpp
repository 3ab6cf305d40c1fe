// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stockroom/stockroom_station.h"

#include "ui/presenter/order_presenter.h"
#include "ui/presenter/owner_presenter.h"
#include "ui/presenter/stockroom_presenter.h"
#include "ui/presenter/weigh_in_presenter.h"
#include "ui/stockroom/closed_lots_page.h"
#include "ui/stockroom/correct_strip.h"
#include "ui/stockroom/delivery_sheet.h"
#include "ui/stockroom/keep_strip.h"
#include "ui/stockroom/life_page.h"
#include "ui/stockroom/life_strip.h"
#include "ui/stockroom/order_page.h"
#include "ui/stockroom/shelf_view.h"
#include "ui/stockroom/string_strip.h"
#include "ui/stockroom/take_off_strip.h"
#include "ui/stockroom/weigh_in_page.h"
#include "ui/text/ahead_words.h"
#include "ui/text/format.h"
#include "ui/text/lot_words.h"
#include "ui/text/sentences.h"
#include "ui/text/stockroom_words.h"
#include "ui/text/weigh_words.h"
#include "ui/widgets/look.h"
#include "ui/widgets/pin_sheet.h"

#include <QItemSelectionModel>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace rw::ui {

namespace {
constexpr int kLowStrip = 176; ///< leaves room for four boards
constexpr int kHighStrip = 196;
} // namespace

StockroomStation::StockroomStation(DeskRunner& runner, Shift& shift, OwnerPresenter& owner, const Outside& outside,
                                   QWidget* parent)
    : Station(parent)
    , m_shift(shift)
    , m_owner(owner)
    , m_outside(outside)
    , m_presenter(std::make_unique<StockroomPresenter>(runner, shift))
    , m_order(std::make_unique<OrderPresenter>(runner, shift, outside.tables))
    , m_weighing(std::make_unique<WeighInPresenter>(runner, shift))
    , m_pages(new QStackedWidget(this))
    , m_shelfPage(new QWidget(m_pages))
    , m_short(new QLabel(m_shelfPage))
    , m_empty(new QLabel(m_shelfPage))
    , m_view(new ShelfView(&m_shelf, m_shelfPage))
    , m_strip(new QStackedWidget(m_shelfPage))
    , m_life(new LifeStrip(shift, m_strip))
    , m_correct(new CorrectStrip(m_strip))
    , m_takeOff(new TakeOffStrip(m_strip))
    , m_keep(new KeepStrip(runner, shift, m_strip))
    , m_string(new StringStrip(m_strip))
    , m_pin(new PinSheet(m_strip))
    , m_delivery(new DeliverySheet(m_pages))
    , m_lifePage(new LifePage(shift, m_pages))
    , m_weighIn(new WeighInPage(shift, m_pages))
    , m_orderPage(new OrderPage(m_pages))
    , m_closed(new ClosedLotsPage(m_pages)) {
    build();
    makeKeys();
    connectShelf();
    connectLots();
    connectStrings();
    connectOrder();
    connectOwner();
    connectWeighIn();
    showShelf();
}

StockroomStation::~StockroomStation() = default;

void StockroomStation::build() {
    QFont bold = largeFont(*this, 1.15);
    bold.setBold(true);
    m_short->setFont(bold);
    m_short->setAccessibleName(tr("What runs short"));
    m_short->setWordWrap(true);
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setWordWrap(true);
    m_empty->setFont(largeFont(*this, 1.3));
    m_empty->setAutoFillBackground(true);
    m_empty->setBackgroundRole(QPalette::Base);
    for (QWidget* strip : QList<QWidget*>{m_life, m_correct, m_takeOff, m_keep, m_string, m_pin}) {
        m_strip->addWidget(strip);
    }
    m_strip->setFixedHeight(kLowStrip);
    auto* shelf = new QVBoxLayout(m_shelfPage);
    shelf->setContentsMargins(0, 0, 0, 0);
    shelf->setSpacing(10);
    shelf->addWidget(m_short);
    shelf->addWidget(m_empty, 1);
    shelf->addWidget(m_view, 1);
    shelf->addWidget(m_strip);
    for (QWidget* page :
         QList<QWidget*>{m_shelfPage, m_delivery, m_lifePage, m_orderPage, m_weighIn, m_closed}) {
        m_pages->addWidget(page);
    }
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_pages);
}

void StockroomStation::makeKeys() {
    const QList<QKeySequence> enter{QKeySequence(Qt::Key_Return), QKeySequence(Qt::Key_Enter)};
    m_receiveKey = addKey(tr("&Receive string"), {QKeySequence(Qt::Key_R)}, [this] { openReceive(); });
    m_lifeKey = addKey(tr("Its &whole life"), enter, [this] { openLife(); });
    m_aheadKey = addKey(tr("Forec&ast"), {QKeySequence(Qt::Key_F)}, [this] { lookAhead(); });
    m_closedKey = addKey(tr("&Gone lots of it"), {QKeySequence(Qt::Key_G)}, [this] { openClosed(); });
    m_correctKey = addKey(tr("&Correct a reel"), {QKeySequence(Qt::Key_C)}, [this] { openCorrect(); });
    m_takeOffKey = addKey(tr("&Throw away or give back"), {QKeySequence(Qt::Key_T)}, [this] { openTakeOff(); });
    m_keepKey = addKey(tr("&Keep a customer's reel"), {QKeySequence(Qt::Key_K)}, [this] { openKeep(); });
    m_orderKey = addKey(tr("What to &order"), {QKeySequence(Qt::Key_O)}, [this] { openOrder(); });
    m_newKey = addKey(tr("A &new string"), {QKeySequence(Qt::Key_N)}, [this] { openNewString(); });
    m_editKey = addKey(tr("&Edit a string"), {QKeySequence(Qt::Key_E)}, [this] { openString(); });
    m_weighKey = addKey(tr("We&igh-in"), {QKeySequence(Qt::Key_W)}, [this] { openWeighIn(); });
    m_bookKey = addCommand(tr("Book it a&s weighed"), {QKeySequence(Qt::Key_B)}, [this] {
        if (const auto* line = m_weighIn->current()) {
            m_weighing->book(*line->weighing.id);
        }
    });
    m_printKey = addKey(tr("&Print the stock-take"), {QKeySequence(Qt::Key_P)},
                        [this] { Q_EMIT sheetWanted(m_weighing->sheet()); });
    m_endKey = addCommand(tr("&Done: end the stock-take"), {QKeySequence(Qt::Key_D)}, [this] { m_weighing->end(); });
    m_takeBackKey =
        addCommand(tr("Take back the &last step"), {QKeySequence(Qt::CTRL | Qt::Key_Z)}, [this] { takeBack(); });
    m_copyKey = addKey(tr("Cop&y what stands there"), {QKeySequence(Qt::CTRL | Qt::Key_C)}, [this] { copy(); });
    m_saveKey = addKey(tr("Sa&ve the order as a file"), {QKeySequence(Qt::CTRL | Qt::Key_E)}, [this] { saveOrder(); });
    m_paidKey =
        addKey(tr("S&how or hide what was paid"), {QKeySequence(Qt::CTRL | Qt::Key_H)}, [this] { showOrHidePaid(); });
    m_confirmKey = addCommand(tr("Con&firm"), enter, [this] { confirm(); });
    m_backKey = addKey(tr("&Back"), {QKeySequence(Qt::Key_Escape)}, [this] { goBack(); });
    enableKeys();
}

void StockroomStation::connectShelf() {
    auto* presenter = m_presenter.get();
    connect(presenter, &StockroomPresenter::shelfChanged, this, &StockroomStation::showShelf);
    connect(presenter, &StockroomPresenter::lifeChanged, this, &StockroomStation::showLife);
    connect(presenter, &StockroomPresenter::refused, this, &StockroomStation::showRefusal);
    connect(m_view->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& current) {
        if (!m_filling) {
            const auto* lot = m_shelf.lotAt(current);
            m_presenter->select(lot != nullptr ? lot->lot.id : std::nullopt);
            if (lot == nullptr) {
                showLife(); // from one string to another no lot changes
            } else {
                enableKeys(); // at once: a key that is pressed before the life is read is meant for this lot
            }
        }
    });
    connect(m_view, &QAbstractItemView::doubleClicked, this, &StockroomStation::openLife);
    connect(m_closed->list(), &QAbstractItemView::doubleClicked, this, &StockroomStation::openLife);
    connect(m_closed, &ClosedLotsPage::moved, this, &StockroomStation::enableKeys);
    connect(presenter, &StockroomPresenter::closedChanged, this,
            [this] { m_closed->show(m_presenter->closed(), m_shift.zone()); });
    connect(presenter, &StockroomPresenter::closedLifeRead, this, [this](const desk::LotLife& life) {
        if (opened() == m_closed) {
            m_lifePage->show(life);
            open(m_lifePage);
            m_lifePage->enter();
        }
    });
    connect(m_delivery, &DeliverySheet::linesChanged, this, [this] { m_presenter->proposeTags(m_delivery->sketch()); });
    connect(presenter, &StockroomPresenter::tagsProposed, m_delivery, &DeliverySheet::setTags);
    connect(presenter, &StockroomPresenter::suppliersRead, m_delivery, &DeliverySheet::setSuppliers);
}

void StockroomStation::connectLots() {
    auto* presenter = m_presenter.get();
    connect(presenter, &StockroomPresenter::delivered, this, [this](const std::vector<Lot>& lots) {
        backToShelf();
        m_presenter->select(lots.front().id);
        Q_EMIT said(deliveredText(lots));
    });
    connect(presenter, &StockroomPresenter::received, this, [this](const Lot& lot) {
        backToShelf();
        m_presenter->select(lot.id);
        Q_EMIT said(lot.owner ? keptForText(lot, m_keep->owner()) : receivedText(lot));
    });
    connect(presenter, &StockroomPresenter::corrected, this, [this](const Lot& lot, Length by) {
        backToShelf();
        Q_EMIT said(correctedText(lot, by));
    });
    connect(presenter, &StockroomPresenter::tookOff, this, [this](const Lot& lot, desk::LotLeaves how) {
        const auto* there = m_shelf.lotAt(m_shelf.indexOf(*lot.id)); // as it was until now
        const Length gone = there != nullptr ? there->lot.length : Length::fromMillimetres(0);
        backToShelf();
        m_presenter->select(std::nullopt);
        Q_EMIT said(tookOffText(lot, gone, how));
    });
    connect(presenter, &StockroomPresenter::tookBack, this, [this](const std::vector<Lot>& lots) {
        enableKeys();
        if (lots.front().isOpen()) {
            m_presenter->select(lots.front().id);
        }
        Q_EMIT said(tookBackText(lots));
    });
}

void StockroomStation::connectStrings() {
    auto* presenter = m_presenter.get();
    connect(presenter, &StockroomPresenter::stringAdded, this, [this](const StringArticle& article) {
        backToShelf();
        m_view->setCurrentIndex(m_shelf.indexOf(*article.id)); // R receives a reel of just this one
        Q_EMIT said(stringAddedText(articleTitle(article)));
    });
    connect(presenter, &StockroomPresenter::stringRead, this, [this](const desk::SoldString& string) {
        if (opened() == m_life) {
            open(m_string);
            m_string->startWith(string, m_shift.shop().currency);
        }
    });
    connect(presenter, &StockroomPresenter::stringChanged, this, [this](const StringArticle& article) {
        backToShelf();
        Q_EMIT said(stringKeptText(articleTitle(article)));
    });
}

void StockroomStation::connectOwner() {
    connect(&m_owner, &OwnerPresenter::changed, this, [this] {
        m_lifePage->setShowsPaid(m_owner.mayShow());
        m_orderPage->setShowsPaid(m_owner.mayShow());
        if (opened() == m_pin && m_owner.mayShow()) {
            backToShelf();
            m_paidOfOrder ? openOrder() : openLife(); // where it stands now
        }
        enableKeys();
    });
    connect(&m_owner, &OwnerPresenter::wrongPin, this, [this] {
        if (isVisible() && opened() == m_pin) {
            m_pin->showWrong();
        }
    });
    m_lifePage->setShowsPaid(m_owner.mayShow());
    m_orderPage->setShowsPaid(m_owner.mayShow());
}

void StockroomStation::connectWeighIn() {
    auto* presenter = m_weighing.get();
    connect(presenter, &WeighInPresenter::sheetChanged, this, [this] {
        m_weighIn->show(m_weighing->sheet());
        enableKeys();
    });
    connect(presenter, &WeighInPresenter::weighed, m_weighIn, &WeighInPage::showWeighed);
    connect(presenter, &WeighInPresenter::refused, m_weighIn, &WeighInPage::showRefusal);
    connect(presenter, &WeighInPresenter::booked, this,
            [this](const desk::WeighIn& in) { Q_EMIT said(weighBookedText(in)); });
    connect(presenter, &WeighInPresenter::tookBack, this,
            [this](const std::vector<Lot>& lots) { Q_EMIT said(tookBackText(lots)); });
    connect(presenter, &WeighInPresenter::ended, this, [this] { Q_EMIT said(stockTakeEndedText()); });
    connect(m_weighIn, &WeighInPage::lineChanged, this, &StockroomStation::enableKeys);
}

void StockroomStation::takeBack() {
    if (opened() == m_weighIn) {
        m_weighing->takeBack();
    } else {
        m_presenter->takeBack();
    }
}

void StockroomStation::openWeighIn() {
    open(m_weighIn);
    m_weighing->start();
    m_weighIn->start({});
}

void StockroomStation::showOrHidePaid() {
    if (m_owner.isLocked()) {
        m_paidOfOrder = opened() == m_orderPage;
        open(m_pin);
        m_pin->start();
    } else {
        m_owner.hide();
    }
}

void StockroomStation::showRefusal(const Refusal& why) {
    QWidget* const there = opened();
    if (there == m_delivery) {
        m_delivery->showRefusal(why);
    } else if (there == m_correct) {
        m_correct->showRefusal(why);
    } else if (there == m_takeOff) {
        m_takeOff->showRefusal(why);
    } else if (there == m_keep) {
        m_keep->showRefusal(why);
    } else if (there == m_string) {
        m_string->showRefusal(why);
    } else {
        Q_EMIT said(sentenceFor(why));
    }
}

void StockroomStation::enter() {
    m_owner.refresh();
    refresh();
    if (opened() == m_life) {
        m_view->setFocus(Qt::OtherFocusReason);
    } else if (opened() == m_lifePage) {
        m_lifePage->enter();
    } else if (opened() == m_orderPage) {
        m_orderPage->enter();
    } else if (opened() == m_closed) {
        m_closed->enter();
    }
}

void StockroomStation::refresh() {
    m_presenter->refresh();
    if (opened() == m_weighIn) {
        m_weighing->refresh();
    }
    if (opened() == m_orderPage) {
        m_order->refresh();
    }
}

void StockroomStation::leave() { m_owner.hide(); }

void StockroomStation::showShelf() {
    m_filling = true;
    const QModelIndex before = m_view->currentIndex();
    const int row = before.isValid() ? before.row() : 0;
    const auto stringBefore = isShopsString() ? currentString() : std::nullopt;
    std::vector<desk::ShelfString> boards = m_presenter->shelf();
    boards.insert(boards.end(), m_presenter->kept().begin(), m_presenter->kept().end());
    const bool empty = boards.empty();
    m_shelf.setShelf(std::move(boards));
    m_view->setVisible(!empty);
    m_empty->setVisible(empty);
    m_empty->setText(m_presenter->isLoaded() ? emptyShelfText() : QString());
    const QString runningShort = orderNowText(m_presenter->shelf());
    m_short->setText(runningShort);
    m_short->setVisible(!runningShort.isEmpty());
    const auto& selected = m_presenter->selected();
    if (selected && m_shelf.indexOf(*selected).isValid()) {
        m_view->setCurrentLot(*selected);
    } else if (!empty) {
        // What runs short may stand somewhere else now.
        const QModelIndex same = stringBefore ? m_shelf.indexOf(*stringBefore) : QModelIndex();
        const int there = same.isValid() ? same.row() : std::min(row, m_shelf.rowCount() - 1);
        const auto& string = m_shelf.stringAt(there);
        const bool stays = before.isValid() && before.column() == 0;
        m_view->setCurrentIndex(m_shelf.index(there, stays || string.runningShort() || string.lots.empty() ? 0 : 1));
    }
    m_filling = false;
    const auto lot = currentLot();
    m_presenter->select(lot ? lot->lot.id : std::nullopt);
    showLife();
}

std::optional<desk::ShelfLot> StockroomStation::currentLot() const {
    const auto* lot = m_shelf.lotAt(m_view->currentIndex());
    return lot != nullptr ? std::optional(*lot) : std::nullopt;
}

std::optional<StringArticleId> StockroomStation::currentString() const {
    const QModelIndex current = m_view->currentIndex();
    return current.isValid() ? m_shelf.stringAt(current.row()).article.id : std::nullopt;
}

void StockroomStation::showLife() {
    const QModelIndex current = m_view->currentIndex();
    const auto lot = currentLot();
    if (!lot && isShopsString()) {
        m_life->showAhead(m_shelf.stringAt(current.row()));
    } else {
        m_life->show(lot, m_presenter->life(), m_shelf.rowCount() == 0 ? QString() : shelfHintText());
    }
    if (m_presenter->life() && !m_amongClosed) {
        m_lifePage->show(m_presenter->life());
    }
    enableKeys();
}

void StockroomStation::openReceive() {
    open(m_delivery);
    m_presenter->readSuppliers();
    m_delivery->start(m_presenter->shelf(), currentString(), m_shift.shop().currency);
}

void StockroomStation::openCorrect() {
    if (const auto lot = currentLot()) {
        open(m_correct);
        m_correct->start(lot->lot);
    }
}

void StockroomStation::openTakeOff() {
    if (const auto lot = currentLot()) {
        open(m_takeOff);
        const bool end = lot->packets == 0 && !lot->lot.isUntouched();
        m_takeOff->start(lot->lot, end && lot->whole.jobs == 0);
    }
}

void StockroomStation::openKeep() {
    open(m_keep);
    m_keep->start(m_presenter->shelf(), currentString());
}

void StockroomStation::openClosed() {
    const QModelIndex current = m_view->currentIndex();
    if (current.isValid()) {
        const StringArticle& article = m_shelf.stringAt(current.row()).article;
        m_amongClosed = true;
        open(m_closed);
        m_closed->start(articleTitle(article));
        m_presenter->lookAtClosed(*article.id);
    }
}

void StockroomStation::openLife() {
    if (opened() == m_closed) {
        if (const auto lot = m_closed->chosen()) {
            m_presenter->openClosed(*lot);
        }
    } else if (currentLot()) {
        open(m_lifePage);
        m_lifePage->enter();
    }
}

void StockroomStation::openNewString() {
    const QModelIndex current = m_view->currentIndex();
    const Sport sport = current.isValid() ? m_shelf.stringAt(current.row()).article.sport : Sport::Tennis;
    open(m_string);
    m_string->startNew(sport, m_shift.shop().currency);
}

void StockroomStation::openString() {
    if (const auto string = currentString()) {
        m_presenter->readString(*string);
    }
}

QWidget* StockroomStation::opened() const {
    return m_pages->currentWidget() == m_shelfPage ? m_strip->currentWidget() : m_pages->currentWidget();
}

void StockroomStation::open(QWidget* what) {
    if (what == m_delivery || what == m_lifePage || what == m_weighIn || what == m_orderPage || what == m_closed) {
        m_pages->setCurrentWidget(what);
    } else {
        m_strip->setCurrentWidget(what);
        m_strip->setFixedHeight(what == m_string ? kHighStrip : kLowStrip);
        m_pages->setCurrentWidget(m_shelfPage);
    }
    enableKeys();
}

void StockroomStation::enableKeys() {
    const QWidget* const there = opened();
    const bool atShelf = there == m_life;
    const bool ofLot = atShelf && currentLot().has_value();
    m_confirmKey->setEnabled(!atShelf && there != m_lifePage && there != m_orderPage && there != m_closed);
    m_backKey->setEnabled(!atShelf);
    m_receiveKey->setEnabled(atShelf);
    m_keepKey->setEnabled(atShelf);
    m_newKey->setEnabled(atShelf);
    m_editKey->setEnabled(atShelf && currentString().has_value());
    m_aheadKey->setEnabled(atShelf && isShopsString());
    m_correctKey->setEnabled(ofLot);
    m_takeOffKey->setEnabled(ofLot);
    m_lifeKey->setEnabled(ofLot || (there == m_closed && m_closed->chosen()));
    m_closedKey->setEnabled(atShelf && currentString().has_value());
    const bool atOrder = there == m_orderPage && !m_orderPage->isEmpty();
    m_orderKey->setEnabled(atShelf);
    m_saveKey->setEnabled(atOrder);
    m_copyKey->setEnabled(there == m_lifePage || atOrder);
    m_paidKey->setEnabled(m_owner.hasPin() && (atShelf || there == m_lifePage || there == m_orderPage));
    const bool weighing = there == m_weighIn;
    const auto* line = m_weighIn->current();
    m_weighKey->setEnabled(atShelf && m_shelf.rowCount() > 0);
    m_bookKey->setEnabled(weighing && line != nullptr && !line->weighing.booked);
    m_endKey->setEnabled(weighing && m_weighing->isGoingOn());
    m_printKey->setEnabled(weighing && !m_weighing->sheet().lines.empty());
    m_takeBackKey->setEnabled((atShelf && m_presenter->canTakeBack()) || (weighing && m_weighing->canTakeBack()));
    Q_EMIT keysChanged();
}

void StockroomStation::goBack() {
    if (m_amongClosed && opened() == m_lifePage) {
        open(m_closed);
        m_closed->enter();
    } else {
        backToShelf();
    }
}

void StockroomStation::backToShelf() {
    if (m_amongClosed) {
        m_amongClosed = false;
        m_presenter->leaveClosed();
        showLife();
    }
    open(m_life);
    m_view->setFocus(Qt::OtherFocusReason);
}

void StockroomStation::confirm() {
    const QWidget* const there = opened();
    if (there == m_delivery) {
        if (const auto parcel = m_delivery->parcel()) {
            m_presenter->receive(*parcel);
        }
    } else if (there == m_keep) {
        if (const auto receipt = m_keep->receipt()) {
            m_presenter->receive(*receipt);
        }
    } else if (there == m_correct) {
        if (const auto measured = m_correct->measured()) {
            m_presenter->correct(*m_correct->lot(), *measured, m_correct->why());
        }
    } else if (there == m_weighIn) {
        if (const auto onScale = m_weighIn->enter()) {
            m_weighing->weigh(*onScale);
        }
    } else if (there == m_pin) {
        m_owner.give(m_pin->take());
    } else if (there == m_takeOff) {
        m_presenter->takeOff(*m_takeOff->lot(), m_takeOff->how(), m_takeOff->why());
    } else if (there == m_string) {
        if (const auto string = m_string->string()) {
            if (string->article.id) {
                m_presenter->changeString(*string);
            } else {
                m_presenter->addString(*string);
            }
        }
    }
}

} // namespace rw::ui
