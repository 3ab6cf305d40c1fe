// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/first_day_sheet.h"

#include "core/money/known_currencies.h"
#include "ui/presenter/shell_presenter.h"
#include "ui/text/format.h"
#include "ui/text/sentences.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/money_edit.h"

#include <QKeyEvent>
#include <QLocale>
#include <QTimeZone>
#include <QVBoxLayout>

#include <utility>

namespace rw::ui {

FirstDaySheet::FirstDaySheet(ShellPresenter& shell, Shift& shift, QWidget* parent)
    : QWidget(parent)
    , m_shell(shell)
    , m_shift(shift)
    , m_sheet(new Sheet(this))
    , m_shopName(new QLineEdit(m_sheet))
    , m_person(new QLineEdit(m_sheet))
    , m_machine(new QLineEdit(m_sheet))
    , m_unit(new Choice(m_sheet))
    , m_step(new Choice(m_sheet))
    , m_currency(new Choice(m_sheet))
    , m_labour(new MoneyEdit(Currency::pounds(), m_sheet))
    , m_ownString(new MoneyEdit(Currency::pounds(), m_sheet))
    , m_rush(new MoneyEdit(Currency::pounds(), m_sheet))
    , m_open(new QPushButton(tr("Open the shop"), m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    for (auto* edit : {m_shopName, m_person, m_machine}) {
        edit->setMaxLength(80);
    }
    m_machine->setText(tr("Bench A"));
    m_machine->setAccessibleName(tr("Name of the machine"));
    m_unit->setAccessibleName(tr("Unit of its dial"));
    for (const TensionUnit unit : {TensionUnit::Pound, TensionUnit::Kilogram}) {
        m_unit->addItem(tr("dial in %1").arg(fromUtf8(unitText(unit))), static_cast<int>(unit));
    }
    m_step->setAccessibleName(tr("Step of its dial"));
    for (const int hundredths : {10, 25, 50, 100}) {
        m_step->addItem(tr("steps of %1").arg(QLocale().toString(hundredths / 100.0)), hundredths);
    }
    m_step->setCurrentIndex(2);
    for (const std::string_view code : knownCurrencies()) {
        m_currency->addItem(fromUtf8(code));
    }
    m_ownString->setMayBeBlank(true);
    m_rush->setMayBeBlank(true);
    m_open->setDefault(true);

    m_sheet->addHeading(tr("A new ledger"));
    const auto shopLine = m_sheet->addLine(tr("&Shop"), m_shopName);
    m_personLine = m_sheet->addLine(tr("Your &name"), m_person);
    m_machineLine = m_sheet->addLine(tr("&Machine"), {m_machine, m_unit, m_step});
    const auto currencyLine = m_sheet->addLine(tr("&Currency"), m_currency);
    m_labourLine = m_sheet->addLine(tr("&Labour"), m_labour);
    m_ownLine = m_sheet->addLine(tr("Own s&tring"), m_ownString);
    m_rushLine = m_sheet->addLine(tr("&Rush"), m_rush);
    m_openLine = m_sheet->addLine(QString(), m_open);
    m_sheet->addStretch();
    shopLine.note->setNote(tr("as it stands on the card"));
    m_personLine.note->setNote(tr("everything that is written down says who did it"));
    m_machineLine.note->setNote(
        tr("the card shows its settings in its own unit and steps; a tension without a unit is read in it"));
    currencyLine.note->setNote(tr("the money you work in, by its ISO code; it stays the ledger's for good"));
    m_labourLine.note->setNote(tr("for one racket, without the string"));
    m_ownLine.note->setNote(tr("labour when the customer brings the string; blank: the same"));
    m_rushLine.note->setNote(tr("what a rush costs more; blank: nothing"));
    m_openLine.note->setNote(tr("Enter goes on from line to line, Ctrl+Enter opens at once. All but the currency can be "
                                "changed later in Books; strings and reels come next, in the stockroom."));
    m_labourLine.note->watch(m_labour);
    m_ownLine.note->watch(m_ownString);
    m_rushLine.note->watch(m_rush);
    connect(m_currency, &QComboBox::currentIndexChanged, this, &FirstDaySheet::useCurrency);
    connect(m_open, &QPushButton::clicked, this, [this] { open(); });
    connect(&m_shell, &ShellPresenter::setUpRefused, this,
            [this](const Refusal& why) { m_openLine.note->setProblem(sentenceFor(why)); });
}

QLineEdit* FirstDaySheet::labourLine() const { return m_labour; }

void FirstDaySheet::enter() {
    const QString usual = QLocale::system().currencySymbol(QLocale::CurrencyIsoCode);
    const int offered = m_currency->findText(usual);
    m_currency->setCurrentIndex(offered >= 0 ? offered
                                             : m_currency->findText(fromUtf8(m_shift.shop().currency.code())));
    useCurrency();
    m_shopName->setFocus(Qt::OtherFocusReason);
}

void FirstDaySheet::useCurrency() {
    const auto currency = Currency::fromCode(m_currency->currentText().toStdString());
    if (!currency) {
        return;
    }
    for (auto* edit : {m_labour, m_ownString, m_rush}) {
        const auto typed = edit->readable();
        edit->setCurrency(*currency);
        if (typed) {
            edit->setText(fromUtf8(typed->text()));
        }
    }
}

void FirstDaySheet::open() {
    clearProblems();
    if (m_person->text().trimmed().isEmpty()) {
        m_personLine.note->setProblem(sentenceFor(Refusal(Code::Missing, {{"what", "name"}})));
        m_person->setFocus(Qt::OtherFocusReason);
        return;
    }
    for (const auto& [edit, line] :
         {std::pair{m_labour, m_labourLine}, {m_ownString, m_ownLine}, {m_rush, m_rushLine}}) {
        if (edit->problem()) {
            line.note->sendBackTo(edit);
            return;
        }
    }
    m_shell.setUpShop({.name = m_shopName->text().toStdString(),
                       .timeZone = QTimeZone::systemTimeZoneId().toStdString(),
                       .person = m_person->text().toStdString(),
                       .machine = m_machine->text().toStdString(),
                       .unit = static_cast<TensionUnit>(m_unit->currentData().toInt()),
                       .stepHundredths = m_step->currentData().toInt(),
                       .labour = *m_labour->readable(),
                       .ownStringLabour = m_ownString->readable(),
                       .rush = m_rush->readable()});
}

void FirstDaySheet::clearProblems() {
    for (const Sheet::Line& line : {m_personLine, m_labourLine, m_ownLine, m_rushLine, m_openLine}) {
        line.note->setProblem({});
    }
}

void FirstDaySheet::goOn() {
    if (m_open->hasFocus()) {
        open();
    } else {
        focusNextChild();
    }
}

void FirstDaySheet::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        if (event->modifiers().testFlag(Qt::ControlModifier)) {
            open();
        } else {
            goOn();
        }
    } else {
        QWidget::keyPressEvent(event);
    }
}

} // namespace rw::ui
