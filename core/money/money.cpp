// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/money/money.h"

#include "core/units/decimal.h"

#include <algorithm>
#include <cassert>
#include <cstdlib>
#include <numeric>

namespace rw {

namespace {
__extension__ using Wide = __int128; // products of two amounts, without overflow

// ISO 4217, list one: currencies whose minor unit is not a hundredth.
constexpr std::array<std::string_view, 16> kNoDecimals = {"BIF", "CLP", "DJF", "GNF", "ISK", "JPY",
                                                          "KMF", "KRW", "PYG", "RWF", "UGX", "UYI",
                                                          "VND", "VUV", "XAF", "XPF"};
constexpr std::array<std::string_view, 7> kThreeDecimals = {"BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"};
constexpr std::int64_t kMostMajor = 10'000'000;
} // namespace

Result<Currency> Currency::fromCode(std::string_view code) {
    const bool letters = std::ranges::all_of(code, [](char c) { return c >= 'A' && c <= 'Z'; });
    if (code.size() != 3 || !letters) {
        return refuse(Code::ImpossibleValue, {{"key", "currency"},
                                              {"text", std::string(code)},
                                              {"expected", "three capital letters of ISO 4217"}});
    }
    Currency currency;
    std::ranges::copy(code, currency.m_code.begin());
    if (std::ranges::find(kNoDecimals, code) != kNoDecimals.end()) {
        currency.m_decimals = 0;
    } else if (std::ranges::find(kThreeDecimals, code) != kThreeDecimals.end()) {
        currency.m_decimals = 3;
    }
    return currency;
}

Currency Currency::pounds() { return *fromCode("GBP"); }

Result<Money> Money::tryParse(std::string_view text, Currency currency) {
    const auto decimal = parseDecimal("money", text);
    if (!decimal) {
        return tl::unexpected(decimal.error());
    }
    if (!decimal->rest.empty()) {
        return refuse(Code::Unreadable, {{"what", "money"}, {"text", std::string(text)}});
    }
    const auto minor = scaledTo(currency.decimals(), *decimal, "money", text);
    if (!minor) {
        return tl::unexpected(minor.error());
    }
    std::int64_t most = kMostMajor;
    for (int i = 0; i < currency.decimals(); ++i) {
        most *= 10;
    }
    if (std::llabs(*minor) > most) {
        return refuse(Code::OutOfRange, {{"what", "money"},
                                         {"text", std::string(text)},
                                         {"lowest", "-10000000"},
                                         {"highest", "10000000"}});
    }
    return Money(*minor, currency);
}

Money Money::timesRatioHalfAway(std::int64_t numerator, std::int64_t denominator) const {
    assert(denominator > 0);
    const Wide product = static_cast<Wide>(m_minor) * numerator;
    const Wide magnitude = product < 0 ? -product : product;
    const auto rounded = static_cast<std::int64_t>((2 * magnitude + denominator) / (2 * denominator));
    return {product < 0 ? -rounded : rounded, m_currency};
}

std::string Money::text() const { return fullDecimalText(m_minor, m_currency.decimals()); }

Money Money::operator+(const Money& other) const {
    assert(sameCurrency(other));
    return {m_minor + other.m_minor, m_currency};
}

Money Money::operator-(const Money& other) const { return *this + -other; }

std::vector<Money> Money::splitFairly(int parts) const {
    assert(parts >= 1);
    return splitByWeight(std::vector<std::int64_t>(static_cast<std::size_t>(parts), 1));
}

std::vector<Money> Money::splitByWeight(const std::vector<std::int64_t>& weights) const {
    const std::int64_t total = std::accumulate(weights.begin(), weights.end(), std::int64_t{0});
    assert(total > 0);
    const std::int64_t sign = m_minor < 0 ? -1 : 1;
    const Wide amount = static_cast<Wide>(m_minor) * sign;
    std::vector<std::int64_t> shares(weights.size());
    std::vector<std::int64_t> fractions(weights.size());
    std::int64_t left = m_minor * sign;
    for (std::size_t i = 0; i < weights.size(); ++i) {
        shares[i] = static_cast<std::int64_t>(amount * weights[i] / total);
        fractions[i] = static_cast<std::int64_t>(amount * weights[i] % total);
        left -= shares[i];
    }
    std::vector<std::size_t> order(weights.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) { return fractions[a] > fractions[b]; });
    for (std::size_t i = 0; left > 0; ++i, --left) {
        ++shares[order[i]];
    }
    std::vector<Money> parts;
    parts.reserve(weights.size());
    for (const std::int64_t share : shares) {
        parts.push_back(Money(share * sign, m_currency));
    }
    return parts;
}

} // namespace rw
