// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/stock/remnant_value.h"

#include <string>
#include <vector>

// The worked values beside the tests, made for this project. Their files say how each was found.
namespace rw::stock::test {

[[nodiscard]] Length mm(std::int64_t value);
[[nodiscard]] Length metres(double value);                                 ///< to the nearest millimetre
[[nodiscard]] std::vector<Length> metres(const std::vector<double>& each); ///< the same for each

/// piece-lengths-mixed.json: mains, crosses and whole beds as a tennis shop wants them.
[[nodiscard]] PieceMix mixedPieces();
/// What ends of that mix are worth with u = 5 m; worked out once.
[[nodiscard]] const RemnantValue& mixedValue();

/// remnant-values-mixed.json: W(r) in metres for r = 0, 0.05, ... 60 m.
[[nodiscard]] std::vector<double> workedValues();

/// One plan of remnant-exact-cases.json, in metres.
struct ExactCase {
    std::vector<double> stocks;
    std::vector<double> pieces; ///< in the order in which they are wanted
    double optimum;             ///< the least sum of what is lost, by trying every plan
    double oneByOne;            ///< the same when each piece takes the best lot of the moment
};
[[nodiscard]] std::vector<ExactCase> exactCases();

/// One plan of cut-instances.json, in metres. Its aim is another one: the leftovers shorter than `shortestUseful`, and
/// a hundredth of all leftovers but the first lot's.
struct ScrapCase {
    std::vector<double> stocks;
    std::vector<double> pieces;
    double shortestUseful;
    double optimum;
};
[[nodiscard]] std::vector<ScrapCase> scrapCases(const std::string& set); ///< "brief", "mixed", "two", "one"

} // namespace rw::stock::test
