// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pricing/quote.h"

#include <algorithm>
#include <cstdint>
#include <map>
#include <numeric>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace rw {

namespace {
constexpr int kMostExtras = 1000; // of one kind on one racket: more is a slip of the key
constexpr int kHundredPercent = 10'000;

using StringLine = std::pair<ChargeKind, StringArticleId>;

/// What string is charged for, in the order of the pieces.
std::vector<StringLine> stringLines(const std::vector<QuotedPiece>& pieces) {
    std::vector<StringLine> lines;
    for (const QuotedPiece& piece : pieces) {
        if (piece.customersOwn) {
            continue;
        }
        const ChargeKind bed = piece.role == PieceRole::Whole ? ChargeKind::FullBed : ChargeKind::HalfBed;
        const StringLine line{piece.packet ? ChargeKind::Packet : bed, piece.article};
        const auto same = std::ranges::find(lines, line);
        if (same == lines.end()) {
            lines.push_back(line);
        } else if (line.first == ChargeKind::HalfBed) {
            same->first = ChargeKind::FullBed;
        }
    }
    return lines;
}

/// Writes the lines of one quote, in order.
class QuoteWriter {
public:
    QuoteWriter(const PriceList& list, const QuoteRequest& request)
        : m_list(list)
        , m_request(request) {}

    Result<Quote> write() {
        Result<void> done = labour();
        for (const auto step :
             {&QuoteWriter::string, &QuoteWriter::extras, &QuoteWriter::rush, &QuoteWriter::discount}) {
            if (!done) {
                return tl::unexpected(done.error());
            }
            done = (this->*step)();
        }
        if (!done) {
            return tl::unexpected(done.error());
        }
        std::vector<TaxShare> shares = taxes();
        return Quote{.charges = m_charges, .taxes = std::move(shares), .total = sum()};
    }

private:
    Result<void> charge(ChargeKind kind, const std::optional<StringArticleId>& article = std::nullopt,
                        const std::string& label = {}, int count = 1) {
        const PriceLine* line = m_list.find(kind, m_request.sport, m_request.method, article, label);
        if (line == nullptr) {
            std::vector<Argument> arguments{{"what", "price"}, {"kind", std::string(chargeKindText(kind))}};
            if (article) {
                arguments.push_back({"article", article->value()});
            }
            if (!label.empty()) {
                arguments.push_back({"label", label});
            }
            return refuse(Code::Missing, std::move(arguments));
        }
        if (line->amount.currency() != m_list.currency) {
            return refuse(Code::CurrencyMismatch,
                          {{"left", m_list.currency.code()}, {"right", line->amount.currency().code()}});
        }
        m_charges.push_back({.kind = kind,
                             .article = article,
                             .label = label,
                             .count = count,
                             .amount = line->amount * count,
                             .taxHundredthsPercent = line->taxHundredthsPercent,
                             .cost = line->cost ? std::optional(*line->cost * count) : std::nullopt});
        return {};
    }

    Result<void> labour() {
        const auto& pieces = m_request.pieces;
        const bool allOwn = !pieces.empty() && std::ranges::all_of(pieces, &QuotedPiece::customersOwn);
        return charge(allOwn ? ChargeKind::OwnStringLabour : ChargeKind::Labour);
    }

    Result<void> string() {
        Result<void> done;
        const auto lines = stringLines(m_request.pieces);
        for (auto line = lines.begin(); done && line != lines.end(); ++line) {
            done = charge(line->first, line->second);
        }
        return done;
    }

    Result<void> extras() {
        for (const auto& [label, count] : m_request.extras) {
            if (count < 1 || count > kMostExtras) {
                return refuse(Code::OutOfRange, {{"what", "count"},
                                                 {"text", std::to_string(count)},
                                                 {"lowest", "1"},
                                                 {"highest", std::to_string(kMostExtras)}});
            }
            if (const auto done = charge(ChargeKind::Extra, std::nullopt, label, count); !done) {
                return done;
            }
        }
        return {};
    }

