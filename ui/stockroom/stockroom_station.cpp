// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stockroom/stockroom_station.h"

#include "ui/presenter/stockroom_presenter.h"
#include "ui/stockroom/correct_strip.h"
#include "ui/stockroom/life_strip.h"
#include "ui/stockroom/receive_strip.h"
#include "ui/stockroom/shelf_view.h"
#include "ui/stockroom/string_strip.h"
#include "ui/text/format.h"
#include "ui/text/lot_words.h"
#include "ui/text/sentences.h"
#include "ui/widgets/look.h"

#include <QItemSelectionModel>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace rw::ui {

StockroomStation::StockroomStation(DeskRunner& runner, Shift& shift, QWidget* parent)
    : Station(parent)
    , m_shift(shift)
    , m_presenter(std::make_unique<StockroomPresenter>(runner, shift))
    , m_short(new QLabel(this))
    , m_empty(new QLabel(this))
    , m_view(new ShelfView(&m_shelf, this))
    , m_strip(new QStackedWidget(this))
    , m_life(new LifeStrip(shift, m_strip))
    , m_receive(new ReceiveStrip(m_strip))
    , m_correct(new CorrectStrip(m_strip))
    , m_string(new StringStrip(m_strip)) {
    build();
    makeKeys();
    connectPresenter();
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
    for (QWidget* strip : QList<QWidget*>{m_life, m_receive, m_correct, m_string}) {
        m_strip->addWidget(strip);
    }
    m_strip->setFixedHeight(176);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    layout->addWidget(m_short);
    layout->addWidget(m_empty, 1);
    layout->addWidget(m_view, 1);
    layout->addWidget(m_strip);
}

void StockroomStation::makeKeys() {
    m_correctKey = addKey(tr("&Correct a reel"), {QKeySequence(Qt::Key_C)}, [this] { openCorrect(); });
    m_receiveKey = addKey(tr("&Receive string"), {QKeySequence(Qt::Key_R)}, [this] { openReceive(); });
    m_newKey = addKey(tr("A &new string"), {QKeySequence(Qt::Key_N)}, [this] { openNewString(); });
    m_editKey = addKey(tr("&Edit a string"), {QKeySequence(Qt::Key_E)}, [this] { openString(); });
    m_confirmKey =
        addCommand(tr("C&onfirm"), {QKeySequence(Qt::Key_Return), QKeySequence(Qt::Key_Enter)}, [this] { confirm(); });
    m_backKey = addKey(tr("&Back"), {QKeySequence(Qt::Key_Escape)}, [this] { closeStrip(); });
    enableKeys();
}

void StockroomStation::connectPresenter() {
    auto* presenter = m_presenter.get();
    connect(presenter, &StockroomPresenter::shelfChanged, this, &StockroomStation::showShelf);
    connect(presenter, &StockroomPresenter::lifeChanged, this, &StockroomStation::showLife);
    connect(presenter, &StockroomPresenter::received, this, [this](const Lot& lot) {
        closeStrip();
        m_presenter->select(lot.id);
        Q_EMIT said(receivedText(lot));
    });
    connect(presenter, &StockroomPresenter::corrected, this, [this](const Lot& lot, Length by) {
        closeStrip();
        Q_EMIT said(correctedText(lot, by));
    });
    connect(presenter, &StockroomPresenter::stringAdded, this, [this](const StringArticle& article) {
        closeStrip();
        m_view->setCurrentIndex(m_shelf.indexOf(*article.id)); // R receives a reel of just this one
        Q_EMIT said(tr("%1 is on the list. R receives a reel of it.").arg(articleTitle(article)));
    });
    connect(presenter, &StockroomPresenter::stringRead, this, [this](const desk::SoldString& string) {
        if (m_strip->currentWidget() == m_life) {
            open(m_string);
            m_string->startWith(string, m_shift.shop().currency);
        }
    });
    connect(presenter, &StockroomPresenter::stringChanged, this, [this](const StringArticle& article) {
        closeStrip();
        Q_EMIT said(tr("%1 is kept; its prices hold from today.").arg(articleTitle(article)));
    });
    connect(presenter, &StockroomPresenter::refused, this, [this](const Refusal& why) {
        if (m_strip->currentWidget() == m_receive) {
            m_receive->showRefusal(why);
        } else if (m_strip->currentWidget() == m_correct) {
            m_correct->showRefusal(why);
        } else if (m_strip->currentWidget() == m_string) {
            m_string->showRefusal(why);
        } else {
            Q_EMIT said(sentenceFor(why));
        }
    });
    connect(m_view->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& current) {
        if (!m_filling) {
            const auto* lot = m_shelf.lotAt(current);
            m_presenter->select(lot != nullptr ? lot->lot.id : std::nullopt);
        }
    });
}

