// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/prices_page.h"

#include "ui/books/price_sheets.h"
#include "ui/presenter/owner_presenter.h"
#include "ui/presenter/prices_presenter.h"
#include "ui/presenter/shift.h"
#include "ui/text/forecast_words.h"
#include "ui/text/format.h"
#include "ui/text/set_up_words.h"

namespace rw::ui {

namespace {
/// `costs`: what an extra costs the shop may be shown.
WordsRow rowOf(const PriceRow& row, bool costs) {
    if (row.line) {
        const QString tax = taxText(row.line->taxHundredthsPercent);
        return {priceLineTitle(*row.line),
                costs && row.line->cost ? PricesPage::tr("%1 · costs %2").arg(tax, moneyText(*row.line->cost)) : tax,
                moneyText(row.line->amount)};
    }
    const QString title = QStringLiteral("%1 %2").arg(fromUtf8(row.string->code), fromUtf8(row.string->name));
    const auto first = row.prices.fullBed ? row.prices.fullBed : row.prices.packet;
    return {title,
            QStringLiteral("%1 · %2").arg(stringPricesText(row.prices), taxText(row.prices.taxHundredthsPercent)),
            first ? moneyText(*first) : QString()};
}
} // namespace

PricesPage::PricesPage(DeskRunner& runner, Shift& shift, OwnerPresenter& owner, QWidget* parent)
    : SetUpPage(tr("Prices"), tr("Price lists"), parent)
    , m_shift(shift)
    , m_owner(owner)
    , m_presenter(std::make_unique<PricesPresenter>(runner, shift))
    , m_newList(new NewListSheet(this))
    , m_line(new PriceLineSheet(this))
    , m_string(new StringPriceSheet(this))
    , m_tax(new TaxSheet(this)) {
    for (QWidget* sheet : QList<QWidget*>{m_newList, m_line, m_string, m_tax}) {
        addSheet(sheet);
    }
    makeKeys();
    connectPresenter();
    m_line->setShowsCost(m_owner.mayShow());
    enableKeys();
}

PricesPage::~PricesPage() = default;

void PricesPage::makeKeys() {
    m_editKey = addKey(tr("&Open"), enterKeys(), [this] { openCurrent(); });
    m_newKey = addKey(tr("&New"), {QKeySequence(Qt::Key_N)}, [this] { openNew(); });
    m_taxKey = addKey(tr("&Tax of the list"), {QKeySequence(Qt::Key_T)}, [this] { openTax(); });
    m_offKey = addCommand(tr("Ta&ke off"), {QKeySequence(Qt::Key_Delete)}, [this] { takeOff(); });
    m_confirmKey = addCommand(tr("&Keep it"), enterKeys(), [this] { confirm(); });
}

void PricesPage::connectPresenter() {
    connect(&m_owner, &OwnerPresenter::changed, this, [this] {
        m_line->setShowsCost(m_owner.mayShow());
        show();
    });
    auto* presenter = m_presenter.get();
    connect(presenter, &PricesPresenter::changed, this, &PricesPage::show);
    connect(presenter, &PricesPresenter::begun, this, [this](const PriceList& list) {
        closeSheet();
        Q_EMIT said(tr("These prices hold from %1. Enter changes a line of them.").arg(civilDateText(list.validFrom)));
    });
    connect(presenter, &PricesPresenter::kept, this, [this](const PriceList& list, bool renewed) {
        if (sheet() != nullptr) {
            closeSheet();
        }
        Q_EMIT said(renewed ? tr("Kept in a new list that holds from today; what was quoted before stays.")
                            : tr("Kept. These prices hold from %1.").arg(civilDateText(list.validFrom)));
    });
    connect(presenter, &PricesPresenter::dropped, this,
            [this] { Q_EMIT said(tr("The list is taken back; the one before it goes on.")); });
    connect(presenter, &PricesPresenter::refused, this,
            [this](const Refusal& why) { tellRefusal(why, m_newList, m_line, m_string, m_tax); });
}

void PricesPage::refresh() { m_presenter->open(); }

void PricesPage::leave() { m_presenter->close(); }

bool PricesPage::isListOpen() const { return m_presenter->chosen() != nullptr; }

bool PricesPage::back() {
    if (SetUpPage::back()) {
        return true;
    }
    if (!isListOpen()) {
        return false;
    }
    m_presenter->choose(std::nullopt);
    setCurrentRow(m_listRow);
    enter();
    return true;
}

void PricesPage::show() {
    if (isListOpen()) {
        showLines();
    } else {
        showLists();
    }
}

void PricesPage::showLists() {
    setHeading(tr("Prices"));
    std::vector<WordsRow> rows;
    for (const auto& dated : m_presenter->lists()) {
        rows.push_back({priceListTitle(dated.list), priceListText(dated.list), holdsText(dated)});
    }
    const QString words = rows.empty() ? tr("The shop has no prices yet. The first day's page sets them.")
                                       : tr("N begins a new list on a day, as a copy; Enter opens one.");
    showRows(std::move(rows), words);
}

void PricesPage::showLines() {
    const auto& dated = *m_presenter->chosen();
    setHeading(tr("Prices from %1").arg(civilDateText(dated.list.validFrom)));
    std::vector<WordsRow> rows;
    const auto lines = m_presenter->rows();
    for (const PriceRow& row : lines) {
        rows.push_back(rowOf(row, m_owner.mayShow()));
    }
    const QString tax = taxRuleText(dated.list.taxRule);
    const QString words = !m_presenter->mayChange()
                              ? tr("These prices are past. They stay as they were, because jobs were quoted from them.")
                          : dated.holds == desk::Holds::Now && dated.list.validFrom != m_presenter->today()
                              ? tr("They hold now, %1. A change makes a new list that holds from today.").arg(tax)
                              : tr("%1, %2. N adds an extra, or a price for one sport.").arg(holdsText(dated), tax);
    showRows(std::move(rows), words);
}

void PricesPage::openCurrent() {
    if (!m_editKey->isEnabled()) {
        return;
    }
    const auto row = static_cast<std::size_t>(currentRow());
    if (!isListOpen()) {
        m_listRow = currentRow();
        m_presenter->choose(m_presenter->lists()[row].list.id);
        setCurrentRow(0);
        return;
    }
    m_seen = m_presenter->chosen()->list;
    const PriceRow chosen = m_presenter->rows()[row];
    if (chosen.line) {
        openSheet(m_line);
        m_line->start(*chosen.line, false);
    } else {
        openSheet(m_string);
        m_string->start(*chosen.string, chosen.prices, m_seen->currency);
    }
}

void PricesPage::openNew() {
    if (!m_newKey->isEnabled()) {
        return;
    }
    if (!isListOpen()) {
        openSheet(m_newList);
        m_newList->start(std::chrono::sys_days(m_presenter->today()) + std::chrono::days(1));
        return;
    }
    m_seen = m_presenter->chosen()->list;
    const int tax = m_seen->lines.empty() ? 0 : m_seen->lines.front().taxHundredthsPercent;
    openSheet(m_line);
    m_line->start({.kind = ChargeKind::Extra,
                   .sport = std::nullopt,
                   .method = std::nullopt,
                   .article = std::nullopt,
                   .label = {},
                   .amount = Money::zero(m_seen->currency),
                   .taxHundredthsPercent = tax},
                  true);
}

void PricesPage::openTax() {
    if (m_taxKey->isEnabled()) {
        m_seen = m_presenter->chosen()->list;
        openSheet(m_tax);
        m_tax->start(*m_seen);
    }
}

void PricesPage::takeOff() {
    const auto row = static_cast<std::size_t>(currentRow());
    if (!isListOpen()) {
        m_presenter->drop(m_presenter->lists()[row].list);
    } else if (const PriceRow chosen = m_presenter->rows()[row]; chosen.line) {
        m_presenter->takeOff(m_presenter->chosen()->list, *chosen.line);
    }
}

void PricesPage::confirm() {
    if (sheet() == m_newList) {
        if (const auto from = m_newList->from()) {
            m_listRow = 0;
            m_presenter->begin(*from);
        }
    } else if (sheet() == m_line) {
        if (const auto line = m_line->line()) {
            m_presenter->keepLine(*m_seen, m_line->insteadOf(), *line);
        }
    } else if (sheet() == m_string) {
        if (const auto prices = m_string->prices()) {
            m_presenter->keepString(*m_seen, m_string->string(), *prices);
        }
    } else if (const auto rate = m_tax->rate()) {
        m_presenter->keepTax(*m_seen, m_tax->rule(), *rate);
    }
}

void PricesPage::enableKeys() {
    if (m_confirmKey == nullptr) {
        return;
    }
    const bool writing = sheet() != nullptr;
    const bool open = isListOpen();
    const int row = currentRow();
    const bool onRow = !writing && row >= 0;
    const auto& lists = m_presenter->lists();
    const auto lines = m_presenter->rows();
    const auto there = static_cast<std::size_t>(row);
    const bool mayChange = open && m_presenter->mayChange();
    const bool laterList = onRow && !open && there < lists.size() && lists[there].holds == desk::Holds::Later;
    const bool ownLine = onRow && mayChange && there < lines.size() && lines[there].line.has_value();
    m_confirmKey->setEnabled(writing);
    m_editKey->setText(open ? tr("Chan&ge") : tr("&Open"));
    m_editKey->setEnabled(onRow && (!open || mayChange));
    m_newKey->setText(open ? tr("&New line") : tr("&New list"));
    m_newKey->setEnabled(!writing && m_presenter->isLoaded() && (open ? mayChange : !lists.empty()));
    m_taxKey->setEnabled(!writing && mayChange);
    m_offKey->setText(open ? tr("Ta&ke the line off") : tr("Ta&ke the list back"));
    m_offKey->setEnabled(laterList || ownLine);
    Q_EMIT keysChanged();
}

} // namespace rw::ui
