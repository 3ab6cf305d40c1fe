// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/price_sheets.h"

#include "ui/text/forecast_words.h"
#include "ui/text/format.h"
#include "ui/text/sentences.h"
#include "ui/text/set_up_words.h"
#include "ui/text/words.h"
#include "ui/widgets/calendar_edits.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/measure_edits.h"
#include "ui/widgets/money_edit.h"
#include "ui/widgets/refused_line.h"

#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace rw::ui {

namespace {
Sheet* sheetIn(QWidget* widget) {
    auto* layout = new QVBoxLayout(widget);
    layout->setContentsMargins(0, 0, 0, 0);
    auto* sheet = new Sheet(widget);
    layout->addWidget(sheet);
    sheet->setTight();
    return sheet;
}

/// The first that cannot be read has the keyboard, and says why.
bool allReadable(std::initializer_list<std::pair<ValueEdit*, MarginNote*>> edits) {
    for (const auto& [edit, note] : edits) {
        if (!edit->isHidden() && edit->problem()) {
            note->sendBackTo(edit);
            return false;
        }
    }
    return true;
}
} // namespace

NewListSheet::NewListSheet(QWidget* parent)
    : QWidget(parent)
    , m_sheet(sheetIn(this))
    , m_date(new DateEdit(m_sheet)) {
    m_line = m_sheet->addLine(tr("Holds &from"), m_date);
    m_line.note->watch(m_date);
    connect(m_date, &ValueEdit::valueChanged, this, [this] {
        const auto date = m_date->readable();
        m_line.note->setNote(date ? tr("it starts as a copy of the prices of %1").arg(civilDateText(*date))
                                  : QString());
    });
    setFocusProxy(m_date);
}

void NewListSheet::start(CivilDate proposed) {
    m_line.note->clearAll();
    m_date->setValue(proposed);
    m_line.note->setNote(tr("today or later; it starts as a copy of the prices that would hold then"));
    m_date->setFocus(Qt::OtherFocusReason);
    m_date->selectAll();
}

std::optional<CivilDate> NewListSheet::from() {
    m_line.note->setProblem({});
    return allReadable({{m_date, m_line.note}}) ? m_date->readable() : std::nullopt;
}

void NewListSheet::showRefusal(const Refusal& why) {
    m_line.note->setProblem(sentenceFor(why));
    m_date->setFocus(Qt::OtherFocusReason);
}

PriceLineSheet::PriceLineSheet(QWidget* parent)
    : QWidget(parent)
    , m_sheet(sheetIn(this))
    , m_kind(new Choice(m_sheet))
    , m_sport(new Choice(m_sheet))
    , m_name(new QLineEdit(m_sheet))
    , m_cost(new MoneyEdit(Currency::pounds(), m_sheet))
    , m_amount(new MoneyEdit(Currency::pounds(), m_sheet))
    , m_tax(new PercentEdit(m_sheet)) {
    m_kind->setAccessibleName(tr("What it is for"));
    for (const auto& [kind, words] : {std::pair(ChargeKind::Extra, tr("an extra")),
                                      {ChargeKind::Labour, tr("labour")},
                                      {ChargeKind::OwnStringLabour, tr("labour, own string")},
                                      {ChargeKind::Rush, tr("rush")}}) {
        m_kind->addItem(words, static_cast<int>(kind));
    }
    m_sport->setAccessibleName(tr("Sport"));
    m_sport->addItem(tr("every sport"), -1);
    for (const Sport sport : {Sport::Tennis, Sport::Squash, Sport::Badminton}) {
        m_sport->addItem(sportWord(sport), static_cast<int>(sport));
    }
    m_name->setAccessibleName(tr("Name of the extra"));
    m_amount->setAccessibleName(tr("Price"));
    m_tax->setAccessibleName(tr("Tax"));
    m_whatLine = m_sheet->addLine(tr("F&or"), {m_kind, m_sport});
    m_cost->setAccessibleName(tr("What one costs the shop"));
    m_cost->setMayBeBlank(true);
    m_nameLine = m_sheet->addLine(tr("&Name"), {m_name, m_cost});
    m_nameLine.note->watch(m_cost);
    m_amountLine = m_sheet->addLine(tr("&Price"), {m_amount, m_tax});
    m_amountLine.note->watch(m_amount);
    m_amountLine.note->watch(m_tax);
    connect(m_kind, &QComboBox::currentIndexChanged, this, &PriceLineSheet::showKind);
}

