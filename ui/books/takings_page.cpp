// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/takings_page.h"

#include "ui/books/page_heading.h"
#include "ui/presenter/takings_presenter.h"
#include "ui/text/books_words.h"
#include "ui/text/format.h"
#include "ui/widgets/figures_table.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace rw::ui {

TakingsPage::TakingsPage(DeskRunner& runner, Shift& shift, QWidget* parent)
    : BooksPage(parent)
    , m_presenter(std::make_unique<TakingsPresenter>(runner, shift)) {
    build(m_day, tr("Takings of the day"));
    build(m_month, tr("Takings of the month"));
    auto* accounts = new QHBoxLayout;
    accounts->setSpacing(24);
    for (const Account* account : {&m_day, &m_month}) {
        auto* column = new QVBoxLayout;
        column->setSpacing(8);
        column->addWidget(account->title);
        column->addWidget(account->table, 1);
        accounts->addLayout(column, 1);
    }
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    layout->addWidget(pageHeading(name(), this));
    layout->addLayout(accounts, 1);
    makeKeys();
    connect(m_presenter.get(), &TakingsPresenter::takingsChanged, this, &TakingsPage::showTakings);
}

TakingsPage::~TakingsPage() = default;

void TakingsPage::build(Account& account, const QString& name) {
    account.title = pageWords(this);
    account.title->setFont(largeFont(*this, 1.2));
    account.table = new FiguresTable(&account.figures, 0, name, this);
}

void TakingsPage::makeKeys() {
    addKey(tr("&Day before"), {QKeySequence(Qt::Key_Left)}, [this] { m_presenter->goDays(-1); });
    m_onKey = addKey(tr("Day &after"), {QKeySequence(Qt::Key_Right)}, [this] { m_presenter->goDays(1); });
    addKey(tr("&Month before"), {QKeySequence(Qt::Key_PageUp)}, [this] { m_presenter->goMonths(-1); });
    m_monthOnKey = addKey(tr("Month a&fter"), {QKeySequence(Qt::Key_PageDown)}, [this] { m_presenter->goMonths(1); });
    addKey(tr("&Today"), {QKeySequence(Qt::Key_Home)}, [this] { m_presenter->goToday(); });
}

void TakingsPage::enter() { m_day.table->setFocus(Qt::OtherFocusReason); }

void TakingsPage::refresh() { m_presenter->open(); }

void TakingsPage::leave() { m_presenter->close(); }

void TakingsPage::showTakings() {
    show(m_day, m_presenter->ofDay(), dayText(m_presenter->day()));
    show(m_month, m_presenter->ofMonth(), monthText(m_presenter->day()));
    m_onKey->setEnabled(m_presenter->mayGoOn());
    m_monthOnKey->setEnabled(m_presenter->mayGoOn());
    Q_EMIT keysChanged();
}

void TakingsPage::show(Account& account, const std::optional<desk::Takings>& takings, const QString& title) {
    account.title->setText(title);
    std::vector<FigureRow> rows;
    if (takings) {
        for (const auto& [way, amount] : takings->byWay) {
            rows.push_back({{fromUtf8(way), moneyText(amount)}});
        }
        rows.push_back(
            {{takings->byWay.empty() ? tr("nothing came in") : tr("together"), moneyText(takings->total)}, true});
    }
    account.figures.setFigures({tr("way of payment"), tr("amount")}, 1, std::move(rows));
    account.table->resizeToFigures();
}

} // namespace rw::ui
