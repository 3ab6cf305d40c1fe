// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string_view>
#include <vector>

namespace rw {

/// A gauge name and the thicknesses sold under it, both ends included. The names overlap, so millimetres are
/// what is stored and the name stands beside them.
struct Gauge {
    std::string_view name; ///< "16L"
    int lowestMicrometres;
    int highestMicrometres;
};

/// From the thickest to the thinnest. Source: the US stringers' association's gauge table as reprinted in
/// trade guides; other tables differ by 0.01 mm at some ends.
[[nodiscard]] std::span<const Gauge> gauges();

/// Every gauge name that this thickness is sold under, thickest first: 1280 is {16, 16L}. Empty outside the
/// table.
[[nodiscard]] std::vector<std::string_view> gaugeNames(int micrometres);

/// The one name to propose: of those that hold the thickness the one whose middle is nearest (the thinner
/// on a tie); "" outside the table.
[[nodiscard]] std::string_view nearestGaugeName(int micrometres);

} // namespace rw
