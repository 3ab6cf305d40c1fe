// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/desk/remnant_value_of.h"

#include "core/length/cut_plan.h"

#include <algorithm>
#include <list>
#include <map>

namespace rw::desk {

namespace {
constexpr int kTakes = 200;
constexpr std::size_t kKept = 40; ///< more strings than a small shop sells; 48 kB each
/// Of ten tennis jobs two are half a bed: mains or crosses beside another string (common practice).
constexpr int kWholeBedsOfTen = 8;

Length shortestUsualPiece(Sport sport) { return Length::fromMillimetres(sport == Sport::Tennis ? 5'000 : 4'000); }

/// What jobs of a sport should take before anything was cut: the plan of its usual head, now and then half of it.
std::vector<Length> expectedTakes(Sport sport) {
    std::vector<Length> halves;
    Length whole = Length::fromMillimetres(0);
    if (const auto plan = length::planCut(length::defaultRequest(sport))) {
        for (const length::PiecePlan& piece : plan->pieces) {
            halves.push_back(piece.cut);
            whole += piece.cut;
        }
    }
    std::vector<Length> takes(kWholeBedsOfTen, whole);
    if (sport == Sport::Tennis && halves.size() == 2) {
        takes.insert(takes.end(), halves.begin(), halves.end());
    }
    return takes;
}

const stock::PieceMix& firstDayOf(Sport sport) {
    thread_local std::map<Sport, stock::PieceMix> mixes; // a plan of the head does not change
    const auto known = mixes.find(sport);
    return known != mixes.end() ? known->second
                                : mixes.emplace(sport, stock::mixOfFirstDay(expectedTakes(sport))).first->second;
}

/// All that the value of a string's ends follows from.
struct Takes {
    Sport sport;
    std::vector<Length> ofTheSport;
    std::vector<Length> ofTheString;
    bool operator==(const Takes&) const = default;
};

stock::RemnantValue valueBy(const Takes& takes) {
    const stock::PieceMix sport = stock::mixOfString(takes.ofTheSport, firstDayOf(takes.sport));
    return {stock::mixOfString(takes.ofTheString, sport), shortestUsualPiece(takes.sport)};
}
} // namespace

std::shared_ptr<const stock::RemnantValue> remnantValueOf(Transaction& ledger, const StringArticle& article) {
    struct Known {
        Takes takes;
        std::shared_ptr<const stock::RemnantValue> value;
    };
    thread_local std::list<Known> known; // the one that was asked for last first
    Takes takes{article.sport, ledger.lots().lastTakesOff(article.sport, kTakes),
                ledger.lots().lastTakesOff(*article.id, kTakes)};
    const auto found = std::ranges::find(known, takes, &Known::takes);
    if (found != known.end()) {
        known.splice(known.begin(), known, found);
    } else {
        auto value = std::make_shared<const stock::RemnantValue>(valueBy(takes));
        known.push_front({std::move(takes), std::move(value)});
        known.resize(std::min(known.size(), kKept));
    }
    return known.front().value;
}

} // namespace rw::desk
