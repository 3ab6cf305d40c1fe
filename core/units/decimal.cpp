// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/decimal.h"

#include <array>
#include <cstdlib>

namespace rw {

namespace {
constexpr int kMostDigits = 12; // 10^12 thousandths still fit an int64 after every conversion here

constexpr std::array<std::string_view, 3> kSpaces = {" ", "\t", "\u00a0"};
constexpr std::string_view kMinusSign = "\u2212";

bool eat(std::string_view& text, std::string_view prefix) {
    if (!text.starts_with(prefix)) {
        return false;
    }
    text.remove_prefix(prefix.size());
    return true;
}

bool isDigit(char c) { return c >= '0' && c <= '9'; }
} // namespace

std::string_view trimmed(std::string_view text) {
    for (bool again = true; again;) {
        again = false;
        for (const auto space : kSpaces) {
            while (text.starts_with(space)) {
                text.remove_prefix(space.size());
                again = true;
            }
            while (text.ends_with(space)) {
                text.remove_suffix(space.size());
                again = true;
            }
        }
    }
    return text;
}

Result<Decimal> parseDecimal(std::string_view what, std::string_view text) {
    const auto unreadable = [&] {
        return refuse(Code::Unreadable, {{"what", std::string(what)}, {"text", std::string(text)}});
    };
    Decimal decimal;
    std::string_view rest = trimmed(text);
    if (eat(rest, "+")) {
        decimal.sign = Decimal::Sign::Plus;
    } else if (eat(rest, "-") || eat(rest, kMinusSign)) {
        decimal.sign = Decimal::Sign::Minus;
    }
    rest = trimmed(rest);

    int digits = 0;
    int pendingNoughts = 0; // decimals seen as nought and not yet counted: "52.50" has one place
    bool inDecimals = false;
    while (!rest.empty()) {
        const char c = rest.front();
        if ((c == '.' || c == ',') && !inDecimals && digits > 0) {
            inDecimals = true;
        } else if (isDigit(c)) {
            if (++digits > kMostDigits) {
                return unreadable();
            }
            if (inDecimals && c == '0') {
                ++pendingNoughts;
            } else {
                for (; pendingNoughts > 0; --pendingNoughts) {
                    decimal.scaled *= 10;
                    ++decimal.places;
                }
                decimal.scaled = decimal.scaled * 10 + (c - '0');
                decimal.places += inDecimals ? 1 : 0;
            }
        } else {
            break;
        }
        rest.remove_prefix(1);
    }
    if (digits == 0) {
        return unreadable();
    }
    decimal.rest = trimmed(rest);
    return decimal;
}

Result<std::int64_t> scaledTo(int places, const Decimal& decimal, std::string_view what, std::string_view text) {
    if (decimal.places > places) {
        return refuse(Code::TooFine, {{"what", std::string(what)}, {"text", std::string(text)}});
    }
    std::int64_t value = decimal.scaled;
    for (int i = decimal.places; i < places; ++i) {
        value *= 10;
    }
    return decimal.sign == Decimal::Sign::Minus ? -value : value;
}

std::string fullDecimalText(std::int64_t scaled, int places) {
    std::string digits = std::to_string(std::llabs(scaled));
    if (places > 0) {
        const auto wanted = static_cast<std::size_t>(places) + 1;
        if (digits.size() < wanted) {
            digits.insert(0, wanted - digits.size(), '0');
        }
        digits.insert(digits.size() - static_cast<std::size_t>(places), 1, '.');
    }
    return (scaled < 0 ? "-" : "") + digits;
}

std::string decimalText(std::int64_t scaled, int places) {
    std::string text = fullDecimalText(scaled, places);
    if (places > 0) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == '.') {
            text.pop_back();
        }
    }
    return text;
}

} // namespace rw
