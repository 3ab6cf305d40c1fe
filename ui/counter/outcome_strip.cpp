// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/counter/outcome_strip.h"

#include "ui/text/counter_words.h"
#include "ui/text/format.h"
#include "ui/text/intake_words.h"
#include "ui/text/need_words.h"
#include "ui/text/plan_words.h"
#include "ui/text/words.h"
#include "ui/widgets/head_view.h"
#include "ui/widgets/look.h"

#include <QGridLayout>

#include <algorithm>

namespace rw::ui {

namespace {
QLabel* words(QWidget* parent, const QString& accessibleName) {
    auto* label = new QLabel(parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setAccessibleName(accessibleName);
    return label;
}

QLabel* quiet(QLabel* label) {
    quieten(*label);
    return label;
}
} // namespace

OutcomeStrip::OutcomeStrip(QWidget* parent)
    : QWidget(parent)
    , m_head(new HeadView(this))
    , m_plan(words(this, tr("Cut plan")))
    , m_why(quiet(words(this, tr("Why"))))
    , m_reasons(quiet(words(this, tr("Why this length"))))
    , m_price(words(this, tr("Price")))
    , m_charges(quiet(words(this, tr("Charges"))))
    , m_promise(words(this, tr("Promise")))
    , m_needed(words(this, tr("What is still needed")))
    , m_log(new QPushButton(tr("Log it"), this)) {
    m_plan->setFont(largeFont(*this, 1.25));
    m_price->setFont(largeFont(*this, 2.4));
    m_promise->setFont(largeFont(*this, 1.7));
    m_price->setAlignment(Qt::AlignRight | Qt::AlignBottom);
    m_promise->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_charges->setAlignment(Qt::AlignRight | Qt::AlignTop);
    m_needed->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_log->setDefault(true);

    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 4, 0, 0);
    grid->setHorizontalSpacing(20);
    grid->setVerticalSpacing(1); // the sheet above it may need every line of a small screen
    grid->addWidget(m_head, 0, 0, 4, 1);
    grid->addWidget(m_plan, 0, 1, 2, 1, Qt::AlignBottom);
    grid->addWidget(m_why, 2, 1, 2, 1, Qt::AlignTop);
    grid->addWidget(m_price, 0, 2);
    grid->addWidget(m_charges, 1, 2);
    grid->addWidget(m_promise, 2, 2);
    auto* last = new QHBoxLayout;
    last->setSpacing(16);
    last->addWidget(m_needed, 1);
    last->addWidget(m_log);
    grid->addLayout(last, 3, 2);
    grid->addWidget(m_reasons, 4, 0, 1, 3);
    m_reasons->hide();
    grid->setColumnMinimumWidth(0, 170);
    grid->setColumnStretch(1, 6);
    grid->setColumnStretch(2, 5);
    showNothing({});
}

void OutcomeStrip::show(const desk::IntakePreview& preview, Instant now, const QTimeZone& zone) {
    m_head->setPlan(preview.plan);
    QStringList plan;
    for (const auto& piece : preview.pieces) {
        plan << (preview.pieces.size() > 1 ? tr("%1: %2").arg(pieceWord(piece.role), pieceProposalText(piece, preview.plan.hoop.standsOn))
                                           : pieceProposalText(piece, preview.plan.hoop.standsOn));
    }
    m_plan->setText(plan.join(QLatin1Char('\n')));
    m_why->setText(routeName(preview.plan));
    m_reasons->setText(whyLines(preview).join(QLatin1Char('\n')));
    fitReasons();
    m_price->setText(moneyText(preview.quote.total));
    QStringList bill{chargesText(preview.quote.charges), taxInsideText(preview.quote)};
    bill.removeAll(QString());
    m_charges->setText(bill.join(QLatin1Char('\n')));
    m_promise->setText(readyText(preview, now, zone));
    setThinking(false);
}

void OutcomeStrip::showNothing(const QString& why) {
    m_head->setPlan(std::nullopt);
    m_plan->setText(why);
    m_why->clear();
    m_reasons->clear();
    fitReasons();
    m_price->clear();
    m_charges->clear();
    m_promise->clear();
    setThinking(false);
}

void OutcomeStrip::setWhyShown(bool shown) {
    m_whyShown = shown;
    fitReasons();
}

void OutcomeStrip::fitReasons() {
    m_reasons->setVisible(m_whyShown && !m_reasons->text().isEmpty());
    // A sheet that scrolls asks for the least height, and what wraps is higher than that.
    m_reasons->setMinimumHeight(std::max(0, m_reasons->heightForWidth(width()))); // -1 for no words
}

void OutcomeStrip::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitReasons();
}

void OutcomeStrip::setStillNeeded(const QString& needed) { m_needed->setText(needed); }

void OutcomeStrip::setThinking(bool thinking) {
    // Old numbers stay readable, but nobody should read them out.
    for (auto* label : {m_plan, m_price, m_promise}) {
        label->setEnabled(!thinking);
    }
}

} // namespace rw::ui
