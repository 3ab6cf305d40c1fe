// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/books_station.h"

#include "ui/books/books_page.h"
#include "ui/books/contents_list.h"
#include "ui/books/earned_page.h"
#include "ui/books/export_page.h"
#include "ui/books/frames_page.h"
#include "ui/books/machines_page.h"
#include "ui/books/open_page.h"
#include "ui/books/people_page.h"
#include "ui/books/pin_page.h"
#include "ui/books/prices_page.h"
#include "ui/books/shop_page.h"
#include "ui/books/takings_page.h"
#include "ui/presenter/owner_presenter.h"

#include <QApplication>
#include <QHBoxLayout>

namespace rw::ui {

namespace {
/// What stands under `ancestor` by parentage, popups too.
bool belongsTo(const QObject* ancestor, const QObject* object) {
    while (object != nullptr && object != ancestor) {
        object = object->parent();
    }
    return object != nullptr;
}
} // namespace

BooksStation::BooksStation(DeskRunner& runner, Shift& shift, OwnerPresenter& owner, const Outside& outside,
                           QWidget* parent)
    : Station(parent)
    , m_owner(owner)
    , m_contents(new ContentsList(this))
    , m_pages(new QStackedWidget(this)) {
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(14);
    layout->addWidget(m_contents);
    layout->addWidget(m_pages, 1);
    makeKeys();

    addPage(new OpenPage(runner, shift, m_pages));
    addPage(new TakingsPage(runner, shift, m_pages));
    addPage(new EarnedPage(runner, shift, owner, m_pages));
    addPage(new ExportPage(runner, shift, owner, outside, m_pages));
    addPage(new PinPage(owner, m_pages));
    addPage(new PricesPage(runner, shift, owner, m_pages));
    addPage(new PeoplePage(runner, shift, m_pages));
    addPage(new MachinesPage(runner, shift, m_pages));
    addPage(new FramesPage(runner, shift, m_pages));
    addPage(new ShopPage(runner, shift, m_pages));

    m_contents->setCurrentRow(0);
    connect(m_contents, &QListWidget::currentRowChanged, this, [this](int row) {
        page()->leave();
        m_pages->setCurrentIndex(row);
        page()->refresh();
        Q_EMIT keysChanged();
    });
    connect(m_contents, &QListWidget::itemClicked, this, [this] { setInside(false); });
    connect(qApp, &QApplication::focusChanged, this, [this](const QWidget*, const QWidget* now) {
        if (belongsTo(m_contents, now)) {
            setInside(false);
        } else if (belongsTo(m_pages, now)) {
            setInside(true);
        }
    });
}

void BooksStation::addPage(BooksPage* page) {
    m_all << page;
    m_pages->addWidget(page);
    m_contents->addItem(page->name());
    connect(page, &Workplace::said, this, &Workplace::said);
    connect(page, &Workplace::keysChanged, this, &Workplace::keysChanged);
    connect(page, &BooksPage::historyWanted, this, &BooksStation::historyWanted);
    connect(page, &Workplace::wanted, this, [this, page] {
        open(page, true);
        if (!isVisible()) {
            Q_EMIT wanted();
        }
    });
}

void BooksStation::makeKeys() {
    m_intoKey = addKey(tr("&Into the page"),
                       {QKeySequence(Qt::Key_Return), QKeySequence(Qt::Key_Enter), QKeySequence(Qt::Key_Right)},
                       [this] { open(page(), true); });
    m_backKey = addKey(tr("&Back"), {QKeySequence(Qt::Key_Escape)}, [this] { back(); });
    addKey(tr("&Next page"), {QKeySequence(Qt::CTRL | Qt::Key_PageDown)}, [this] { turn(1); });
    addKey(tr("&Previous page"), {QKeySequence(Qt::CTRL | Qt::Key_PageUp)}, [this] { turn(-1); });
    m_hideKey =
        addKey(tr("&Hide what the shop paid"), {QKeySequence(Qt::CTRL | Qt::Key_H)}, [this] { m_owner.hide(); });
    m_backKey->setEnabled(false);
    const auto enableHiding = [this] {
        m_hideKey->setEnabled(m_owner.hasPin() && m_owner.mayShow());
        Q_EMIT keysChanged();
    };
    connect(&m_owner, &OwnerPresenter::changed, this, enableHiding);
    enableHiding();
}

void BooksStation::fillMenu(QMenu& menu) const {
    Station::fillMenu(menu);
    menu.addSeparator();
    for (const auto* page : m_all) {
        menu.addMenu(page->name())->addActions(page->keys());
    }
}

QList<QAction*> BooksStation::keysInView() const { return m_inside ? page()->keys() + keys() : keys(); }

BooksPage* BooksStation::page() const { return m_all[m_pages->currentIndex()]; }

void BooksStation::enter() {
    m_owner.refresh();
    page()->refresh();
    putKeyboard();
}

void BooksStation::refresh() { page()->refresh(); }

void BooksStation::open(BooksPage* page, bool inside) {
    m_contents->setCurrentRow(static_cast<int>(m_all.indexOf(page)));
    setInside(inside);
    putKeyboard();
}

void BooksStation::putKeyboard() {
    if (m_inside) {
        page()->enter();
    } else {
        m_contents->setFocus(Qt::OtherFocusReason);
    }
}

void BooksStation::back() {
    if (!page()->back()) {
        open(page(), false);
    }
}

void BooksStation::turn(int by) {
    const auto pages = m_all.size();
    open(m_all[(m_pages->currentIndex() + by + pages) % pages], m_inside);
}

void BooksStation::setInside(bool inside) {
    if (m_inside != inside) {
        m_inside = inside;
        m_intoKey->setEnabled(!inside);
        m_backKey->setEnabled(inside);
        Q_EMIT keysChanged();
    }
}

void BooksStation::leave() {
    page()->leave();
    m_owner.hide();
}

} // namespace rw::ui
