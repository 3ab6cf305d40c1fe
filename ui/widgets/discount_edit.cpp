// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/discount_edit.h"

#include "core/pricing/discount_text.h"
#include "ui/text/format.h"

#include <QLocale>

namespace rw::ui {

DiscountEdit::DiscountEdit(Currency currency, QWidget* parent)
    : ValueEdit(parent)
    , m_currency(currency) {}

void DiscountEdit::setValue(const std::optional<Discount>& discount) {
    if (!discount) {
        clear();
        return;
    }
    QString words = QString::fromStdString(discountText(*discount));
    words.replace(QLatin1Char('.'), QLocale().decimalPoint());
    setText(words);
}

Result<Discount> DiscountEdit::value() const {
    if (isBlank()) {
        return tl::unexpected<Refusal>(missing());
    }
    return discountFromText(text().toStdString(), m_currency);
}

std::optional<Discount> DiscountEdit::readable() const {
    const auto discount = value();
    return discount ? std::optional(*discount) : std::nullopt;
}

std::optional<Refusal> DiscountEdit::problemWith() const {
    const auto discount = value();
    return discount ? std::nullopt : std::optional(discount.error());
}

Refusal DiscountEdit::missing() const { return Refusal(Code::Missing, {{"what", "discount"}}); }

void DiscountEdit::writeOut() { setValue(readable()); }

} // namespace rw::ui
