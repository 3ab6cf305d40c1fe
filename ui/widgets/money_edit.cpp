// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/money_edit.h"

#include "ui/text/format.h"

#include <QLocale>
#include <QRegularExpression>

namespace rw::ui {

namespace {
/// What stands around the number when an amount is written out: "£" or " KWD".
QString withoutSign(QString text, const Money& zero) {
    QString around = moneyText(zero);
    around.remove(QRegularExpression(QStringLiteral("[0-9.,]")));
    around = around.trimmed();
    return around.isEmpty() ? text : text.remove(around, Qt::CaseInsensitive).trimmed();
}
} // namespace

MoneyEdit::MoneyEdit(Currency currency, QWidget* parent)
    : ValueEdit(parent)
    , m_currency(currency) {
    setCurrency(currency);
}

void MoneyEdit::setCurrency(Currency currency) {
    m_currency = currency;
    setPlaceholderText(QString::fromStdString(currency.code()));
}

void MoneyEdit::setValue(const std::optional<Money>& money) {
    if (money) {
        // What stands in a line is read again, and no group separator can be.
        QLocale locale;
        locale.setNumberOptions(locale.numberOptions() | QLocale::OmitGroupSeparator);
        setText(moneyText(*money, locale));
    } else {
        clear();
    }
}

Result<Money> MoneyEdit::value() const {
    if (isBlank()) {
        return tl::unexpected<Refusal>(missing());
    }
    const std::string typed = withoutSign(text(), Money::zero(m_currency)).toStdString();
    auto money = Money::tryParse(typed, m_currency);
    if (money && money->minor() < 0) {
        return refuse(Code::OutOfRange, {{"what", std::string("amount")},
                                         {"text", typed},
                                         {"lowest", std::string("0")},
                                         {"highest", std::string("10000000")}});
    }
    return money;
}

std::optional<Money> MoneyEdit::readable() const {
    const auto money = value();
    return money ? std::optional(*money) : std::nullopt;
}

std::optional<Refusal> MoneyEdit::problemWith() const {
    const auto money = value();
    return money ? std::nullopt : std::optional(money.error());
}

Refusal MoneyEdit::missing() const { return Refusal(Code::Missing, {{"what", "amount"}}); }

void MoneyEdit::writeOut() { setValue(readable()); }

} // namespace rw::ui