void PriceLineSheet::showKind() {
    const bool extra = m_kind->currentData().toInt() == static_cast<int>(ChargeKind::Extra);
    m_name->setVisible(extra);
    m_cost->setVisible(extra && m_showsCost);
    m_sheet->setLineVisible(m_nameLine, extra);
}

void PriceLineSheet::setShowsCost(bool shows) {
    m_showsCost = shows;
    showKind();
}

void PriceLineSheet::start(const PriceLine& line, bool isNew) {
    m_line = line;
    m_insteadOf = isNew ? std::nullopt : std::optional(line);
    m_kind->setCurrentIndex(std::max(0, m_kind->findData(static_cast<int>(line.kind))));
    m_sport->setCurrentIndex(m_sport->findData(line.sport ? static_cast<int>(*line.sport) : -1));
    m_name->setText(fromUtf8(line.label));
    m_cost->setCurrency(line.amount.currency());
    m_cost->setValue(line.cost);
    m_cost->setPlaceholderText(tr("its cost, %1").arg(fromUtf8(line.amount.currency().code())));
    m_amount->setCurrency(line.amount.currency());
    m_amount->setValue(isNew ? std::nullopt : std::optional(line.amount));
    m_tax->setValue(line.taxHundredthsPercent);
    // What a line is for stays; a new one is written for something else.
    m_kind->setEnabled(isNew);
    m_sport->setEnabled(isNew);
    for (const auto& note : {m_whatLine.note, m_nameLine.note, m_amountLine.note}) {
        note->clearAll();
    }
    m_whatLine.note->setNote(isNew ? tr("a price for one sport goes before the one for every sport")
                                   : priceLineTitle(line));
    m_nameLine.note->setNote(m_showsCost
                                 ? tr("as the counter offers it; what one costs you, if you want earnings without it")
                                 : tr("as the counter offers it"));
    m_amountLine.note->setNote(tr("and the tax in it or on it. Enter keeps it, Esc goes back"));
    showKind();
    QWidget* first = isNew ? static_cast<QWidget*>(m_kind) : m_amount;
    setFocusProxy(first);
    first->setFocus(Qt::OtherFocusReason);
    m_amount->selectAll();
}

std::optional<PriceLine> PriceLineSheet::line() {
    m_whatLine.note->setProblem({});
    m_nameLine.note->setProblem({});
    if (!allReadable({{m_cost, m_nameLine.note}, {m_amount, m_amountLine.note}, {m_tax, m_amountLine.note}})) {
        return std::nullopt;
    }
    PriceLine line = *m_line;
    if (!m_insteadOf) {
        line.kind = static_cast<ChargeKind>(m_kind->currentData().toInt());
        const int sport = m_sport->currentData().toInt();
        line.sport = sport < 0 ? std::nullopt : std::optional(static_cast<Sport>(sport));
    }
    line.label = line.kind == ChargeKind::Extra ? m_name->text().toStdString() : std::string();
    line.cost = line.kind == ChargeKind::Extra ? m_cost->readable() : std::nullopt;
    line.amount = *m_amount->readable();
    line.taxHundredthsPercent = *m_tax->readable();
    return line;
}

void PriceLineSheet::showRefusal(const Refusal& why) {
    showBeside(why,
               {{"extra", m_name, m_nameLine.note},
                {"cost", m_cost, m_nameLine.note},
                {"line", m_kind, m_whatLine.note},
                {"amount", m_amount, m_amountLine.note},
                {"tax", m_tax, m_amountLine.note}},
               m_amountLine.note);
}

QString PriceLineSheet::margin() const {
    return m_whatLine.note->text() + QLatin1Char('\n') + m_nameLine.note->text() + QLatin1Char('\n') +
           m_amountLine.note->text();
}

