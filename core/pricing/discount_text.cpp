// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pricing/discount_text.h"

#include "core/units/decimal.h"

namespace rw {

namespace {
constexpr std::string_view kWhat = "discount";

tl::unexpected<Refusal> outOfRange(std::string_view text, std::string highest) {
    return refuse(Code::OutOfRange, {{"what", std::string(kWhat)},
                                     {"text", std::string(text)},
                                     {"lowest", "0"},
                                     {"highest", std::move(highest)}});
}

/// The same refusal, of a discount.
Refusal ofDiscount(const Refusal& refusal) {
    std::vector<Argument> arguments = refusal.arguments();
    for (Argument& argument : arguments) {
        if (argument.name == "what") {
            argument.value = std::string(kWhat);
        }
    }
    return Refusal(refusal.code(), std::move(arguments));
}
} // namespace

Result<Discount> discountFromText(std::string_view text, Currency currency) {
    const auto decimal = parseDecimal(kWhat, text);
    if (!decimal) {
        return tl::unexpected(decimal.error());
    }
    if (decimal->rest != "%") {
        const auto money = Money::tryParse(text, currency);
        if (!money) {
            return tl::unexpected(ofDiscount(money.error()));
        }
        return money->minor() < 0 ? Result<Discount>(outOfRange(text, "the price"))
                                  : Discount{.hundredthsPercent = 0, .fixed = *money, .reason = {}};
    }
    const auto hundredths = scaledTo(2, *decimal, kWhat, text);
    if (!hundredths) {
        return tl::unexpected(hundredths.error());
    }
    if (*hundredths < 0 || *hundredths > 100'00) {
        return outOfRange(text, "100 %");
    }
    return Discount{.hundredthsPercent = static_cast<int>(*hundredths), .fixed = std::nullopt, .reason = {}};
}

std::string discountText(const Discount& discount) {
    return discount.fixed ? discount.fixed->text() : decimalText(discount.hundredthsPercent, 2) + " %";
}

} // namespace rw
