// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/earned_page.h"

#include "ui/books/page_heading.h"
#include "ui/presenter/earned_presenter.h"
#include "ui/presenter/owner_presenter.h"
#include "ui/text/books_words.h"
#include "ui/text/format.h"
#include "ui/widgets/figures_table.h"
#include "ui/widgets/pin_sheet.h"

#include <QVBoxLayout>

namespace rw::ui {

namespace {
constexpr int kCustomerColumn = 1;
constexpr int kColumnsOfWords = 3;

QStringList amounts(const Earnings& earnings) {
    return {moneyText(earnings.charged), moneyText(earnings.string), moneyText(earnings.extras),
            moneyText(earnings.margin())};
}
} // namespace

EarnedPage::EarnedPage(DeskRunner& runner, Shift& shift, OwnerPresenter& owner, QWidget* parent)
    : BooksPage(parent)
    , m_owner(owner)
    , m_presenter(std::make_unique<EarnedPresenter>(runner, shift, owner))
    , m_rooms(new QStackedWidget(this))
    , m_pin(new PinSheet)
    , m_room(new QWidget)
    , m_title(pageWords(m_room))
    , m_table(new FiguresTable(&m_figures, kCustomerColumn, name(), m_room))
    , m_beside(pageWords(m_room)) {
    build();
    makeKeys();
    connect(m_presenter.get(), &EarnedPresenter::earnedChanged, this, &EarnedPage::showEarned);
    connect(&owner, &OwnerPresenter::wrongPin, this, [this] {
        if (isVisible() && isLocked()) {
            m_pin->showWrong();
        }
    });
    showEarned();
}

EarnedPage::~EarnedPage() = default;

void EarnedPage::build() {
    auto* locked = new QWidget(m_rooms);
    auto* lockedLayout = new QVBoxLayout(locked);
    lockedLayout->setContentsMargins(0, 0, 0, 0);
    lockedLayout->addWidget(m_pin);
    lockedLayout->addStretch(1);
    m_title->setFont(largeFont(*this, 1.2));
    m_beside->setAccessibleName(tr("Beside the figures"));
    auto* roomLayout = new QVBoxLayout(m_room);
    roomLayout->setContentsMargins(0, 0, 0, 0);
    roomLayout->setSpacing(8);
    roomLayout->addWidget(m_title);
    roomLayout->addWidget(m_table, 1);
    roomLayout->addWidget(m_beside);
    m_rooms->addWidget(locked);
    m_rooms->addWidget(m_room);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    layout->addWidget(pageHeading(name(), this));
    layout->addWidget(m_rooms, 1);
}

void EarnedPage::makeKeys() {
    m_backKey = addKey(tr("&Month before"), {QKeySequence(Qt::Key_Left)}, [this] { m_presenter->goMonths(-1); });
    m_onKey = addKey(tr("Month a&fter"), {QKeySequence(Qt::Key_Right)}, [this] { m_presenter->goMonths(1); });
    m_giveKey = addCommand(tr("&Show with the PIN"), {QKeySequence(Qt::Key_Return), QKeySequence(Qt::Key_Enter)},
                           [this] { m_owner.give(m_pin->take()); });
}

void EarnedPage::enter() {
    if (isLocked()) {
        m_pin->start();
    } else {
        m_table->setFocus(Qt::OtherFocusReason);
    }
}

void EarnedPage::refresh() { m_presenter->open(); }

void EarnedPage::leave() { m_presenter->close(); }

void EarnedPage::showEarned() {
    const bool keyboardHere = m_pin->line()->hasFocus() || m_table->hasFocus();
    const bool wasLocked = isLocked();
    const bool locked = !m_owner.mayShow();
    m_rooms->setCurrentIndex(locked ? 0 : 1);
    m_title->setText(monthText(m_presenter->month()));
    std::vector<FigureRow> rows;
    const auto& earned = m_presenter->earned();
    if (earned) {
        for (const desk::EarnedLine& line : earned->jobs) {
            rows.push_back({QStringList{QString::number(line.number), fromUtf8(line.customer), fromUtf8(line.frame)} +
                            amounts(line.earnings)});
        }
        rows.push_back(
            {QStringList{QString(), strungJobsText(earned->jobs.size()), QString()} + amounts(earned->sum), true});
    }
    m_beside->setText(earned ? earnedBesideText(*earned) : QString());
    m_figures.setFigures(
        {tr("job"), tr("customer"), tr("frame"), tr("charged"), tr("string"), tr("extras"), tr("left")},
        kColumnsOfWords, std::move(rows));
    m_table->resizeToFigures();
    m_backKey->setEnabled(!locked);
    m_onKey->setEnabled(!locked && m_presenter->mayGoOn());
    m_giveKey->setEnabled(locked);
    if (keyboardHere && locked != wasLocked) {
        enter();
    }
    Q_EMIT keysChanged();
}

} // namespace rw::ui