StringPriceSheet::StringPriceSheet(QWidget* parent)
    : QWidget(parent)
    , m_sheet(sheetIn(this))
    , m_fullBed(new MoneyEdit(Currency::pounds(), m_sheet))
    , m_halfBed(new MoneyEdit(Currency::pounds(), m_sheet))
    , m_packet(new MoneyEdit(Currency::pounds(), m_sheet))
    , m_tax(new PercentEdit(m_sheet)) {
    for (const auto& [edit, name] :
         {std::pair(m_fullBed, tr("Full bed")), {m_halfBed, tr("Half a bed")}, {m_packet, tr("Packet")}}) {
        edit->setAccessibleName(name);
        edit->setMayBeBlank(true);
    }
    m_tax->setAccessibleName(tr("Tax"));
    m_bedLine = m_sheet->addLine(tr("&Bed"), {m_fullBed, m_halfBed});
    m_packetLine = m_sheet->addLine(tr("&Packet"), {m_packet, m_tax});
    m_bedLine.note->watch(m_fullBed);
    m_bedLine.note->watch(m_halfBed);
    m_packetLine.note->watch(m_packet);
    m_packetLine.note->watch(m_tax);
    setFocusProxy(m_fullBed);
}

void StringPriceSheet::start(const StringArticle& string, const desk::StringPrices& prices, const Currency& currency) {
    m_string = string.id;
    for (auto* edit : {m_fullBed, m_halfBed, m_packet}) {
        edit->setCurrency(currency);
    }
    const QString code = fromUtf8(currency.code());
    m_fullBed->setPlaceholderText(tr("full bed, %1").arg(code));
    m_halfBed->setPlaceholderText(tr("half a bed, %1").arg(code));
    m_packet->setPlaceholderText(tr("packet, %1").arg(code));
    m_fullBed->setValue(prices.fullBed);
    m_halfBed->setValue(prices.halfBed);
    m_packet->setValue(prices.packet);
    m_tax->setValue(prices.taxHundredthsPercent);
    m_bedLine.note->clearAll();
    m_packetLine.note->clearAll();
    m_bedLine.note->setNote(tr("%1; half a bed left blank is half of it").arg(fromUtf8(string.name)));
    m_packetLine.note->setNote(tr("the whole packet, and the tax in it or on it"));
    m_fullBed->setFocus(Qt::OtherFocusReason);
    m_fullBed->selectAll();
}

std::optional<desk::StringPrices> StringPriceSheet::prices() {
    m_bedLine.note->setProblem({});
    if (!allReadable({{m_fullBed, m_bedLine.note},
                      {m_halfBed, m_bedLine.note},
                      {m_packet, m_packetLine.note},
                      {m_tax, m_packetLine.note}})) {
        return std::nullopt;
    }
    return desk::StringPrices{m_fullBed->readable(), m_halfBed->readable(), m_packet->readable(), *m_tax->readable()};
}

void StringPriceSheet::showRefusal(const Refusal& why) {
    showBeside(why, {{"price", m_fullBed, m_bedLine.note}, {"tax", m_tax, m_packetLine.note}}, m_bedLine.note);
}

TaxSheet::TaxSheet(QWidget* parent)
    : QWidget(parent)
    , m_sheet(sheetIn(this))
    , m_rate(new PercentEdit(m_sheet))
    , m_rule(new Choice(m_sheet)) {
    m_rate->setAccessibleName(tr("Rate of tax"));
    m_rule->setAccessibleName(tr("How tax stands to the prices"));
    m_rule->addItem(tr("the prices include it"), static_cast<int>(TaxRule::Included));
    m_rule->addItem(tr("it is added to the prices"), static_cast<int>(TaxRule::Added));
    m_line = m_sheet->addLine(tr("Ta&x"), {m_rate, m_rule});
    m_line.note->watch(m_rate);
    setFocusProxy(m_rate);
}

void TaxSheet::start(const PriceList& list) {
    m_line.note->clearAll();
    m_rate->setValue(list.lines.empty() ? 0 : list.lines.front().taxHundredthsPercent);
    m_rule->setCurrentIndex(m_rule->findData(static_cast<int>(list.taxRule)));
    m_line.note->setNote(tr("one rate for every line of the list"));
    m_rate->setFocus(Qt::OtherFocusReason);
    m_rate->selectAll();
}

std::optional<int> TaxSheet::rate() {
    m_line.note->setProblem({});
    return allReadable({{m_rate, m_line.note}}) ? m_rate->readable() : std::nullopt;
}

TaxRule TaxSheet::rule() const { return static_cast<TaxRule>(m_rule->currentData().toInt()); }

void TaxSheet::showRefusal(const Refusal& why) { m_line.note->setProblem(sentenceFor(why)); }

} // namespace rw::ui