void StockroomStation::enter() {
    refresh();
    if (m_strip->currentWidget() == m_life) {
        m_view->setFocus(Qt::OtherFocusReason);
    }
}

void StockroomStation::refresh() { m_presenter->refresh(); }

void StockroomStation::showShelf() {
    m_filling = true;
    const QModelIndex before = m_view->currentIndex();
    const int row = before.isValid() ? before.row() : 0;
    m_shelf.setShelf(m_presenter->shelf());
    const bool empty = m_presenter->shelf().empty();
    m_view->setVisible(!empty);
    m_empty->setVisible(empty);
    m_empty->setText(m_presenter->isLoaded() ? tr("The shop has no string yet.\nN adds one, R receives a reel of it.")
                                             : QString());
    const QString runningShort = shelfRunningShortText(m_presenter->shelf());
    m_short->setText(runningShort);
    m_short->setVisible(!runningShort.isEmpty());
    if (m_presenter->selected()) {
        m_view->setCurrentLot(*m_presenter->selected());
    } else if (!empty) {
        const int there = std::min(row, m_shelf.rowCount() - 1);
        m_view->setCurrentIndex(m_shelf.index(there, m_shelf.stringAt(there).lots.empty() ? 0 : 1));
    }
    m_filling = false;
    if (!m_presenter->selected()) {
        const auto lot = currentLot();
        m_presenter->select(lot ? lot->lot.id : std::nullopt);
    }
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
    m_life->show(currentLot(), m_presenter->life(),
                 m_shelf.rowCount() == 0 ? QString()
                                         : tr("The arrow keys go from reel to reel. R receives a new one."));
    enableKeys();
}

void StockroomStation::openReceive() {
    open(m_receive);
    m_receive->start(m_presenter->shelf(), currentString(), m_shift.shop().currency);
}

void StockroomStation::openCorrect() {
    if (const auto lot = currentLot()) {
        open(m_correct);
        m_correct->start(lot->lot);
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

void StockroomStation::open(QWidget* strip) {
    m_strip->setCurrentWidget(strip);
    enableKeys();
}

void StockroomStation::enableKeys() {
    const bool writing = m_strip->currentWidget() != m_life;
    m_confirmKey->setEnabled(writing);
    m_backKey->setEnabled(writing);
    m_receiveKey->setEnabled(!writing);
    m_newKey->setEnabled(!writing);
    m_editKey->setEnabled(!writing && currentString().has_value());
    m_correctKey->setEnabled(!writing && currentLot().has_value());
    Q_EMIT keysChanged();
}

void StockroomStation::closeStrip() {
    open(m_life);
    m_view->setFocus(Qt::OtherFocusReason);
}

void StockroomStation::confirm() {
    if (m_strip->currentWidget() == m_receive) {
        if (const auto receipt = m_receive->receipt()) {
            m_presenter->receive(*receipt);
        }
    } else if (m_strip->currentWidget() == m_correct) {
        if (const auto measured = m_correct->measured()) {
            m_presenter->correct(*m_correct->lot(), *measured);
        }
    } else if (m_strip->currentWidget() == m_string) {
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
