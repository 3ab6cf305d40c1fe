// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/jobs/tails.h"

#include "core/units/decimal.h"

#include <algorithm>
#include <array>
#include <string>

namespace rw {

namespace {
constexpr Length kHand = Length::fromMillimetres(180);

/// Times so many of a measure, give or take a half.
Tails about(int times, Length measure) {
    const std::int64_t half = measure.millimetres() / 2;
    return {Length::fromMillimetres(half * (2 * times - 1)), Length::fromMillimetres(half * (2 * times + 1))};
}

std::optional<Tails> tailsInWords(std::string_view words, Length headLength) {
    for (const std::string_view article : {"a ", "one ", "1 "}) {
        if (words.starts_with(article)) {
            words = trimmed(words.substr(article.size()));
        }
    }
    if (words == "hand") {
        return about(1, kHand);
    }
    if (words == "two hands" || words == "2 hands" || words == "hands") {
        return about(2, kHand);
    }
    if (words == "head length" || words == "head") {
        return about(1, headLength);
    }
    if (words == "more") {
        return Tails{about(1, headLength).high, headLength * 4};
    }
    return std::nullopt;
}

std::optional<Tails> measuredTails(std::string_view text) {
    const auto decimal = parseDecimal("tails", text);
    if (!decimal) {
        return std::nullopt;
    }
    const auto length = Length::tryParse(decimal->rest.empty() ? std::string(text) + " cm" : std::string(text));
    return length && !length->isNegative() ? std::optional(Tails::measured(*length)) : std::nullopt;
}

tl::unexpected<Refusal> notTails(std::string_view text, std::string expected) {
    return refuse(Code::ImpossibleValue,
                  {{"key", "tails"}, {"text", std::string(text)}, {"expected", std::move(expected)}});
}

/// Nothing for a part of which nothing is told.
Result<std::optional<Tails>> partFromText(std::string_view part, Length headLength) {
    if (part.empty() || part == "-" || part == "enough") {
        return std::nullopt;
    }
    std::string small(part);
    std::ranges::transform(small, small.begin(), [](char c) { return 'A' <= c && c <= 'Z' ? char(c - 'A' + 'a') : c; });
    const auto words = tailsInWords(small, headLength);
    const auto tails = words ? words : measuredTails(part);
    if (!tails) {
        return notTails(part, "cm, a hand, two hands, a head length, more, or -");
    }
    return tails;
}

Result<std::vector<TailsOf>> ofTwoPieces(std::string_view text, const std::vector<std::optional<Tails>>& parts) {
    if (parts.size() == 1 && parts.front()) {
        return notTails(text, "the mains' and the crosses', as 38 / 25");
    }
    std::vector<TailsOf> tails;
    constexpr std::array kRoles = {PieceRole::Mains, PieceRole::Crosses};
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (parts[i]) {
            tails.push_back({kRoles[i], false, *parts[i]});
        }
    }
    return tails;
}

Result<std::vector<TailsOf>> ofOnePiece(std::string_view text, const std::vector<std::optional<Tails>>& parts) {
    std::vector<TailsOf> tails;
    if (parts.size() == 1) {
        if (parts.front()) {
            tails.push_back({PieceRole::Whole, false, *parts.front()});
        }
        return tails;
    }
    if (parts.back() && !parts.front()) {
        return notTails(text, "the short side's too, as 30 / 45");
    }
    if (parts.front()) {
        tails.push_back({PieceRole::Whole, true, *parts.front()});
    }
    if (parts.front() && parts.back()) {
        tails.push_back({PieceRole::Whole, false, *parts.front() + *parts.back()});
    }
    return tails;
}
} // namespace

std::string_view tailsPartText(bool shortSide) { return shortSide ? "short-side" : "piece"; }

Result<std::vector<TailsOf>> tailsFromText(std::string_view text, Method method, Length headLength) {
    std::vector<std::optional<Tails>> parts;
    std::string_view left = text;
    for (bool more = true; more;) {
        const auto slash = left.find('/');
        more = slash != std::string_view::npos;
        const auto part = partFromText(trimmed(left.substr(0, slash)), headLength);
        if (!part) {
            return tl::unexpected(part.error());
        }
        parts.push_back(*part);
        left.remove_prefix(more ? slash + 1 : left.size());
    }
    if (parts.size() > 2) {
        return notTails(text, "at most two lengths");
    }
    return method == Method::TwoPiece ? ofTwoPieces(text, parts) : ofOnePiece(text, parts);
}

} // namespace rw