    Result<void> rush() { return m_request.rush ? charge(ChargeKind::Rush) : Result<void>(); }

    Result<void> discount() {
        if (!m_request.discount) {
            return {};
        }
        const auto amount = discountAmount(*m_request.discount);
        if (!amount) {
            return tl::unexpected(amount.error());
        }
        if (*amount == Money::zero(m_list.currency)) {
            return {};
        }
        if (m_request.discount->reason.empty()) {
            return refuse(Code::Missing, {{"what", "reason"}});
        }
        std::vector<std::int64_t> weights;
        std::vector<int> rates;
        for (const auto& [rate, amountAtRate] : sumsByRate()) {
            rates.push_back(rate);
            weights.push_back(amountAtRate.minor());
        }
        const std::vector<Money> shares = amount->splitByWeight(weights);
        for (std::size_t i = 0; i < shares.size(); ++i) {
            if (shares[i].minor() != 0) {
                m_charges.push_back({.kind = ChargeKind::Discount,
                                     .article = std::nullopt,
                                     .label = m_request.discount->reason,
                                     .amount = -shares[i],
                                     .taxHundredthsPercent = rates[i]});
            }
        }
        return {};
    }

    /// Positive or zero, and at most everything charged so far.
    Result<Money> discountAmount(const Discount& asked) const {
        const Money before = sum();
        if (!asked.fixed) {
            if (asked.hundredthsPercent < 0 || asked.hundredthsPercent > kHundredPercent) {
                return refuse(Code::OutOfRange, {{"what", "discount"},
                                                 {"text", std::to_string(asked.hundredthsPercent / 100.0)},
                                                 {"lowest", "0"},
                                                 {"highest", "100"}});
            }
            return before.timesRatioHalfAway(asked.hundredthsPercent, kHundredPercent);
        }
        if (!asked.fixed->sameCurrency(before)) {
            return refuse(Code::CurrencyMismatch,
                          {{"left", m_list.currency.code()}, {"right", asked.fixed->currency().code()}});
        }
        if (asked.fixed->minor() < 0 || asked.fixed->minor() > before.minor()) {
            return refuse(
                Code::OutOfRange,
                {{"what", "discount"}, {"text", asked.fixed->text()}, {"lowest", "0"}, {"highest", before.text()}});
        }
        return *asked.fixed;
    }

    /// Tax per rate; where prices come without it, its charges are written too.
    std::vector<TaxShare> taxes() {
        std::vector<TaxShare> shares;
        for (const auto& [rate, amount] : sumsByRate()) {
            if (rate == 0) {
                continue;
            }
            shares.push_back({rate, taxOf(amount, rate, m_list.taxRule)});
            if (m_list.taxRule == TaxRule::Added) {
                m_charges.push_back({.kind = ChargeKind::Tax,
                                     .article = std::nullopt,
                                     .label = {},
                                     .amount = shares.back().tax,
                                     .taxHundredthsPercent = rate});
            }
        }
        return shares;
    }

    [[nodiscard]] std::map<int, Money> sumsByRate() const {
        std::map<int, Money> sums;
        for (const Charge& line : m_charges) {
            const auto place = sums.try_emplace(line.taxHundredthsPercent, Money::zero(m_list.currency)).first;
            place->second += line.amount;
        }
        return sums;
    }

    [[nodiscard]] Money sum() const {
        return std::accumulate(m_charges.begin(), m_charges.end(), Money::zero(m_list.currency),
                               [](Money total, const Charge& line) { return total + line.amount; });
    }

    const PriceList& m_list;
    const QuoteRequest& m_request;
    std::vector<Charge> m_charges;
};
} // namespace

Result<Quote> quote(const PriceList& list, const QuoteRequest& request) { return QuoteWriter(list, request).write(); }

Money taxOf(Money amount, int hundredthsPercent, TaxRule rule) {
    const int base = rule == TaxRule::Added ? kHundredPercent : kHundredPercent + hundredthsPercent;
    return amount.timesRatioHalfAway(hundredthsPercent, base);
}

} // namespace rw
