// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/stockroom/order_page.h"

#include "ui/model/shelf_model.h"
#include "ui/text/format.h"
#include "ui/text/order_words.h"
#include "ui/widgets/figures_table.h"
#include "ui/widgets/look.h"

#include <QVBoxLayout>

namespace rw::ui {

namespace {
constexpr int kWhyColumn = 3;
constexpr int kColumnsOfWords = 4;
} // namespace

OrderPage::OrderPage(QWidget* parent)
    : QWidget(parent)
    , m_title(new QLabel(tr("What to order"), this))
    , m_table(new FiguresTable(&m_figures, kWhyColumn, tr("What to order"), this))
    , m_words(new QLabel(this)) {
    m_title->setFont(largeFont(*this, 1.5));
    m_words->setWordWrap(true);
    m_words->setTextFormat(Qt::PlainText);
    m_words->setAccessibleName(tr("Beside the order"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(24, 16, 24, 16);
    layout->setSpacing(10);
    layout->addWidget(m_title);
    layout->addWidget(m_table, 1);
    layout->addWidget(m_words);
    setFocusPolicy(Qt::ClickFocus);
    setAccessibleName(tr("What to order"));
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
    fill();
}

void OrderPage::show(const std::vector<desk::OrderDraft>& drafts, bool known) {
    m_drafts = drafts;
    m_known = known;
    fill();
    if (hasFocus()) {
        enter(); // there are lines to be at now
    }
}

void OrderPage::setShowsPaid(bool shows) {
    m_showsPaid = shows;
    fill();
}

void OrderPage::fill() {
    QStringList headers{tr("From"), tr("String"), tr("How many"), tr("Why")};
    if (m_showsPaid) {
        headers << tr("Each, last time") << tr("Together");
    }
    const auto money = [](const std::optional<Money>& amount) { return amount ? moneyText(*amount) : QString(); };
    std::vector<FigureRow> rows;
    for (const desk::OrderDraft& draft : m_drafts) {
        QString from = supplierText(draft);
        for (const desk::OrderLine& line : draft.lines) {
            FigureRow row{{from, articleTitle(line.article), orderCountText(line), orderWhyText(line)}};
            if (m_showsPaid) {
                row.cells << money(line.priceEach) << money(line.price());
            }
            rows.push_back(row);
            from.clear(); // said once
        }
        if (m_showsPaid) {
            const QString none;
            if (draft.goods() && draft.shipping && draft.shipping->minor() > 0) {
                rows.push_back({{none, none, none, lastShippingText(), none, money(draft.shipping)}});
            }
            rows.push_back({{none, none, none, togetherText(draft), none, money(draft.together())}, true});
        }
    }
    m_table->setVisible(!rows.empty());
    m_figures.setFigures(headers, kColumnsOfWords, std::move(rows));
    m_table->resizeToFigures();
    m_words->setText(!m_known ? QString() : m_drafts.empty() ? nothingToOrderText() : orderHintText());
    m_words->setAlignment(m_drafts.empty() ? Qt::AlignTop | Qt::AlignLeft : Qt::AlignLeft | Qt::AlignVCenter);
}

void OrderPage::enter() {
    if (m_figures.rowCount() > 0) {
        m_table->setCurrentIndex(m_figures.index(0, 0));
        m_table->setFocus(Qt::OtherFocusReason);
    } else {
        setFocus(Qt::OtherFocusReason); // there is no line to be at
    }
}

} // namespace rw::ui
