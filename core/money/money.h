// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace rw {

/// An ISO 4217 currency: three capital letters and how many decimals its minor unit has (0, 2 or 3).
class Currency {
public:
    /// ImpossibleValue unless `code` is three letters A-Z. Decimals by ISO 4217: 0 for JPY, KRW and their like,
    /// 3 for KWD, BHD and their like, 2 for the rest.
    [[nodiscard]] static Result<Currency> fromCode(std::string_view code);
    [[nodiscard]] static Currency pounds();

    [[nodiscard]] std::string code() const { return std::string(m_code.data(), m_code.size()); }
    [[nodiscard]] int decimals() const { return m_decimals; }
    bool operator==(const Currency&) const = default;

private:
    Currency() = default;
    std::array<char, 3> m_code{};
    int m_decimals = 2;
};

/// An amount of money: integer minor units of one currency. Adding two currencies is a bug (asserted);
/// what comes from outside is checked with sameCurrency() first. Nothing here rounds without saying so.
class Money {
public:
    [[nodiscard]] static Money fromMinor(std::int64_t minor, Currency currency) { return {minor, currency}; }
    [[nodiscard]] static Money zero(Currency currency) { return {0, currency}; }
    /// Reads "14", "14.50", "14,5". Unreadable, TooFine (more decimals than the currency has), OutOfRange
    /// beyond ten million.
    [[nodiscard]] static Result<Money> tryParse(std::string_view text, Currency currency);
    /// this x numerator / denominator in exact integers, rounded half away from zero: the one rounding of this
    /// program, and its name. denominator > 0.
    [[nodiscard]] Money timesRatioHalfAway(std::int64_t numerator, std::int64_t denominator) const;

    [[nodiscard]] std::int64_t minor() const { return m_minor; }
    [[nodiscard]] const Currency& currency() const { return m_currency; }
    [[nodiscard]] bool sameCurrency(const Money& other) const { return m_currency == other.m_currency; }
    /// "14.50": always with the currency's decimals, a point, no currency sign.
    [[nodiscard]] std::string text() const;

    [[nodiscard]] Money operator+(const Money& other) const;
    [[nodiscard]] Money operator-(const Money& other) const;
    [[nodiscard]] Money operator-() const { return {-m_minor, m_currency}; }
    [[nodiscard]] Money operator*(std::int64_t times) const { return {m_minor * times, m_currency}; }
    Money& operator+=(const Money& other) { return *this = *this + other; }
    bool operator==(const Money&) const = default;

    /// `parts` (>= 1) amounts that add up to this one; the first get the remainder: 100.00 in three is
    /// 33.34, 33.33, 33.33.
    [[nodiscard]] std::vector<Money> splitFairly(int parts) const;
    /// Split in proportion to `weights` (not negative, not all zero); parts add up exactly, remainder to the
    /// largest fractions first, earlier parts first among equals.
    [[nodiscard]] std::vector<Money> splitByWeight(const std::vector<std::int64_t>& weights) const;

private:
    Money(std::int64_t minor, Currency currency)
        : m_minor(minor)
        , m_currency(currency) {}
    std::int64_t m_minor;
    Currency m_currency;
};

} // namespace rw
